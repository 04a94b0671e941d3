import { darkness, type Darkness } from './darkness.ts';
import { doubtsAbout } from './doubts.ts';
import { glossOf } from './gloss.ts';
import { labOfPixels, type LabPixels } from './lab-pixels.ts';
import type { Geometry } from './geometry.ts';
import { heatLine, LEAST_CONTRAST, type HeatLine } from './heat-line.ts';
import { locate } from './locate.ts';
import { mixedLight } from './mixed-light.ts';
import { medianOf } from './order.ts';
import { LEAST_STRAP, type Parts } from './parts.ts';
import type { PixelImage } from './pixels.ts';
import { colourOf, electrodePlaces, flankPlaces, nosePlaces, rimPlaces, strapPlaces, type RegionColour } from './regions.ts';
import { SMALLEST_BORE_FOR_SPECKS, SOFT_FROM, textureOf, type Texture } from './specks.ts';
import { brightLight } from './bright-light.ts';
import { suggestionsFrom, type Suggestion } from './suggest.ts';
import { surfaceGrid } from './surface-grid.ts';
import { balanceOnGiven, balanceOnMetal, whiteDifference, type Balance, type GivenWhite, type PatchFault } from './white.ts';

type RegionName = 'nose' | 'shellRim' | 'centreElectrode' | 'groundElectrode';

/** What one picture of a firing end shows; what was not seen is absent. Lengths in pixels of the picture given. */
export type TipMeasurement = {
  readonly confidence: number;
  readonly doubts: readonly string[];
  readonly tip?: TipSeen;
};

export type TipSeen = {
  readonly geometry: Geometry;
  readonly balance: Balance;
  readonly regions: { readonly [R in RegionName]?: RegionColour };
  readonly darkCoverage: number;
  /** Share of the nose that could be seen. */
  readonly examined: number;
  /** Shares of the nose that are overexposed and nearly black; `mixed` as `mixedLight` says. */
  readonly light: { readonly clipped: number; readonly dark: number; readonly mixed?: number };
  readonly gloss?: number;
  readonly specks?: number;
  readonly grain?: number;
  readonly heatLine?: HeatLine;
  readonly suggestions: readonly Suggestion[];
};

/** What a person pointed out, in pixels of the picture; `colour` tells whether its colours are to be trusted at all. */
export type Given = { readonly white?: GivenWhite; readonly parts?: Parts; readonly colour: boolean };

/** Below this confidence the rings found are as likely something else: wrong ones got at most 0.32 on drawn pictures. */
const LEAST_CONFIDENCE = 0.35;
/** From this confidence on, values are suggested. */
const SUGGESTS_FROM = 0.45;
/** Dark shares: above the one the nose is called by its deposit, below the other dark spots are specks. */
const MOSTLY_DARK = 0.6;
const SPECKS_ONLY = 0.12;
const FEWEST_PIXELS = 25;
const NEARLY_BLACK = 6;
const NOTHING: TipMeasurement = { confidence: 0, doubts: ['no plug found: no ring structure in this picture; take it end-on, or point out the nose'] };

/** Finds the parts of a firing end and measures them. */
export function measureTip(image: PixelImage, given: Given): TipMeasurement {
  const geometry = locate(image, given.parts);
  if (geometry === undefined) return NOTHING;
  if (geometry.confidence < LEAST_CONFIDENCE) return { ...NOTHING, confidence: geometry.confidence };
  return measuredAt(image, geometry, given);
}

function measuredAt(image: PixelImage, geometry: Geometry, { white, colour }: Given): TipMeasurement {
  const metal = metalIn(image, geometry);
  const { balance, ...aboutWhite } = balanceFor(image, metal, white);
  const pixels = labOfPixels(image, nosePlaces(image, geometry, 0.86, 0.05), balance);
  const dark = darkness(pixels);
  const middle = medianOf(pixels.l.slice());
  const reference = colour ? balance.reference : { kind: 'none' as const };
  const texture = geometry.bore.r < SMALLEST_BORE_FOR_SPECKS || geometry.softness > SOFT_FROM ? undefined : textureSeen(image, geometry, balance, dark);
  const coloured = colour ? colouredParts(image, geometry, metal, balance, pixels, dark) : { regions: {} };
  const { nose } = coloured.regions;
  const light = { clipped: shareOf(pixels.clipped, (one) => one === 1), dark: shareOf(pixels.l, (l) => l < NEARLY_BLACK), ...coloured.mixed };
  const examined = Math.min(1, pixels.l.length / (Math.PI * geometry.nose.r ** 2));
  const rimDarkness = darkness(labOfPixels(image, metal.rim, balance)).coverage;
  const parts = { ...(nose && { nose }), ...texture, ...coloured.line };
  const seen = { located: geometry.confidence, clipped: light.clipped, reference: reference.kind, darkCoverage: dark.coverage, rimDarkness, ...parts };
  return {
    confidence: geometry.confidence,
    doubts: doubtsAbout({ geometry, reference, ...aboutWhite, colourless: !colour, light, noseLightness: middle, examined }),
    tip: {
      geometry, balance: { ...balance, reference }, regions: coloured.regions, darkCoverage: dark.coverage, examined, light,
      suggestions: geometry.confidence < SUGGESTS_FROM || pixels.l.length < FEWEST_PIXELS ? [] : suggestionsFrom(seen),
      ...(nose && { gloss: glossOf(pixels, nose, middle) }), ...texture, ...(isLine(coloured.line?.heatLine) && coloured.line),
    },
  };
}

