import { measureTip, type TipMeasurement } from '../../../core/photo/measure-tip.ts';
import type { Box, Circle } from '../../../core/photo/pixels.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { decodePhoto, type DecodedPhoto } from './decode.ts';
import type { PhotoError } from './photo-error.ts';

/** What a person pointed out in a photo, in pixels of the upright picture. */
export type PointedOut = { readonly neutral?: Box; readonly nose?: Circle };

/** A photo measured; lengths in it are pixels of the picture at working size, `scale` of those of the whole. */
export type MeasuredPhoto = Pick<DecodedPhoto, 'width' | 'height' | 'colour' | 'pages'> & { readonly scale: number; readonly measurement: TipMeasurement };

/** Decodes and measures; runs where it may die. */
export async function measurePhoto(bytes: Uint8Array, { neutral, nose }: PointedOut): Promise<Result<MeasuredPhoto, PhotoError>> {
  const decoded = await decodePhoto(bytes);
  if (!decoded.ok) return decoded;
  const { width, height, colour, pages, image } = decoded.value;
  if (neutral && (neutral.x + neutral.w > width || neutral.y + neutral.h > height)) return err({ code: 'outside', which: 'neutral', width, height });
  if (nose && (nose.x >= width || nose.y >= height || 2 * nose.r > Math.max(width, height))) return err({ code: 'outside', which: 'nose', width, height });
  const scale = image.width / width;
  const measurement = measureTip(image, {
    colour: colour === 'yes',
    ...(neutral && { neutral: { x: neutral.x * scale, y: neutral.y * scale, w: neutral.w * scale, h: neutral.h * scale } }),
    ...(nose && { nose: { x: nose.x * scale, y: nose.y * scale, r: nose.r * scale } }),
  });
  return ok({ width, height, colour, pages, scale, measurement });
}
