import { writeFile } from 'node:fs/promises';
import { err, ok, type Result } from '../../../shared/result.ts';
import { cameraNotes, type CameraNotes } from './camera-notes.ts';
import { failureOf } from './decode-failure.ts';
import { decodePhoto, isHeic, openPhoto, uprightPicture, type DecodedPhoto, type OpenedPhoto } from './decode.ts';
import { photoErrorText, type PhotoError } from './photo-error.ts';
import { readPhotoFile } from './read-photo-file.ts';

/** Sizes in which a photo is shown: upright, sRGB, without metadata. Longest side in pixels. */
const PICTURE_SIDES = { small: 320, screen: 2048, full: Infinity } as const;
export type PictureSize = keyof typeof PICTURE_SIDES;

/** What is kept of a photo beside its bytes. `problem`: why it is incomplete, in words; it can be looked at, but not measured. */
export type InspectedPhoto = CameraNotes & Pick<DecodedPhoto, 'width' | 'height' | 'colour'> & { readonly format: string; readonly problem: string | null };

const QUALITY = { small: 82, screen: 90, full: 95 } as const;

/** Opens a file, tells what it is and writes it in its small size. */
export async function inspectPhoto(file: string, small: string): Promise<Result<InspectedPhoto, PhotoError>> {
  const opened = await opening(file);
  if (!opened.ok) return opened;
  const { width, height, about } = opened.value;
  const decoded = await decodePhoto(opened.value);
  if (!decoded.ok && decoded.error.code !== 'incomplete') return decoded;
  const written = await writePicture(opened.value, 'small', small);
  if (!written.ok) return written;
  return ok({
    width, height, format: isHeic(about) ? 'heic' : about.format === 'heif' ? 'avif' : about.format, ...cameraNotes(opened.value),
    colour: decoded.ok ? decoded.value.colour : 'yes', problem: decoded.ok ? null : photoErrorText(decoded.error),
  });
}

/** Writes a photo in one of its sizes; of an incomplete one, what is there. */
export async function showPhoto(file: string, size: PictureSize, to: string): Promise<Result<null, PhotoError>> {
  const opened = await opening(file);
  return opened.ok ? writePicture(opened.value, size, to) : opened;
}

async function opening(file: string): Promise<Result<OpenedPhoto, PhotoError>> {
  const bytes = await readPhotoFile(file);
  return bytes.ok ? openPhoto(bytes.value) : bytes;
}

async function writePicture(photo: OpenedPhoto, size: PictureSize, to: string): Promise<Result<null, PhotoError>> {
  try {
    const picture = await uprightPicture(photo, PICTURE_SIDES[size], { wholly: false });
    const jpeg = picture.flatten({ background: '#808080' }).jpeg({ quality: QUALITY[size], chromaSubsampling: '4:4:4' });
    await writeFile(to, await jpeg.toBuffer());
    return ok(null);
  } catch (error) {
    if (error instanceof Error && 'syscall' in error) throw error;
    return err(failureOf(error, photo.bytes));
  }
}
