import { brightLight } from './bright-light.ts';
import type { Geometry } from './geometry.ts';
import { labFromXyz } from './lab.ts';
import { applied } from './matrix.ts';
import type { PixelImage } from './pixels.ts';
import { byQuarter } from './regions.ts';
import { tintDifference, tintOf, type Tint } from './tint.ts';
import type { Balance } from './white.ts';

/** From this difference of hue and chroma (dE00) between two sides of the shell on, the light is called mixed; see docs/photos.md for how it was set. */
export const MIXED_FROM = 5;
/** Metal as dark as this (luminance against the brightest quarter) is soot or shadow and tells nothing of the lamp. */
const TELLS_FROM = 0.25;

/**
 * How far the metal on two sides of the shell differs in hue and chroma (CIEDE2000 at one lightness): two lamps of different colour show here. Stains do
 * too. Nothing where fewer than two sides tell.
 */
export function mixedLight(image: PixelImage, geometry: Geometry, metal: Int32Array, { toRelative }: Balance): number | undefined {
  const relative = byQuarter(image, geometry, metal).map((places) => brightLight(image, places)).filter((light) => light !== undefined)
    .map((light) => applied(toRelative, light));
  const brightest = Math.max(...relative.map(([, y]) => y));
  const tints = relative.filter(([, y]) => y > TELLS_FROM * brightest && y > 0.01).map((parts): Tint => tintOf(labFromXyz(parts, [1, 1, 1])));
  if (tints.length < 2) return undefined;
  return Math.max(...tints.flatMap((one, i) => tints.slice(i + 1).map((other) => tintDifference(one, other))));
}