const isLine = (line: HeatLine | undefined): boolean => line !== undefined && line.contrast >= LEAST_CONTRAST;

type Coloured = { readonly regions: TipSeen['regions']; readonly line?: { readonly heatLine: HeatLine } | undefined; readonly mixed?: { readonly mixed: number } | undefined };

/** What only a picture in colour tells. */
function colouredParts(image: PixelImage, geometry: Geometry, metal: Metal, balance: Balance, pixels: LabPixels, { coverage, below }: Darkness): Coloured {
  const nose = colourOf(pixels, 0.8, coverage > MOSTLY_DARK ? undefined : below);
  const line = geometry.strap.score >= LEAST_STRAP ? heatLine(image, geometry, balance) : undefined;
  const mixed = mixedLight(image, geometry, metal.rim, balance);
  return {
    regions: { ...(nose && { nose }), ...otherRegions(image, geometry, metal, balance) },
    line: line && { heatLine: line }, mixed: mixed === undefined ? undefined : { mixed },
  };
}

function shareOf(values: Float32Array | Uint8Array, is: (value: number) => boolean): number {
  let count = 0;
  for (const value of values) if (is(value)) count += 1;
  return count / Math.max(1, values.length);
}

type Metal = { readonly rim: Int32Array; readonly strap: Int32Array; readonly flank: Int32Array };
const metalIn = (image: PixelImage, geometry: Geometry): Metal =>
  ({ rim: rimPlaces(image, geometry), strap: strapPlaces(image, geometry), flank: flankPlaces(image, geometry) });

/** `metalOff`: how far the metal is from steel under a white that was borrowed from another photo (dE00 of hue and chroma). */
type Balanced = { readonly balance: Balance; readonly patchFault: PatchFault | undefined; readonly metalOff: number | undefined };

function balanceFor(image: PixelImage, { rim, strap, flank }: Metal, white: GivenWhite | undefined): Balanced {
  const onMetal = balanceOnMetal([rim, strap, flank].map((some) => brightLight(image, some)).filter((light) => light !== undefined));
  const onGiven = white && balanceOnGiven(image, white);
  if (typeof onGiven !== 'object') return { balance: onMetal, patchFault: onGiven, metalOff: undefined };
  const borrowed = white?.kind === 'light' && onMetal.reference.kind !== 'none';
  return { balance: onGiven, patchFault: undefined, metalOff: borrowed ? whiteDifference(onGiven, onMetal) : undefined };
}

function otherRegions(image: PixelImage, geometry: Geometry, metal: Metal, balance: Balance): { readonly [R in RegionName]?: RegionColour } {
  const seen = (places: Int32Array): RegionColour | undefined => colourOf(labOfPixels(image, places, balance), 0.5);
  const [shellRim, centreElectrode] = [seen(metal.rim), seen(electrodePlaces(image, geometry))];
  const groundElectrode = geometry.strap.score < LEAST_STRAP ? undefined : seen(metal.strap);
  return { ...(shellRim && { shellRim }), ...(centreElectrode && { centreElectrode }), ...(groundElectrode && { groundElectrode }) };
}

function textureSeen(image: PixelImage, geometry: Geometry, balance: Balance, { coverage, below }: Darkness): Texture {
  const places = nosePlaces(image, geometry, 0.97, 0.025);
  const grid = surfaceGrid(labOfPixels(image, places, balance), places, image.width);
  const deposit = coverage > SPECKS_ONLY && below !== undefined ? below : -Infinity;
  return textureOf(grid, geometry.bore.r, (cell) => (grid.l[cell] ?? 0) < deposit);
}
