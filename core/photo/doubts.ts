import type { Geometry } from './locate.ts';
import { SMALLEST_BORE_FOR_SPECKS } from './specks.ts';
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

export type Circumstances = {
  readonly geometry: Geometry;
  readonly reference: WhiteReference['kind'];
  readonly patchFault?: PatchFault;
  readonly colourless: boolean;
  readonly clippedShare: number;
  readonly noseLightness: number;
  readonly examinedShare: number;
};

/** What makes a measurement doubtful, in words for the person. */
export function doubtsAbout({ geometry, reference, patchFault, colourless, clippedShare, noseLightness, examinedShare }: Circumstances): readonly string[] {
  const { bore, strap, noseFitted, confidence } = geometry;
  const tilt = Math.hypot(bore.c2, bore.s2) / bore.r;
  return [
    confidence < 0.7 ? 'the rings are not certain; check the circles before you trust the numbers' : undefined,
    noseFitted ? undefined : 'the edge of the nose could not be followed; its usual share of the bore was taken',
    strap.score < 0.3 ? 'no ground electrode was recognised, or several; it may lie within what was measured' : undefined,
    tilt > 0.045 ? 'the plug was seen from the side (more than about 25 degrees); take the picture end-on' : undefined,
    bore.r < SMALLEST_BORE_FOR_SPECKS ? 'the plug is small in the picture; specks cannot be counted' : undefined,
    patchFault && PATCH_WORDS[patchFault],
    colourless ? 'no colour in this picture; only geometry, dark coverage and specks were measured' : REFERENCE_WORDS[reference],
    clippedShare > 0.02 ? `${Math.round(100 * clippedShare)} % of the nose is overexposed; take the picture a little darker` : undefined,
    noseLightness < 6 ? 'the nose is nearly black in the picture; it may be underexposed' : undefined,
    `${Math.round(100 * examinedShare)} % of the nose could be seen and was examined`,
  ].filter((line) => line !== undefined);
}
