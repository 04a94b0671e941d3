import { centreCandidates } from './centre.ts';
import { focused, sharpestOf, type Focus } from './focus.ts';
import { clamped, type Circle, type PixelImage } from './pixels.ts';
import type { Geometry } from './geometry.ts';
import { LEAST_STRAP, partsScaled, strapOf, type Parts } from './parts.ts';
import { halfSizeLuma, halved, type Plane } from './planes.ts';
import { brighterOutside, fitRing, ringOfCircle, ringScaled, softnessOf, type Ring } from './ring-fit.ts';
import { ringModel, type RingModel } from './ring-model.ts';
import { findStrap, underStrap, type Strap } from './strap.ts';

/** Usual share of the bore that the nose fills: common practice, no source. */
const USUAL_NOSE = 0.6;
/** The same of the outline of the shell and of the centre electrode. */
const USUAL_OUTLINE = 1.55;
const USUAL_ELECTRODE = 0.21;

/** Finds the plug, around the parts that a person gave if there are any; nothing where no ring is to be seen. */
export function locate(image: PixelImage, given: Parts = {}): Geometry | undefined {
  const half = halfSizeLuma(image);
  const found = modelFor(halved(half), given);
  return found && scaledUp(fitParts(half, found, partsScaled(given, 0.5)));
}

function modelFor(quarter: Plane, { bore, nose, shell }: Parts): Found | undefined {
  if (bore !== undefined) return { focus: focusOf(bore), bore: bore.r / 4, score: 0 };
  if (nose !== undefined) return modelAround(quarter, nose) ?? { focus: focusOf(nose), bore: nose.r / 4 / USUAL_NOSE, score: 0 };
  if (shell !== undefined) return modelWithin(quarter, shell) ?? { focus: focusOf(shell), bore: shell.r / 4 / USUAL_OUTLINE, score: 0 };
  return bestModel(quarter);
}

/** Of the picture's shorter side; rings smaller than this are dirt. */
const SMALLEST_BORE = 0.04;
const NEARLY_AS_CLEAR = 0.75;

const reachOf = ({ width, height }: Plane): number => Math.floor(0.52 * Math.min(width, height));

type Found = RingModel & { readonly several?: boolean };

function bestModel(quarter: Plane): Found | undefined {
  const reach = reachOf(quarter);
  const bounds = [SMALLEST_BORE * Math.min(quarter.width, quarter.height), reach] as const;
  const models = sharpestOf(quarter, centreCandidates(quarter), reach).map((centre) => ringModel(quarter, focused(quarter, centre, reach), reach, bounds))
    .filter((model) => model !== undefined).sort((one, other) => other.score - one.score);
  const [best, ...others] = models;
  return best && { ...best, several: others.some((other) => isAnother(best, other)) };
}

/** Whether a second set of rings lies beside the first and is nearly as clear. */
const isAnother = (best: RingModel, other: RingModel): boolean =>
  Math.hypot(best.focus.x - other.focus.x, best.focus.y - other.focus.y) > best.bore + other.bore && other.score > NEARLY_AS_CLEAR * best.score;

const focusOf = ({ x, y }: Circle): Focus => ({ x: x / 4, y: y / 4, ex: 0, ey: 0 });

function modelAround(quarter: Plane, nose: Circle): RingModel | undefined {
  return ringModel(quarter, focusOf(nose), Math.max(reachOf(quarter), Math.ceil(0.6 * nose.r)), [nose.r / 4 / 0.86, nose.r / 4 / 0.36]);
}

function modelWithin(quarter: Plane, shell: Circle): RingModel | undefined {
  return ringModel(quarter, focusOf(shell), Math.max(reachOf(quarter), Math.ceil(shell.r / 4)), [shell.r / 4 / 1.75, shell.r / 4 / 1.35]);
}

