/** CIELAB 1976 under D65 for the 2 degree observer: L* 0 to 100, a* and b* open. */
export type Lab = readonly [lightness: number, a: number, b: number];

/** Linear light in the sRGB primaries: 0 is black, 1 the white of the screen. Values outside belong to colours a screen cannot show. */
export type LinearRgb = readonly [red: number, green: number, blue: number];

/** From the chromaticities x 0.3127, y 0.3290 of D65 (IEC 61966-2-1). */
const WHITE = [0.95045593, 1, 1.08905775] as const;
const KAPPA = 24389 / 27;
const EPSILON = 216 / 24389;

const toXyz = (f: number): number => (f ** 3 > EPSILON ? f ** 3 : (116 * f - 16) / KAPPA);

/** The light a screen must send for a CIELAB colour (CIE 15:2018; primaries of IEC 61966-2-1). */
export function linearFromLab([lightness, a, b]: Lab): LinearRgb {
  const fy = (lightness + 16) / 116;
  const x = WHITE[0] * toXyz(fy + a / 500);
  const y = WHITE[1] * toXyz(fy);
  const z = WHITE[2] * toXyz(fy - b / 200);
  return [
    3.2409699 * x - 1.5373832 * y - 0.4986108 * z,
    -0.9692436 * x + 1.8759675 * y + 0.0415551 * z,
    0.0556301 * x - 0.203977 * y + 1.0569715 * z,
  ];
}

/** Adds light, not numbers: `share` 0 gives the first, 1 the second. */
export const mixLight = (one: LinearRgb, other: LinearRgb, share: number): LinearRgb =>
  [0, 1, 2].map((i) => (one[i] ?? 0) * (1 - share) + (other[i] ?? 0) * share) as unknown as LinearRgb;

/** The same surface under more (factor over 1) or less light. */
export const underLight = (colour: LinearRgb, factor: number): LinearRgb => [colour[0] * factor, colour[1] * factor, colour[2] * factor];

const encode = (light: number): number => (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
const byte = (light: number): string => Math.round(255 * encode(Math.min(1, Math.max(0, light)))).toString(16).padStart(2, '0');

/** Six hexadecimal digits of sRGB after a `#`; light outside the screen's range is cut off. */
export const hexFromLinear = (colour: LinearRgb): string => `#${colour.map(byte).join('')}`;
