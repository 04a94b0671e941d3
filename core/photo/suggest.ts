import type { FacetName, FacetValue } from '../../shared/vocabulary/tip.ts';
import { LEAST_CONTRAST, type HeatLine } from './heat-line.ts';
import { noseColourName } from './nose-colour.ts';
import type { RegionColour } from './regions.ts';
import { hueAngleOf, strengthOf } from './tint.ts';
import type { WhiteReference } from './white.ts';

/** A facet value that the picture speaks for, how much it is to be believed (0 to 1), and why. A person decides. */
export type Suggestion = { [F in FacetName]: SuggestionOf<F> }[FacetName];
type SuggestionOf<F extends FacetName> = { readonly facet: F; readonly value: FacetValue<F>; readonly belief: number; readonly because: string };

/** What was seen; a part that was not examined is absent. `located` is the confidence in the geometry. */
export type Seen = {
  readonly located: number;
  /** Share of the nose that is overexposed. */
  readonly clipped: number;
  readonly reference: WhiteReference['kind'];
  readonly nose?: RegionColour;
  readonly darkCoverage: number;
  readonly rimDarkness?: number;
  readonly specks?: number;
  readonly grain?: number;
  readonly heatLine?: HeatLine;
};

/** How far a colour name is to be trusted on each kind of reference: shares of right names on drawn pictures, rounded down. */
const TRUST: Record<WhiteReference['kind'], number> = { patch: 0.85, estimated: 0.7, none: 0.4 };
/** Where more of the nose is overexposed, its colour is that of the sensor's limit. */
const CLIPPED_TELLS_NOTHING = 0.4;
const SPECKS_THAT_COUNT = 3;
const CRUST_GRAIN = 2.3;

const percent = (share: number): string => `${Math.round(100 * share)} %`;

export function suggestionsFrom(seen: Seen): readonly Suggestion[] {
  const found = [colourOf(seen), coverageOf(seen), specksOf(seen), crustOf(seen), rimOf(seen), heatLineOf(seen)];
  return found.filter((one) => one !== undefined).map((one) => ({ ...one, belief: Math.round(100 * one.belief * seen.located) / 100 }));
}

function colourOf({ nose, darkCoverage, reference, clipped }: Seen): Suggestion | undefined {
  if (nose === undefined || clipped > CLIPPED_TELLS_NOTHING) return undefined;
  const value = noseColourName({ tint: nose.tint, lightest: nose.lab[0], dark: darkCoverage });
  const because = `nose L* ${nose.lab[0].toFixed(0)}, chroma ${strengthOf(nose.tint).toFixed(2)} of L* + 16, hue ${hueAngleOf(nose.tint).toFixed(0)} degrees, ${percent(darkCoverage)} dark`;
  return { facet: 'noseColour', value, belief: TRUST[reference] * (1 - clipped), because };
}

function coverageOf({ darkCoverage }: Seen): Suggestion {
  const value = darkCoverage < 0.06 ? 'none' : darkCoverage < 0.3 ? 'light' : darkCoverage < 0.8 ? 'partial' : 'full';
  return { facet: 'coverage', value, belief: value === 'none' || value === 'full' ? 0.85 : 0.65, because: `${percent(darkCoverage)} of the visible nose is dark` };
}

function specksOf({ specks }: Seen): Suggestion | undefined {
  if (specks === undefined || specks < SPECKS_THAT_COUNT) return undefined;
  return { facet: 'specks', value: 'dark pepper', belief: 0.7, because: `${specks} isolated dark spots on the part of the nose that can be seen` };
}

function crustOf({ grain, darkCoverage }: Seen): Suggestion | undefined {
  if (grain === undefined || grain < CRUST_GRAIN || darkCoverage > 0.6) return undefined;
  return { facet: 'noseSurface', value: 'crust', belief: 0.6, because: `the surface is grainy: L* scatters by ${grain.toFixed(1)}, smooth noses by less than 1.5` };
}

function rimOf({ rimDarkness }: Seen): Suggestion | undefined {
  if (rimDarkness === undefined || (rimDarkness > 0.2 && rimDarkness < 0.75)) return undefined;
  const sooty = rimDarkness >= 0.75;
  return { facet: 'shellRim', value: sooty ? 'even soot' : 'bare metal', belief: sooty ? 0.6 : 0.5, because: `${percent(rimDarkness)} of the shell's face is dark` };
}

/** Where the bend and the weld lie along the electrode seen end-on: estimate. */
const [BEND_FROM, WELD_FROM] = [0.4, 0.75];

function heatLineOf({ heatLine }: Seen): Suggestion | undefined {
  if (heatLine === undefined) return undefined;
  if (heatLine.contrast < LEAST_CONTRAST) return { facet: 'heatLine', value: 'none visible', belief: 0.4, because: 'no lasting change of colour along the ground electrode' };
  const { along, contrast } = heatLine;
  const value = along < BEND_FROM ? 'near the end' : along < WELD_FROM ? 'at the bend' : 'near the weld';
  return { facet: 'heatLine', value, belief: 0.5, because: `the colour of the ground electrode changes by ${contrast.toFixed(0)} at ${percent(along)} of the way from its free end` };
}
