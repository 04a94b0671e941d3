import { applied, type Matrix, type Triple } from './matrix.ts';

/** Linear light in the sRGB primaries: 0 is black, 1 the white of the screen. Values outside belong to colours a screen cannot show. */
export type LinearRgb = Triple;

/** Linear sRGB to CIE XYZ, white at Y = 1 (IEC 61966-2-1, from the primaries and the chromaticities of D65 at full precision). */
export const RGB_TO_XYZ: Matrix = [
  [0.41239079926595934, 0.357584339383878, 0.1804807884018343],
  [0.21263900587151027, 0.715168678767756, 0.07219231536073371],
  [0.01933081871559182, 0.11919477979462598, 0.9505321522496607],
];
export const XYZ_TO_RGB: Matrix = [
  [3.2409699419045226, -1.537383177570094, -0.4986107602930034],
  [-0.9692436362808796, 1.8759675015077202, 0.04155505740717559],
  [0.05563007969699366, -0.20397695888897652, 1.0569715142428786],
];

export const xyzFromLinear = (rgb: LinearRgb): Triple => applied(RGB_TO_XYZ, rgb);
export const linearFromXyz = (xyz: Triple): LinearRgb => applied(XYZ_TO_RGB, xyz);

/** Light of a screen value, both 0 to 1 (IEC 61966-2-1). */
export const decoded = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);

/** Screen value of light, both 0 to 1 (IEC 61966-2-1). */
export const encoded = (light: number): number => (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);

/** Light of each 8-bit screen value. */
export const LIGHT_OF_BYTE: Float64Array = Float64Array.from({ length: 256 }, (_, byte) => decoded(byte / 255));

/** The nearest 8-bit screen value; light outside the screen's range is cut off. */
export const byteOf = (light: number): number => Math.round(255 * encoded(Math.min(1, Math.max(0, light))));
