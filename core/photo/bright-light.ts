import type { PixelImage } from './pixels.ts';
import { LIGHT_OF_BYTE, type LinearRgb } from './srgb.ts';

const FEWEST = 25;
/** Below are shadow and dirt, above are glints. */
const [DARKER, BRIGHTER] = [0.45, 0.95];

/** Mean light of the brighter half of some pixels, without the glints; nothing of too few. */
export function brightLight({ rgb }: PixelImage, places: Int32Array): LinearRgb | undefined {
  const counts = new Uint32Array(256);
  for (const place of places) {
    const green = rgb[3 * place + 1] ?? 0;
    counts[green] = (counts[green] ?? 0) + 1;
  }
  const [from, to] = [byteReached(counts, DARKER * places.length), byteReached(counts, BRIGHTER * places.length)];
  let [count, red, green, blue] = [0, 0, 0, 0];
  for (const place of places) {
    const byte = rgb[3 * place + 1] ?? 0;
    if (byte < from || byte > to) continue;
    count += 1;
    red += LIGHT_OF_BYTE[rgb[3 * place] ?? 0] ?? 0;
    green += LIGHT_OF_BYTE[byte] ?? 0;
    blue += LIGHT_OF_BYTE[rgb[3 * place + 2] ?? 0] ?? 0;
  }
  return count < FEWEST ? undefined : [red / count, green / count, blue / count];
}

/** The byte at which so many pixels are counted. */
function byteReached(counts: Uint32Array, wanted: number): number {
  let sum = 0;
  for (let byte = 0; byte < 256; byte += 1) {
    sum += counts[byte] ?? 0;
    if (sum >= wanted) return byte;
  }
  return 255;
}
