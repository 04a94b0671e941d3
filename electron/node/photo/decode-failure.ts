import { LIMITS } from './limits.ts';
import type { PhotoError } from './photo-error.ts';

/** What the libraries say of bytes they cannot decode, in our own codes. */
export function failureOf(error: unknown, bytes: Uint8Array): PhotoError {
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
