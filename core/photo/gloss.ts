import type { LabPixels } from './lab-pixels.ts';
import type { RegionColour } from './regions.ts';
import { hueAngleOf, strengthOf } from './tint.ts';

/** Share of the surface taken by glare at which it counts as fully glossy: estimate. */
const FULL = 0.06;
const COLOURED = 0.1;

/**
 * A hint of gloss, 0 to 1: glare of the lamp is brighter than the surface, washed out and of the same hue; on white only clipping tells. Weak: on
 * drawn pictures about one glossy nose in three was found.
 */
export function glossOf({ l, a, b, clipped }: LabPixels, { lab, tint }: RegionColour, middle: number): number {
  const [strength, hue] = [strengthOf(tint), hueAngleOf(tint)];
  let glare = 0;
  for (let i = 0; i < l.length; i += 1) {
    if (strength < COLOURED) glare += lab[0] < 50 && (l[i] ?? 0) > middle + 18 ? 1 : clipped[i] ?? 0;
    else if (isGlare({ u: (a[i] ?? 0) / ((l[i] ?? 0) + 16), v: (b[i] ?? 0) / ((l[i] ?? 0) + 16) }, (l[i] ?? 0) - middle, strength, hue)) glare += 1;
  }
  return l.length === 0 ? 0 : Math.min(1, glare / l.length / FULL);
}

function isGlare(tint: { u: number; v: number }, brighter: number, strength: number, hue: number): boolean {
  if (brighter < 7 || strengthOf(tint) > 0.78 * strength) return false;
  const turn = Math.abs(hueAngleOf(tint) - hue);
  return Math.min(turn, 360 - turn) < 9;
}
