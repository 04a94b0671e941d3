import type { Triple } from './matrix.ts';
import { byteOf, linearFromXyz, xyzFromLinear, type LinearRgb } from './srgb.ts';

export type { LinearRgb };

/** CIELAB 1976 under D65 for the 2 degree observer: L* 0 to 100, a* and b* open. */
export type Lab = readonly [lightness: number, a: number, b: number];

/** XYZ of D65, from its chromaticities x 0.3127, y 0.3290 (IEC 61966-2-1). */
export const D65: Triple = [0.9504559270516716, 1, 1.0890577507598784];
const KAPPA = 24389 / 27;
const EPSILON = 216 / 24389;

const fromCube = (f: number): number => (f ** 3 > EPSILON ? f ** 3 : (116 * f - 16) / KAPPA);

/** The compressed tristimulus value of CIELAB (CIE 15:2018, with the exact fractions). */
export const cubeRoot = (t: number): number => (t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116);

/** CIELAB of XYZ relative to a white (D65 unless told otherwise). */
export function labFromXyz([x, y, z]: Triple, white: Triple = D65): Lab {
  const [fx, fy, fz] = [cubeRoot(x / white[0]), cubeRoot(y / white[1]), cubeRoot(z / white[2])];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

/** XYZ under D65 of a CIELAB colour. */
export function xyzFromLab([lightness, a, b]: Lab): Triple {
  const fy = (lightness + 16) / 116;
  return [D65[0] * fromCube(fy + a / 500), fromCube(fy), D65[2] * fromCube(fy - b / 200)];
}

export const labFromLinear = (rgb: LinearRgb): Lab => labFromXyz(xyzFromLinear(rgb));

/** The light a screen must send for a CIELAB colour. */
export const linearFromLab = (lab: Lab): LinearRgb => linearFromXyz(xyzFromLab(lab));

/** Adds light, not numbers: `share` 0 gives the first, 1 the second. */
export const mixLight = (one: LinearRgb, other: LinearRgb, share: number): LinearRgb =>
  [0, 1, 2].map((i) => (one[i] ?? 0) * (1 - share) + (other[i] ?? 0) * share) as unknown as LinearRgb;

/** The same surface under more (factor over 1) or less light. */
export const underLight = (colour: LinearRgb, factor: number): LinearRgb => [colour[0] * factor, colour[1] * factor, colour[2] * factor];

/** Six hexadecimal digits of sRGB after a `#`; light outside the screen's range is cut off. */
export const hexFromLinear = (colour: LinearRgb): string => `#${colour.map((light) => byteOf(light).toString(16).padStart(2, '0')).join('')}`;
