import type { Geometry } from './geometry.ts';
import { labOfPixels } from './lab-pixels.ts';
import type { Triple } from './matrix.ts';
import type { PixelImage } from './pixels.ts';
import type { Balance } from './white.ts';

/** A change of colour along the ground electrode: where, from its free end (0) to its foot (1), and how strong in CIELAB with L* at half weight. */
export type HeatLine = { readonly along: number; readonly contrast: number };

/** A weaker change than this is none: the noise of drawn pictures stays below. */
export const LEAST_CONTRAST = 4;
const STEPS = 48;
const ACROSS = 7;
const FEWEST = 5;
/** Steps to both sides of a line within which it must have happened; shading changes slowly. */
const SHARP = 4;

type Profile = readonly Triple[];

/** The sharpest lasting change of colour along the ground electrode; nothing where the electrode was not seen at full length. */
export function heatLine(image: PixelImage, geometry: Geometry, balance: Balance): HeatLine | undefined {
  const profile = profileAlong(image, geometry, balance);
  let best: HeatLine = { along: 0, contrast: 0 };
  for (let at = FEWEST; at <= profile.length - FEWEST; at += 1) {
    const lasting = distance(meanOf(profile.slice(0, at)), meanOf(profile.slice(at)));
    const sharp = distance(meanOf(profile.slice(Math.max(0, at - SHARP), at)), meanOf(profile.slice(at, at + SHARP)));
    const contrast = Math.min(lasting, sharp);
    if (contrast > best.contrast) best = { along: at / profile.length, contrast };
  }
  return profile.length < STEPS ? undefined : best;
}

/** Colour across the middle of the bar at steps from its free end to the edge of the bore, lightness at half weight. */
function profileAlong(image: PixelImage, { bore, strap: { angle, offset, half, end } }: Geometry, balance: Balance): Profile {
  const [cos, sin] = [Math.cos(angle) * bore.r, Math.sin(angle) * bore.r];
  const [from, to] = [end + 0.06, 0.97];
  const rows = Array.from({ length: STEPS }, (_, i) => from + ((to - from) * (i + 0.5)) / STEPS);
  const profile = rows.map((along) => {
    const places: number[] = [];
    for (let k = 0; k < ACROSS; k += 1) {
      const across = offset + 0.6 * half * ((2 * (k + 0.5)) / ACROSS - 1);
      const [x, y] = [Math.floor(bore.x + along * cos - across * sin), Math.floor(bore.y + along * sin + across * cos)];
      if (x >= 0 && y >= 0 && x < image.width && y < image.height) places.push(y * image.width + x);
    }
    const { l, a, b } = labOfPixels(image, Int32Array.from(places), balance);
    return places.length < ACROSS ? undefined : ([0.5 * middle(l), middle(a), middle(b)] as const);
  });
  return profile.filter((colour) => colour !== undefined);
}

/** Mean without the highest and the lowest, which are glints and dirt. */
function middle(values: Float32Array): number {
  const inner = values.slice().sort().subarray(1, -1);
  return inner.reduce((sum, value) => sum + value, 0) / inner.length;
}

const meanOf = (profile: Profile): Triple => {
  const sum = profile.reduce<Triple>(([x, y, z], [l, a, b]) => [x + l, y + a, z + b], [0, 0, 0]);
  return [sum[0] / profile.length, sum[1] / profile.length, sum[2] / profile.length];
};

const distance = (one: Triple, other: Triple): number =>
  Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
