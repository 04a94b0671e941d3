import sharp, { type Metadata, type Sharp } from 'sharp';
import { WORKING_SIDE, type PixelImage } from '../../../core/photo/pixels.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { failureOf } from './decode-failure.ts';
import { uprightHeic } from './heic.ts';
import { LIMITS } from './limits.ts';
import type { PhotoError } from './photo-error.ts';

/** What a file says of itself before it is decoded; `width` and `height` are those of the whole upright picture, `pages` the pictures in it. */
export type OpenedPhoto = {
  readonly bytes: Uint8Array;
  readonly about: Metadata;
  readonly width: number;
  readonly height: number;
  readonly pages: number;
};

/** A photo made ready to measure; `image` is it at working size. */
export type DecodedPhoto = Pick<OpenedPhoto, 'width' | 'height' | 'pages'> & {
  readonly image: PixelImage;
  /** Whether its colours may be judged, and else why not. */
  readonly colour: 'yes' | 'greyscale' | 'cmyk' | 'transparent';
};

const ALLOWED: readonly string[] = ['jpeg', 'png', 'webp', 'tiff', 'gif', 'heif'];
const TOO_GREY = 3;
const SURROUND = 128;
const OPTIONS = { failOn: 'error', limitInputPixels: LIMITS.pixels, pages: 1 } as const;

/** Reads the head of a photo and holds it against the limits. Never throws for what is in the bytes. */
export async function openPhoto(bytes: Uint8Array): Promise<Result<OpenedPhoto, PhotoError>> {
  if (bytes.length === 0) return err({ code: 'empty' });
  try {
    const about = await sharp(bytes, { ...OPTIONS, limitInputPixels: false }).metadata();
    const refusal = refusalOf(about, bytes.length);
    return refusal === undefined ? ok({ bytes, about, ...about.autoOrient, pages: about.pages ?? 1 }) : err(refusal);
  } catch (error) {
    return err(failureOf(error, bytes));
  }
}

export const isHeic = ({ format, compression }: Metadata): boolean => format === 'heif' && compression !== 'av1';

function refusalOf(about: Metadata, size: number): PhotoError | undefined {
  if (!ALLOWED.includes(about.format)) return { code: 'unknown-format', format: about.format.toUpperCase() };
  const { width, height } = about.autoOrient;
  const [pixels, heic] = [about.width * about.height, isHeic(about)];
  if (heic && size > LIMITS.heicBytes) return { code: 'too-large', limitMB: LIMITS.heicBytes / 1e6 };
  const limit = heic ? LIMITS.heicPixels : LIMITS.pixels;
  if (pixels > limit) return { code: 'too-many-pixels', limitMP: limit / 1e6 };
  if (Math.min(width, height) < LIMITS.leastSide) return { code: 'too-small', width, height, least: LIMITS.leastSide };
  return undefined;
}

/**
 * The upright picture in sRGB, at most `side` pixels long, ready to be decoded; made smaller without the ringing that would leave halos to measure.
 * `wholly` refuses one that ends too early; otherwise what is there is given.
 * @throws what the libraries throw for damaged bytes
 */
export async function uprightPicture({ bytes, about }: OpenedPhoto, side: number, { wholly }: { readonly wholly: boolean }): Promise<Sharp> {
  const source = isHeic(about) ? (await uprightHeic(bytes, side, about.icc)).png : bytes;
  const upright = sharp(source, { ...OPTIONS, failOn: wholly ? 'error' : 'none' }).autoOrient().toColourspace('srgb');
  return side === Infinity ? upright : upright.resize(side, side, { fit: 'inside', withoutEnlargement: true, kernel: 'linear' });
}

/** Decodes an opened photo: upright, in sRGB, at working size. Never throws for what is in the bytes. */
export async function decodePhoto(photo: OpenedPhoto): Promise<Result<DecodedPhoto, PhotoError>> {
  const { bytes, about, width, height, pages } = photo;
  try {
    const { image, transparent } = await workingImage(await uprightPicture(photo, WORKING_SIDE, { wholly: true }), about.hasAlpha);
    const colour = about.space === 'cmyk' ? 'cmyk' : transparent ? 'transparent' : isColourless(image) ? 'greyscale' : 'yes';
    return ok({ width, height, pages, image, colour });
  } catch (error) {
    return err(failureOf(error, bytes));
  }
}

async function workingImage(upright: Sharp, hasAlpha: boolean): Promise<{ image: PixelImage; transparent: boolean }> {
  if (!hasAlpha) {
    const { data, info } = await upright.removeAlpha().raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true });
    return { image: { width: info.width, height: info.height, rgb: info.channels === 3 ? data : tripled(data) }, transparent: false };
  }
  const { data, info } = await upright.ensureAlpha().raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true });
  const rgb = new Uint8Array(info.width * info.height * 3);
  let transparent = false;
  for (let from = 0, to = 0; from < data.length; from += 4, to += 3) {
    const alpha = data[from + 3] ?? 255;
    if (alpha < 255) transparent = true;
    for (let k = 0; k < 3; k += 1) rgb[to + k] = Math.round(((data[from + k] ?? 0) * alpha + SURROUND * (255 - alpha)) / 255);
  }
  return { image: { width: info.width, height: info.height, rgb }, transparent };
}

const tripled = (grey: Uint8Array): Uint8Array => Uint8Array.from({ length: grey.length * 3 }, (_, i) => grey[Math.floor(i / 3)] ?? 0);

function isColourless({ rgb }: PixelImage): boolean {
  for (let at = 0; at < rgb.length; at += 3) {
    const [red, green, blue] = [rgb[at] ?? 0, rgb[at + 1] ?? 0, rgb[at + 2] ?? 0];
    if (Math.max(red, green, blue) - Math.min(red, green, blue) >= TOO_GREY) return false;
  }
  return true;
}
