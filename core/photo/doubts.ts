import type { Geometry } from './geometry.ts';
import { MIXED_FROM } from './mixed-light.ts';
import { LEAST_STRAP } from './parts.ts';
import { SMALLEST_BORE_FOR_SPECKS, SOFT_FROM } from './specks.ts';
import type { PatchFault, WhiteReference } from './white.ts';

const PATCH_WORDS: Record<PatchFault, string> = {
  'too small': 'the neutral area is too small; give at least 7 by 7 pixels of the picture at 1024 pixels',
  clipped: 'the neutral area is overexposed; take the picture a little darker',
  'too dark': 'the neutral area is too dark to show a colour; give it more light',
};
const REFERENCE_WORDS: Record<WhiteReference['kind'], string | undefined> = {
  patch: undefined,
  estimated: 'no neutral reference: the white was estimated from bare metal, so hue may be off and lightness is a guess; put a grey card or plain paper beside the shell',
  none: 'no neutral reference and no bare metal: colours are as the camera balanced them, too uncertain to judge',
};
/** Steel is not quite grey, shells differ: from this difference (dE00) on a borrowed white is called doubtful. */
const METAL_OFF_FROM = 7;

export type Circumstances = {
  readonly geometry: Geometry;
  readonly reference: WhiteReference;
  readonly patchFault: PatchFault | undefined;
  readonly metalOff: number | undefined;
  readonly colourless: boolean;
  readonly light: { readonly clipped: number; readonly dark: number; readonly mixed?: number };
  readonly noseLightness: number;
  readonly examined: number;
};

/** What makes a measurement doubtful, in words for the person. */
export function doubtsAbout(circumstances: Circumstances): readonly string[] {
  const { examined } = circumstances;
  const lines = [...aboutGeometry(circumstances.geometry), ...aboutLight(circumstances), `${Math.round(100 * examined)} % of the nose could be seen and was examined`];
  return lines.filter((line) => line !== undefined);
}

type Lines = readonly (string | undefined)[];

function aboutGeometry({ bore, strap, noseFitted, confidence, several, softness }: Geometry): Lines {
  const tilt = Math.hypot(bore.c2, bore.s2) / bore.r;
  return [
    confidence < 0.7 ? 'the rings are not certain; check the circles before you trust the numbers' : undefined,
    noseFitted ? undefined : 'the edge of the nose could not be followed; its usual share of the bore was taken',
    several ? 'more than one plug, or something like one, is in the picture; check that the right one was measured' : undefined,
    softness > SOFT_FROM && bore.r >= SMALLEST_BORE_FOR_SPECKS ? 'the picture is blurred at the shell; specks and grain were not judged' : undefined,
    strap.score < LEAST_STRAP ? 'no ground electrode was recognised, or several; it may lie within what was measured' : undefined,
    tilt > 0.045 ? 'the plug was seen from the side (more than about 25 degrees); take the picture end-on' : undefined,
    bore.r < SMALLEST_BORE_FOR_SPECKS ? 'the plug is small in the picture; specks cannot be counted' : undefined,
  ];
}

function aboutLight({ reference, patchFault, metalOff, colourless, light, noseLightness }: Circumstances): Lines {
  return [
    patchFault && PATCH_WORDS[patchFault],
    colourless ? 'no colour in this picture; only geometry, dark coverage and specks were measured' : REFERENCE_WORDS[reference.kind],
    metalOff !== undefined && metalOff > METAL_OFF_FROM ? 'under the white of the other photo the shell is not the colour of bare metal; was the lamp the same?' : undefined,
    light.mixed !== undefined && light.mixed > MIXED_FROM
      ? 'the metal on two sides of the shell differs in colour: light of two colours, or a stain; colours are doubtful' : undefined,
    light.clipped > 0.02 ? `${Math.round(100 * light.clipped)} % of the nose is overexposed; take the picture a little darker` : undefined,
    noseLightness < 6 ? 'the nose is nearly black in the picture; it may be underexposed' : undefined,
  ];
}