function fitParts(half: Plane, { focus, bore: coarse, several = false }: Found, given: Parts): Geometry {
  const start = { ...focus, x: 2 * focus.x, y: 2 * focus.y };
  const bore = given.bore ? ringOfCircle(given.bore) : fitRing(half, { focus: start, r: 2 * coarse, within: 0.13, step: 'rise' });
  const around = { x: bore.x, y: bore.y, ex: bore.c2 / bore.r, ey: bore.s2 / bore.r };
  const fitted = fitRing(half, { focus: around, r: USUAL_NOSE * bore.r, within: 0.3, step: 'fall' });
  const noseFitted = given.nose !== undefined || isNose(fitted, bore);
  const nose = given.nose ? ringOfCircle(given.nose) : noseFitted ? fitted : { ...ringScaled(bore, USUAL_NOSE), x: bore.x, y: bore.y };
  const strap = given.groundElectrode ? strapOf(given.groundElectrode, bore) : findStrap(half, bore);
  const face = fitRing(half, { focus: around, r: 1.32 * bore.r, within: 0.12, step: 'either' });
  const shell = given.shell ? ringOfCircle(given.shell) : outlineAround(half, bore, around, face);
  const electrode = given.centreElectrode ? ringOfCircle(given.centreElectrode) : electrodeAround(half, nose, bore, strap);
  const boreShare = bore.share * clamped((brighterOutside(half, bore) - 0.5) / 0.3);
  const pointedOut = given.bore !== undefined || given.nose !== undefined;
  const confidence = pointedOut ? 1 : confidenceOf(boreShare, noseFitted ? fitted.share : 0, strap.score);
  return { bore, face, shell, nose, noseFitted, strap, electrode, confidence, several, softness: softnessOf(half, bore) };
}

/** The edge of the centre electrode on the nose where the strap leaves it free; of the usual size where no edge agrees with itself. */
function electrodeAround(half: Plane, nose: Ring, bore: Ring, strap: Strap): Ring {
  const usual = { ...ringScaled(bore, USUAL_ELECTRODE), x: nose.x, y: nose.y, share: 0 };
  const covered = underStrap(strap, bore, 0.02);
  const focus = { x: nose.x, y: nose.y, ex: bore.c2 / bore.r, ey: bore.s2 / bore.r };
  const fitted = fitRing(half, { focus, r: USUAL_ELECTRODE * bore.r, within: 0.35, step: 'either', unless: covered });
  const offCentre = Math.hypot(fitted.x - nose.x, fitted.y - nose.y) / bore.r;
  return fitted.share >= 0.3 && offCentre < 0.12 && fitted.r < 0.62 * nose.r ? fitted : usual;
}

function isNose(fitted: Ring, bore: Ring): boolean {
  const ratio = fitted.r / bore.r;
  return fitted.share >= CHANCE && Math.hypot(fitted.x - bore.x, fitted.y - bore.y) <= 0.3 * bore.r && ratio > 0.36 && ratio < 0.86;
}

/** The outermost ring around the face that most directions agree on; the edge of the face itself where there is none. */
function outlineAround(half: Plane, bore: Ring, around: Focus, face: Ring): Ring {
  const trials = [1.46, 1.6].map((ratio) => fitRing(half, { focus: around, r: ratio * bore.r, within: 0.08, step: 'either' }));
  return trials.reduce((best, ring) => (ring.share > Math.max(0.5, 0.85 * best.share) && ring.r > 1.03 * best.r ? ring : best), face);
}

/** Share of the directions that agree with a ring by chance, on a surface without any: up to this on drawn pictures of other round things. */
const CHANCE = 0.35;

/** How sure the whole is: a bore alone is none (a cup, a pipe); a bore with a nose, or with a strap, is to be asked about. */
function confidenceOf(boreShare: number, noseShare: number, strapScore: number): number {
  const bore = clamped((boreShare - 0.35) / 0.4);
  const nose = clamped((noseShare - CHANCE) / 0.35);
  const strap = clamped((strapScore - LEAST_STRAP) / 0.35);
  return Math.cbrt(bore * (0.15 + 0.85 * nose) * (0.25 + 0.75 * strap));
}

function scaledUp(geometry: Geometry): Geometry {
  const { bore, face, shell, nose, electrode } = geometry;
  return {
    ...geometry,
    bore: ringScaled(bore, 2), face: ringScaled(face, 2), shell: ringScaled(shell, 2), nose: ringScaled(nose, 2), electrode: ringScaled(electrode, 2),
  };
}
