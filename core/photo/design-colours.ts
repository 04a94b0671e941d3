import type { Lab } from './lab.ts';

/**
 * Surface colours of firing ends, CIELAB under D65, without shadow. Every number is a design estimate: no publication with measured
 * colours of used insulator noses was found. Drawn tips and everything that names colours use this one table.
 */
export const SURFACE = {
  cleanCeramic: [90, 0, 3],
  chalkWhite: [88, 0.5, 4],
  grey: [68, 0.5, 4],
  darkGrey: [40, 0.4, 2],
  tan: [70, 6, 18],
  brown: [48, 10, 20],
  darkBrown: [31, 8, 14],
  soot: [18, 0.4, 1],
  wetOil: [14, 0.8, 2],
  glaze: [56, 10, 34],
  leadGrey: [64, 0, 9],
  leadBead: [72, -1, 24],
  rust: [48, 26, 31],
  ash: [82, 1, 8],
  greenish: [74, -7, 8],
  steel: [60, 0.6, 3],
} as const satisfies Record<string, Lab>;

/** Munsell N5, the mid grey that photos and drawn tips lie on (ISO 3664 asks for a neutral surround; L* of N5 after ASTM D1535). */
export const SURROUND: Lab = [51.1, 0, 0];
