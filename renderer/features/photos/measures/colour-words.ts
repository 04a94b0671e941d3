import { hexFromLinear, linearFromLab, type Lab } from '../../../../core/photo/lab.ts';

/** CIELAB as the format gives it: three numbers. */
export const labOf = ([lightness = 0, a = 0, b = 0]: readonly number[]): Lab => [lightness, a, b];

/** A colour as the screen shows it. */
export const cssColour = (lab: readonly number[]): string => hexFromLinear(linearFromLab(labOf(lab)));

export type HueAndChroma = { readonly hue: number; readonly chroma: number };

/** Hue angle in degrees (0 red, 90 yellow, 180 green) and chroma, CIE 15:2018. */
export function hueAndChroma(lab: readonly number[]): HueAndChroma {
  const [, a, b] = labOf(lab);
  return { hue: ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360, chroma: Math.hypot(a, b) };
}

/** Below this chroma a colour is called grey and its hue means nothing: design estimate. */
export const GREY_BELOW = 3;
