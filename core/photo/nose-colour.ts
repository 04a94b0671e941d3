import type { FacetValue } from '../../shared/vocabulary/tip.ts';
import { hueAngleOf, strengthOf, type Tint } from './tint.ts';

/** What names a nose: its tint, the L* that its lightest fifth reaches, and how much of it is dark (0 to 1). */
export type NoseLook = { readonly tint: Tint; readonly lightest: number; readonly dark: number };

const isReddish = (hue: number, strength: number): boolean => (hue < 57 || hue > 330) && strength > 0.2;
const isYellow = (hue: number, strength: number): boolean => (hue >= 69 && strength > 0.34) || (hue > 84 && strength > 0.09);
const isBrown = (lightest: number, strength: number): boolean => (strength > 0.275 && lightest < 64) || (lightest < 50 && strength > 0.16);

function greyName(lightest: number): FacetValue<'noseColour'> {
  if (lightest > 72) return 'white';
  return lightest > 42 ? 'light grey' : 'dark grey';
}

/**
 * The word for a nose colour. The limits were set knowing the design colours of this program and must be fitted again on real plugs; the hue and
 * strength at which names change are estimates.
 */
export function noseColourName({ tint, lightest, dark }: NoseLook): FacetValue<'noseColour'> {
  const [strength, hue] = [strengthOf(tint), hueAngleOf(tint)];
  if (dark > 0.6 || lightest < 24) return 'black';
  if (lightest < 32 && strength < 0.2) return lightest < 28 ? 'black' : 'dark grey';
  if (strength < 0.075) return greyName(lightest);
  if (hue > 105 && hue < 210) return 'greenish';
  if (isReddish(hue, strength)) return 'reddish';
  if (isYellow(hue, strength)) return 'yellow';
  if (isBrown(lightest, strength)) return lightest < 40 ? 'dark brown' : 'brown';
  return 'light tan';
}
