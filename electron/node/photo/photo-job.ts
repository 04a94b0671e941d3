import { measureTip } from '../../../core/photo/measure-tip.ts';
import { partsScaled } from '../../../core/photo/parts.ts';
import type { Point } from '../../../core/photo/pixels.ts';
import type { GivenWhite } from '../../../core/photo/white.ts';
import type { PhotoMeasure } from '../../../shared/formats/photo-measure.v1.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { decodePhoto, openPhoto } from './decode.ts';
import type { PhotoError } from './photo-error.ts';
import { photoMeasureOf, type MeasuredPhoto } from './photo-measure.ts';
import type { PointedOut, PointedWhite } from './pointed-out.ts';
import { readPhotoFile } from './read-photo-file.ts';

/** Decodes and measures the photo in a file. */
export async function measureFile(file: string, pointedOut: PointedOut): Promise<Result<PhotoMeasure, PhotoError>> {
  const bytes = await readPhotoFile(file);
  if (!bytes.ok) return bytes;
  const measured = await measurePhoto(bytes.value, pointedOut);
  return measured.ok ? ok(photoMeasureOf(measured.value, pointedOut)) : measured;
}

export async function measurePhoto(bytes: Uint8Array, pointedOut: PointedOut): Promise<Result<MeasuredPhoto, PhotoError>> {
  const opened = await openPhoto(bytes);
  if (!opened.ok) return opened;
  const { width, height } = opened.value;
  const outside = whatLiesOutside(pointedOut, width, height);
  if (outside !== undefined) return err({ code: 'outside', which: outside, width, height });
  const decoded = await decodePhoto(opened.value);
  if (!decoded.ok) return decoded;
  const { colour, pages, image } = decoded.value;
  const scale = image.width / width;
  const { white, parts } = pointedOut;
  const given = { colour: colour === 'yes', ...(white && { white: whiteScaled(white, scale) }), ...(parts && { parts: partsScaled(parts, scale) }) };
  return ok({ width, height, colour, pages, scale, measurement: measureTip(image, given) });
}

type Outside = Extract<PhotoError, { code: 'outside' }>['which'];

function whatLiesOutside({ white, parts = {} }: PointedOut, width: number, height: number): Outside | undefined {
  if (white !== undefined && white.kind !== 'light' && (white.x < 0 || white.y < 0 || white.x + white.w > width || white.y + white.h > height)) return 'neutral';
  const inside = ({ x, y }: Point): boolean => x >= 0 && y >= 0 && x < width && y < height;
  const { groundElectrode: bar, ...circles } = parts;
  const wrong = (['shell', 'bore', 'nose', 'centreElectrode'] as const).find((name) => {
    const circle = circles[name];
    return circle !== undefined && (!inside(circle) || circle.r <= 0 || circle.r > Math.max(width, height));
  });
  if (wrong !== undefined) return wrong;
  return bar !== undefined && (!inside(bar.end) || bar.width <= 0) ? 'groundElectrode' : undefined;
}

function whiteScaled(white: PointedWhite, by: number): GivenWhite {
  if (white.kind === 'light') return white;
  const box = { x: white.x * by, y: white.y * by, w: white.w * by, h: white.h * by };
  return white.kind === 'metal' ? { kind: 'metal', box } : { kind: 'patch', box, taken: white.taken };
}
