import { adaptation } from './bradford.ts';
import { D65, labFromXyz, xyzFromLab, type Lab } from './lab.ts';
import { after, applied, diagonal, scaled, type Matrix, type Triple } from './matrix.ts';
import { quantileOf } from './order.ts';
import type { Box, PixelImage } from './pixels.ts';
import { solved } from './solve.ts';
import { LIGHT_OF_BYTE, RGB_TO_XYZ, xyzFromLinear, type LinearRgb } from './srgb.ts';
import { tintDifference, tintOf } from './tint.ts';

/** What the colours of a picture stand on. Lightness is known only where the light that the reference sends back is. */
export type WhiteReference =
  | { readonly kind: 'patch'; readonly taken: 'grey card' | 'white paper' | 'other photo' }
  | { readonly kind: 'estimated'; readonly taken: 'bare metal' | 'other photo' }
  | { readonly kind: 'none' };

/** The neutral thing a person pointed out: a card or paper, the bare shell, or the white of another photo under the same lamp. */
export type GivenWhite =
  | { readonly kind: 'patch'; readonly box: Box; readonly taken?: 'grey card' | 'white paper' | undefined }
  | { readonly kind: 'metal'; readonly box: Box }
  | { readonly kind: 'light'; readonly white: LinearRgb; readonly reference: 'patch' | 'estimated' };

/**
 * `toRelative` turns linear sRGB of the camera into XYZ on the corrected white, each part of D65's. `white` is what a surface that sends back all light
 * looks like in the picture, in linear sRGB; another photo under the same lamp can stand on it.
 */
export type Balance = { readonly reference: WhiteReference; readonly toRelative: Matrix; readonly white: LinearRgb };

/** Why an area cannot be the reference. */
export type PatchFault = 'too small' | 'clipped' | 'too dark';

/** L* of the usual grey card and of plain office paper: common practice, no source. Their hue is taken as none. */
const GREY_CARD: Lab = [51, 0, 0];
const WHITE_PAPER: Lab = [93, 0, 0];
/** Colour of a bare steel shell: design estimate. */
const STEEL: Lab = [60, 0.6, 3];
const PAPER_IS_BRIGHTER_THAN = 0.36;
/** Cameras leave some room above white; without a reference the exposure is taken to be this share of full. */
const USUAL_EXPOSURE = 0.8;
const SHRUNK = 0.72;
const FEWEST_PIXELS = 25;

const toPartsOfWhite = diagonal([1 / D65[0], 1 / D65[1], 1 / D65[2]]);

const balance = (reference: WhiteReference, toRelative: Matrix): Balance => ({ reference, toRelative, white: whiteIn(toRelative) });

/** The light that becomes the corrected white. */
function whiteIn(toRelative: Matrix): LinearRgb {
  const [red = 0, green = 0, blue = 0] = solved(toRelative.map((row) => [...row, 1])) ?? [];
  return [red, green, blue];
}

const asTaken = balance({ kind: 'none' }, scaled(after(toPartsOfWhite, RGB_TO_XYZ), 1 / USUAL_EXPOSURE));

/** The matrix that makes `neutral` look like `surface` at the luminance `y` (1 is white), by Bradford adaptation in linear light. */
function balanced(neutral: LinearRgb, surface: Lab, y: number): Matrix {
  const [from, to] = [xyzFromLinear(neutral), xyzFromLab(surface)];
  const relative = (xyz: Triple): Triple => [xyz[0] / xyz[1], 1, xyz[2] / xyz[1]];
  return after(toPartsOfWhite, scaled(after(adaptation(relative(from), relative(to)), RGB_TO_XYZ), y / from[1]));
}

/** Balance on what a person pointed out, or why that cannot be stood on. */
export function balanceOnGiven(image: PixelImage, given: GivenWhite): Balance | PatchFault {
  if (given.kind === 'light') return balanceOnWhite(given.white, given.reference);
  if (given.kind === 'patch') return balanceOnPatch(image, given.box, given.taken);
  const metal = patchLight(image, given.box);
  return typeof metal === 'string' ? metal : balanceOnMetal([metal]);
}

