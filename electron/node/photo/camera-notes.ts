import exif from 'exif-reader';
import type { OpenedPhoto } from './decode.ts';

/** When and with what a photo was taken. Place, serial numbers and names are left where they are: in the file. */
export type CameraNotes = { readonly takenAt: string | null; readonly camera: string | null };

const NOTHING: CameraNotes = { takenAt: null, camera: null };
const OFFSET = /^[+-]\d\d:\d\d$/;

/** Reads the capture time and the camera from EXIF (CIPA DC-008); nothing where there is none or it cannot be read. */
export function cameraNotes({ about, bytes }: Pick<OpenedPhoto, 'about' | 'bytes'>): CameraNotes {
  // A TIFF file is itself what EXIF is made of.
  const notes = about.format === 'tiff' ? Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength) : about.exif;
  if (notes === undefined) return NOTHING;
  try {
    const { Image: image, Photo: photo } = exif(notes);
    const taken: unknown = photo?.DateTimeOriginal ?? image?.DateTime;
    const offset: unknown = photo?.OffsetTimeOriginal;
    const camera = [image?.Make, image?.Model].map(plain).filter((part) => part !== '').join(' ');
    return { takenAt: momentOf(taken, offset), camera: camera === '' ? null : camera.slice(0, 200) };
  } catch {
    return NOTHING;
  }
}

/** The reader gives a date as if it were UTC; its digits are those on the camera's clock. */
function momentOf(taken: unknown, offset: unknown): string | null {
  if (!(taken instanceof Date) || !(taken.getTime() > 0)) return null;
  return `${taken.toISOString().slice(0, 19)}${typeof offset === 'string' && OFFSET.test(offset) ? offset : ''}`;
}

/** A text of the file without what could mislead whoever reads it. */
const plain = (text: unknown): string => (typeof text === 'string' ? text.replace(/[\p{C}]/gu, ' ').trim() : '');
