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
/** The very end is left out, in bore radii, with the first steps after it: where the electrode was found to end may be off. */
const BEYOND_END = 0.1;
const FEWEST_BEFORE = 10;
const FEWEST_AFTER = 5;
/** Steps to both sides of a line within which it must have happened; shading changes slowly. */
const SHARP = 4;

type Profile = readonly Triple[];

/** The sharpest lasting change of colour along the ground electrode; nothing where the electrode was not seen at full length. */
export function heatLine(image: PixelImage, geometry: Geometry, balance: Balance): HeatLine | undefined {
  const profile = profileAlong(image, geometry, balance);
  if (profile.length === 0) return undefined;
  let best: HeatLine = { along: 0, contrast: 0 };
  for (let at = FEWEST_BEFORE; at <= profile.length - FEWEST_AFTER; at += 1) {
    const lasting = distance(meanOf(profile.slice(0, at)), meanOf(profile.slice(at)));
    const sharp = distance(meanOf(profile.slice(Math.max(0, at - SHARP), at)), meanOf(profile.slice(at, at + SHARP)));
    const contrast = Math.min(lasting, sharp);
    if (contrast > best.contrast) best = { along: at / profile.length, contrast };
  }
  return best;
}

/** Colour across the middle of the bar at steps from its free end to the edge of the bore, lightness at half weight; nothing where it leaves the picture. */
function profileAlong(image: PixelImage, { bore, strap: { angle, offset, half, end } }: Geometry, balance: Balance): Profile {
  const [cos, sin] = [Math.cos(angle) * bore.r, Math.sin(angle) * bore.r];
  const [from, to] = [end + BEYOND_END, 0.97];
  const places = new Int32Array(STEPS * ACROSS);
  for (let i = 0; i < places.length; i += 1) {
    const along = from + ((to - from) * (Math.floor(i / ACROSS) + 0.5)) / STEPS;
    const across = offset + 0.6 * half * ((2 * ((i % ACROSS) + 0.5)) / ACROSS - 1);
    const [x, y] = [Math.floor(bore.x + along * cos - across * sin), Math.floor(bore.y + along * sin + across * cos)];
    if (x < 0 || y < 0 || x >= image.width || y >= image.height) return [];
    places[i] = y * image.width + x;
  }
  const { l, a, b } = labOfPixels(image, places, balance);
  const row = (values: Float32Array, i: number): number => middle(values.subarray(i * ACROSS, (i + 1) * ACROSS));
  return Array.from({ length: STEPS }, (_, i): Triple => [0.5 * row(l, i), row(a, i), row(b, i)]);
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