const balanceOnWhite = (white: LinearRgb, kind: 'patch' | 'estimated'): Balance =>
  balance({ kind, taken: 'other photo' }, balanced(white, [100, 0, 0], 1));

/** Balance on an area that a person says is neutral: a grey card if it is of middling brightness, else white paper, where the person does not say which. */
export function balanceOnPatch(image: PixelImage, box: Box, said?: 'grey card' | 'white paper'): Balance | PatchFault {
  const neutral = patchLight(image, box);
  if (typeof neutral === 'string') return neutral;
  const luminance = xyzFromLinear(neutral)[1];
  const taken = said ?? (luminance > PAPER_IS_BRIGHTER_THAN ? 'white paper' : 'grey card');
  const surface = taken === 'white paper' ? WHITE_PAPER : GREY_CARD;
  return balance({ kind: 'patch', taken }, balanced(neutral, surface, xyzFromLab(surface)[1]));
}

function patchLight(image: PixelImage, box: Box): LinearRgb | PatchFault {
  const channels = channelsIn(image, box);
  if (channels.length < 3 || (channels[0]?.length ?? 0) < FEWEST_PIXELS) return 'too small';
  if (channels.some((bytes) => (bytes[Math.floor(0.95 * (bytes.length - 1))] ?? 0) >= 254)) return 'clipped';
  const [red = 0, green = 0, blue = 0] = channels.map(middleLight);
  return green < 0.02 || red <= 0 || blue <= 0 ? 'too dark' : [red, green, blue];
}

/** The bytes of each channel, in order of size, within the area shrunk to 72 %: its rim may lie beside the card. */
function channelsIn({ width, height, rgb }: PixelImage, { x, y, w, h }: Box): readonly Uint8Array[] {
  const [cx, cy] = [x + w / 2, y + h / 2];
  const [x0, x1] = [Math.max(0, Math.round(cx - (w * SHRUNK) / 2)), Math.min(width, Math.round(cx + (w * SHRUNK) / 2))];
  const [y0, y1] = [Math.max(0, Math.round(cy - (h * SHRUNK) / 2)), Math.min(height, Math.round(cy + (h * SHRUNK) / 2))];
  if (x1 <= x0 || y1 <= y0) return [];
  return [0, 1, 2].map((channel) => {
    const bytes = new Uint8Array((x1 - x0) * (y1 - y0));
    let at = 0;
    for (let j = y0; j < y1; j += 1) for (let i = x0; i < x1; i += 1, at += 1) bytes[at] = rgb[(j * width + i) * 3 + channel] ?? 0;
    return bytes.sort();
  });
}

/** Mean light of the middle 60 % of ordered bytes. */
function middleLight(bytes: Uint8Array): number {
  const middle = bytes.subarray(Math.floor(bytes.length * 0.2), Math.ceil(bytes.length * 0.8));
  return middle.reduce((sum, byte) => sum + (LIGHT_OF_BYTE[byte] ?? 0), 0) / middle.length;
}

/** Balance on bare metal; `samples` are the light of places that should be steel. Without any, the camera's own balance stands. */
export function balanceOnMetal(samples: readonly LinearRgb[]): Balance {
  const usable = samples.filter(([red, green, blue]) => green > 0.008 && Math.min(red, blue) > 0.003);
  if (usable.length === 0) return asTaken;
  const middle = (of: (light: LinearRgb) => number): number => Math.exp(quantileOf(Float32Array.from(usable, (light) => Math.log(of(light))), 0.5));
  const neutral: LinearRgb = [middle(([red, green]) => red / green), 1, middle(([, green, blue]) => blue / green)];
  const y = xyzFromLinear(neutral)[1];
  return balance({ kind: 'estimated', taken: 'bare metal' }, balanced(neutral, STEEL, y / USUAL_EXPOSURE));
}

/** How far two whites of one picture lie apart in hue and chroma: CIEDE2000 of the second's white seen on the first, at L* 65. */
export function whiteDifference(one: Balance, other: Balance): number {
  const seen = applied(one.toRelative, other.white);
  return tintDifference(tintOf(labFromXyz([seen[0] / seen[1], 1, seen[2] / seen[1]], [1, 1, 1])), { u: 0, v: 0 });
}
