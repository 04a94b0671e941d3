import { ciede2000 } from './ciede2000.ts';
import type { Lab } from './lab.ts';

/**
 * What of a colour survives shading: less light scales a*, b* and L* + 16 alike (all are differences of cube roots), so their ratios stay.
 * Holds above L* 8, where CIELAB is a cube root.
 */
export type Tint = { readonly u: number; readonly v: number };

/** The lightness at which two tints are set side by side; between the design colours of noses. */
const COMMON_LIGHTNESS = 65;

export const tintOf = ([lightness, a, b]: Lab): Tint => ({ u: a / (lightness + 16), v: b / (lightness + 16) });

/** 0 is grey; tan porcelain has about 0.22, rust 0.6. */
export const strengthOf = ({ u, v }: Tint): number => Math.hypot(u, v);

/** Hue angle in degrees, 0 to 360: 0 red, 90 yellow, 180 green. */
export const hueAngleOf = ({ u, v }: Tint): number => ((Math.atan2(v, u) * 180) / Math.PI + 360) % 360;

/** The same tint at another lightness. */
export const atLightness = ({ u, v }: Tint, lightness = COMMON_LIGHTNESS): Lab => [lightness, u * (lightness + 16), v * (lightness + 16)];

/** Difference of hue and chroma alone: CIEDE2000 with both brought to one lightness. */
export const tintDifference = (one: Tint, other: Tint): number => ciede2000(atLightness(one), atLightness(other));
