import { cubeRoot } from './lab.ts';
import type { PixelImage } from './pixels.ts';
import { LIGHT_OF_BYTE } from './srgb.ts';
import type { Balance } from './white.ts';

/** CIELAB of pixels on the corrected white; `clipped` marks those with a channel at its limit. */
export type LabPixels = { readonly l: Float32Array; readonly a: Float32Array; readonly b: Float32Array; readonly clipped: Uint8Array };

const BRIGHTEST = 2;
const ENTRIES = 16384;
const ROOTS = Float64Array.from({ length: ENTRIES + 2 }, (_, i) => cubeRoot((i * BRIGHTEST) / ENTRIES));
const CLIPS_AT = 252;

function rootOf(t: number): number {
  const at = Math.min(ENTRIES, Math.max(0, (t * ENTRIES) / BRIGHTEST));
  const low = at | 0;
  const below = ROOTS[low] ?? 0;
  return below + (at - low) * ((ROOTS[low + 1] ?? 0) - below);
}

/** The CIELAB colours of the pixels at these places (index of the pixel in the picture). */
export function labOfPixels({ rgb }: PixelImage, places: Int32Array, { toRelative: [x, y, z] }: Balance): LabPixels {
  const count = places.length;
  const [l, a, b, clipped] = [new Float32Array(count), new Float32Array(count), new Float32Array(count), new Uint8Array(count)];
  for (let i = 0; i < count; i += 1) {
    const at = 3 * (places[i] ?? 0);
    const r8 = rgb[at] ?? 0;
    const g8 = rgb[at + 1] ?? 0;
    const b8 = rgb[at + 2] ?? 0;
    const red = LIGHT_OF_BYTE[r8] ?? 0;
    const green = LIGHT_OF_BYTE[g8] ?? 0;
    const blue = LIGHT_OF_BYTE[b8] ?? 0;
    const fx = rootOf(x[0] * red + x[1] * green + x[2] * blue);
    const fy = rootOf(y[0] * red + y[1] * green + y[2] * blue);
    const fz = rootOf(z[0] * red + z[1] * green + z[2] * blue);
    l[i] = 116 * fy - 16;
    a[i] = 500 * (fx - fy);
    b[i] = 200 * (fy - fz);
    clipped[i] = r8 >= CLIPS_AT || g8 >= CLIPS_AT || b8 >= CLIPS_AT ? 1 : 0;
  }
  return { l, a, b, clipped };
}
