import { darkness, type Darkness } from './darkness.ts';
import { doubtsAbout } from './doubts.ts';
import { glossOf } from './gloss.ts';
import { labOfPixels } from './lab-pixels.ts';
import { locate, type Geometry } from './locate.ts';
import { medianOf } from './order.ts';
import type { Box, Circle, PixelImage } from './pixels.ts';
import { colourOf, electrodePlaces, flankPlaces, nosePlaces, rimPlaces, strapPlaces, type RegionColour } from './regions.ts';
import { SMALLEST_BORE_FOR_SPECKS, textureOf, type Texture } from './specks.ts';
import { brightLight } from './bright-light.ts';
import { suggestionsFrom, type Suggestion } from './suggest.ts';
import { surfaceGrid } from './surface-grid.ts';
import { balanceOnMetal, balanceOnPatch, type Balance, type PatchFault, type WhiteReference } from './white.ts';

type RegionName = 'nose' | 'shellRim' | 'centreElectrode' | 'groundElectrode';

/** What one picture of a firing end shows; what was not seen is absent. Lengths in pixels of the picture given. */
export type TipMeasurement = {
  readonly confidence: number;
  readonly doubts: readonly string[];
  readonly tip?: {
    readonly geometry: Geometry;
    readonly reference: WhiteReference;
    readonly regions: { readonly [R in RegionName]?: RegionColour };
    readonly darkCoverage: number;
    readonly gloss?: number;
    readonly specks?: number;
    readonly suggestions: readonly Suggestion[];
  };
};

/** What a person pointed out, in pixels of the picture; `colour` tells whether its colours are to be trusted at all. */
export type Given = { readonly neutral?: Box; readonly nose?: Circle; readonly colour: boolean };

/** Below this confidence the rings found are as likely something else: wrong ones got at most 0.32 on drawn pictures. */
const LEAST_CONFIDENCE = 0.35;
/** From this confidence on, values are suggested. */
const SUGGESTS_FROM = 0.45;
/** Dark shares: above the one the nose is called by its deposit, below the other dark spots are specks. */
const MOSTLY_DARK = 0.6;
const SPECKS_ONLY = 0.12;
const FEWEST_PIXELS = 25;
const NOTHING: TipMeasurement = { confidence: 0, doubts: ['no plug found: no ring structure in this picture; take it end-on, or point out the nose'] };

/** Finds the parts of a firing end and measures them. */
export function measureTip(image: PixelImage, given: Given): TipMeasurement {
  const geometry = locate(image, given.nose);
  if (geometry === undefined) return NOTHING;
  if (geometry.confidence < LEAST_CONFIDENCE) return { ...NOTHING, confidence: geometry.confidence };
  return measuredAt(image, geometry, given);
}

function measuredAt(image: PixelImage, geometry: Geometry, { neutral, colour }: Given): TipMeasurement {
  const metal = { rim: rimPlaces(image, geometry), strap: strapPlaces(image, geometry) };
  const { balance, patchFault } = balanceFor(image, geometry, metal, neutral);
  const pixels = labOfPixels(image, nosePlaces(image, geometry, 0.86, 0.05), balance);
  const dark = darkness(pixels);
  const { coverage, below } = dark;
  const nose = colour ? colourOf(pixels, 0.8, coverage > MOSTLY_DARK ? undefined : below) : undefined;
  const middle = medianOf(pixels.l.slice());
  const texture = geometry.bore.r < SMALLEST_BORE_FOR_SPECKS ? undefined : textureSeen(image, geometry, balance, dark);
  const reference: WhiteReference = colour ? balance.reference : { kind: 'none' };
  const parts = { ...(nose && { nose }), ...texture };
  const rimDarkness = darkness(labOfPixels(image, metal.rim, balance)).coverage;
  const seen = { located: geometry.confidence, reference: reference.kind, darkCoverage: coverage, rimDarkness, ...parts };
  const circumstances = {
    geometry, reference: reference.kind, ...(patchFault && { patchFault }), colourless: !colour, noseLightness: middle,
    clippedShare: pixels.clipped.reduce((sum, one) => sum + one, 0) / Math.max(1, pixels.l.length),
    examinedShare: pixels.l.length / (Math.PI * geometry.nose.r ** 2),
  };
  return {
    confidence: geometry.confidence,
    doubts: doubtsAbout(circumstances),
    tip: {
      geometry, reference, darkCoverage: coverage,
      regions: { ...(nose && { nose }), ...(colour ? otherRegions(image, geometry, metal, balance) : {}) },
      suggestions: geometry.confidence < SUGGESTS_FROM || pixels.l.length < FEWEST_PIXELS ? [] : suggestionsFrom(seen),
      ...(nose && { gloss: glossOf(pixels, nose, middle) }), ...(texture && { specks: texture.specks }),
    },
  };
}

type Metal = { readonly rim: Int32Array; readonly strap: Int32Array };
type Balanced = { readonly balance: Balance; readonly patchFault?: PatchFault };

function balanceFor(image: PixelImage, geometry: Geometry, { rim, strap }: Metal, neutral: Box | undefined): Balanced {
  const onPatch = neutral && balanceOnPatch(image, neutral);
  if (typeof onPatch === 'object') return { balance: onPatch };
  const places = [rim, strap, flankPlaces(image, geometry)];
  const balance = balanceOnMetal(places.map((some) => brightLight(image, some)).filter((light) => light !== undefined));
  return { balance, ...(onPatch && { patchFault: onPatch }) };
}

function otherRegions(image: PixelImage, geometry: Geometry, metal: Metal, balance: Balance): { readonly [R in RegionName]?: RegionColour } {
  const seen = (places: Int32Array): RegionColour | undefined => colourOf(labOfPixels(image, places, balance), 0.5);
  const [shellRim, centreElectrode] = [seen(metal.rim), seen(electrodePlaces(image, geometry))];
  const groundElectrode = geometry.strap.score < 0.3 ? undefined : seen(metal.strap);
  return { ...(shellRim && { shellRim }), ...(centreElectrode && { centreElectrode }), ...(groundElectrode && { groundElectrode }) };
}

function textureSeen(image: PixelImage, geometry: Geometry, balance: Balance, { coverage, below }: Darkness): Texture {
  const places = nosePlaces(image, geometry, 0.97, 0.025);
  const grid = surfaceGrid(labOfPixels(image, places, balance), places, image.width);
  const deposit = coverage > SPECKS_ONLY && below !== undefined ? below : -Infinity;
  return textureOf(grid, geometry.bore.r, (cell) => (grid.l[cell] ?? 0) < deposit);
}
