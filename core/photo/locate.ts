import { centreCandidates } from './centre.ts';
import { focused, sharpestOf, type Focus } from './focus.ts';
import { clamped, type Circle, type PixelImage } from './pixels.ts';
import { halfSizeLuma, halved, type Plane } from './planes.ts';
import { brighterOutside, fitRing, ringOfCircle, ringScaled, type Ring } from './ring-fit.ts';
import { ringModel, type RingModel } from './ring-model.ts';
import { findStrap, type Strap } from './strap.ts';

/** Where the parts of a plug lie, in pixels of the picture. `confidence` (0 to 1) speaks for all of it. */
export type Geometry = {
  readonly bore: Ring;
  /** Outer edge of the shell's end face, and the outline of the shell with its thread. */
  readonly face: Ring;
  readonly shell: Ring;
  readonly nose: Ring;
  readonly noseFitted: boolean;
  readonly strap: Strap;
  readonly confidence: number;
};

/** Usual share of the bore that the nose fills: common practice, no source. */
const USUAL_NOSE = 0.6;

/** Finds the plug, starting from the nose if a person gave it; nothing where no ring is to be seen. */
export function locate(image: PixelImage, givenNose?: Circle): Geometry | undefined {
  const half = halfSizeLuma(image);
  const quarter = halved(half);
  const model = givenNose === undefined ? bestModel(quarter) : modelAround(quarter, givenNose);
  const found = model ?? (givenNose === undefined ? undefined : assumedAround(givenNose));
  return found && scaledUp(fitParts(half, found, givenNose));
}

const reachOf = ({ width, height }: Plane): number => Math.floor(0.52 * Math.min(width, height));

function bestModel(quarter: Plane): RingModel | undefined {
  const reach = reachOf(quarter);
  const bounds = [0.07 * Math.min(quarter.width, quarter.height), reach] as const;
  let best: RingModel | undefined;
  for (const centre of sharpestOf(quarter, centreCandidates(quarter), reach)) {
    const model = ringModel(quarter, focused(quarter, centre, reach), reach, bounds);
    if (model !== undefined && (best === undefined || model.score > best.score)) best = model;
  }
  return best;
}

const focusOf = ({ x, y }: Circle): Focus => ({ x: x / 4, y: y / 4, ex: 0, ey: 0 });

function modelAround(quarter: Plane, nose: Circle): RingModel | undefined {
  return ringModel(quarter, focusOf(nose), Math.max(reachOf(quarter), Math.ceil(0.6 * nose.r)), [nose.r / 4 / 0.86, nose.r / 4 / 0.36]);
}

const assumedAround = (nose: Circle): RingModel => ({ focus: focusOf(nose), bore: nose.r / 4 / USUAL_NOSE, score: 0 });

function fitParts(half: Plane, { focus, bore: coarse }: RingModel, givenNose: Circle | undefined): Geometry {
  const start = { ...focus, x: 2 * focus.x, y: 2 * focus.y };
  const bore = fitRing(half, { focus: start, r: 2 * coarse, within: 0.13, step: 'rise' });
  const around = { x: bore.x, y: bore.y, ex: bore.c2 / bore.r, ey: bore.s2 / bore.r };
  const fitted = fitRing(half, { focus: around, r: USUAL_NOSE * bore.r, within: 0.3, step: 'fall' });
  const noseFitted = givenNose !== undefined || isNose(fitted, bore);
  const nose = givenNose ? ringScaled(ringOfCircle(givenNose), 0.5) : noseFitted ? fitted : { ...ringScaled(bore, USUAL_NOSE), x: bore.x, y: bore.y };
  const strap = findStrap(half, bore);
  const face = fitRing(half, { focus: around, r: 1.32 * bore.r, within: 0.12, step: 'either' });
  const shell = outlineAround(half, bore, around, face);
  const boreShare = bore.share * clamped((brighterOutside(half, bore) - 0.5) / 0.3);
  const confidence = givenNose ? 1 : confidenceOf(boreShare, noseFitted ? fitted.share : 0, strap.score);
  return { bore, face, shell, nose, noseFitted, strap, confidence };
}

function isNose(fitted: Ring, bore: Ring): boolean {
  const ratio = fitted.r / bore.r;
  return fitted.share >= 0.22 && Math.hypot(fitted.x - bore.x, fitted.y - bore.y) <= 0.3 * bore.r && ratio > 0.36 && ratio < 0.86;
}

/** The outermost ring around the face that most directions agree on; the edge of the face itself where there is none. */
function outlineAround(half: Plane, bore: Ring, around: Focus, face: Ring): Ring {
  const trials = [1.46, 1.6].map((ratio) => fitRing(half, { focus: around, r: ratio * bore.r, within: 0.08, step: 'either' }));
  return trials.reduce((best, ring) => (ring.share > Math.max(0.5, 0.85 * best.share) && ring.r > 1.03 * best.r ? ring : best), face);
}

function confidenceOf(boreShare: number, noseShare: number, strapScore: number): number {
  const bore = clamped((boreShare - 0.35) / 0.4);
  const nose = clamped((noseShare - 0.15) / 0.4);
  const strap = clamped((strapScore - 0.3) / 0.7);
  return Math.cbrt(bore * (0.3 + 0.7 * nose) * (0.3 + 0.7 * strap));
}

function scaledUp(geometry: Geometry): Geometry {
  const { bore, face, shell, nose } = geometry;
  return { ...geometry, bore: ringScaled(bore, 2), face: ringScaled(face, 2), shell: ringScaled(shell, 2), nose: ringScaled(nose, 2) };
}
