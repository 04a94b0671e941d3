import type { PhotoMeasure } from '../../../shared/formats/photo-measure.v1.ts';
import type { Result } from '../../../shared/result.ts';
import type { PhotoError } from './photo-error.ts';
import type { PointedOut } from './pointed-out.ts';
import type { InspectedPhoto, PictureSize } from './picture.ts';

/** What the process that decodes is asked to do; files by their path, so that no picture is copied from process to process. */
export type PhotoTask =
  | { readonly kind: 'measure'; readonly file: string; readonly pointedOut: PointedOut }
  | { readonly kind: 'inspect'; readonly file: string; readonly small: string }
  | { readonly kind: 'show'; readonly file: string; readonly size: PictureSize; readonly to: string };
export type PhotoAnswers = { readonly measure: PhotoMeasure; readonly inspect: InspectedPhoto; readonly show: null };

export type Task = { readonly id: number; readonly task: PhotoTask };
export type Answer = { readonly id: number; readonly result: Result<unknown, PhotoError> };
export type Told = Answer | 'ready';
