import type { Box } from '../../../core/photo/pixels.ts';
import type { PhotoParts } from '../../../shared/formats/photo-measure.v1.ts';

/** The neutral thing: a card or paper, the bare shell, or the white of another photo under the same lamp and what that stood on. */
export type PointedWhite =
  | ({ readonly kind: 'patch'; readonly taken?: 'grey card' | 'white paper' | undefined } & Box)
  | ({ readonly kind: 'metal' } & Box)
  | { readonly kind: 'light'; readonly white: readonly [number, number, number]; readonly reference: 'patch' | 'estimated' };

/** What a person pointed out in a photo, in pixels of the upright picture. */
export type PointedOut = { readonly white?: PointedWhite; readonly parts?: PhotoParts };
