import sharp, { type Metadata } from 'sharp';
import { WORKING_SIDE, type PixelImage } from '../../../core/photo/pixels.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { uprightHeic } from './heic.ts';
import { LIMITS } from './limits.ts';
import type { PhotoError } from './photo-error.ts';

/** A photo made ready to measure. `width` and `height` are those of the whole upright picture; `image` is it at working size. */
export type DecodedPhoto = {
  readonly width: number;
  readonly height: number;
  readonly image: PixelImage;
  /** Whether its colours may be judged, and else why not. */
  readonly colour: 'yes' | 'greyscale' | 'cmyk' | 'transparent';
  /** Pictures in the file; the first was taken. */
  readonly pages: number;
};

const ALLOWED: readonly string[] = ['jpeg', 'png', 'webp', 'tiff', 'gif', 'heif'];
const TOO_GREY = 3;
const SURROUND = 128;
const OPTIONS = { failOn: 'error', limitInputPixels: LIMITS.pixels, pages: 1 } as const;

/** Decodes bytes of a photo: upright, in sRGB, at working size. Never throws for what is in the bytes. */
export async function decodePhoto(bytes: Uint8Array): Promise<Result<DecodedPhoto, PhotoError>> {
  if (bytes.length === 0) return err({ code: 'empty' });
  try {
    const about = await sharp(bytes, { ...OPTIONS, limitInputPixels: false }).metadata();
    const refusal = refusalOf(about, bytes.length);
    if (refusal !== undefined) return err(refusal);
    const heic = isHeic(about) ? await uprightHeic(bytes, WORKING_SIDE, about.icc) : undefined;
    const { width, height } = heic ?? about.autoOrient;
    const { image, transparent } = await workingImage(heic?.png ?? bytes, about.hasAlpha);
    const colour = about.space === 'cmyk' ? 'cmyk' : transparent ? 'transparent' : isColourless(image) ? 'greyscale' : 'yes';
    return ok({ width, height, image, colour, pages: about.pages ?? 1 });
  } catch (error) {
    return err(failureOf(error, bytes));
  }
}

const isHeic = ({ format, compression }: Metadata): boolean => format === 'heif' && compression !== 'av1';

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

async function workingImage(source: Uint8Array, hasAlpha: boolean): Promise<{ image: PixelImage; transparent: boolean }> {
  const upright = sharp(source, OPTIONS).autoOrient().toColourspace('srgb').resize(WORKING_SIDE, WORKING_SIDE, { fit: 'inside', withoutEnlargement: true });
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

/** What the libraries say, in our own codes. */
function failureOf(error: unknown, bytes: Uint8Array): PhotoError {
  const words = error instanceof Error ? error.message : String(error);
  if (/pixel limit/i.test(words)) return { code: 'too-many-pixels', limitMP: LIMITS.pixels / 1e6 };
  if (/premature end|truncat|unexpected end|end of (file|stream)|not enough data|read error/i.test(words)) return { code: 'incomplete' };
  if (/unsupported image format|no loader|not in a known format|blocked/i.test(words)) return nameOf(bytes);
  return { code: 'damaged' };
}

/** Tells formats apart that are often taken for photos, by their first bytes. */
function nameOf(bytes: Uint8Array): PhotoError {
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 400));
  if (head.startsWith('%PDF')) return { code: 'unknown-format', format: 'PDF' };
  if (/<svg[\s>]/i.test(head)) return { code: 'unknown-format', format: 'SVG' };
  if (/^(II[*]\0|MM\0[*])/.test(head)) return { code: 'damaged' };
  return { code: 'unknown-format' };
}
