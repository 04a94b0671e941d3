import { createHash, randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { mkdir, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { LIMITS } from '../photo/limits.ts';
import type { PhotoError } from '../photo/photo-error.ts';
import { err, ok, type Result } from '../../../shared/result.ts';

/** A file that was taken in, but not yet kept: flushed to the disk under a passing name. */
export type TakenIn = { readonly path: string; readonly sha256: string; readonly bytes: number };

const ENDINGS: Readonly<Record<string, string>> = { jpeg: 'jpg', png: 'png', webp: 'webp', tiff: 'tif', gif: 'gif', avif: 'avif', heic: 'heic' };
export const endingOf = (format: string): string => ENDINGS[format] ?? 'bin';

const incomingIn = (folder: string): string => join(folder, 'incoming');

/** Where an original lies in the folder of photos: by its digest, so that the same bytes lie there once. */
export const originalPath = (folder: string, { sha256, format }: { readonly sha256: string; readonly format: string }): string =>
  join(folder, sha256.slice(0, 2), `${sha256}.${endingOf(format)}`);

/**
 * Writes the bytes of a photo to a passing file and flushes it. Nothing stays of bytes that are none, or too many.
 * @throws when the sender breaks off, or the disk is full
 */
export async function takeIn(folder: string, body: AsyncIterable<Uint8Array>): Promise<Result<TakenIn, PhotoError>> {
  await mkdir(incomingIn(folder), { recursive: true });
  const path = join(incomingIn(folder), randomUUID());
  try {
    const taken = await written(path, body);
    if (!taken.ok) await rm(path, { force: true });
    return taken;
  } catch (error) {
    await rm(path, { force: true });
    throw error;
  }
}

async function written(path: string, body: AsyncIterable<Uint8Array>): Promise<Result<TakenIn, PhotoError>> {
  const hash = createHash('sha256');
  const file = await open(path, 'wx');
  let bytes = 0;
  try {
    for await (const chunk of body) {
      bytes += chunk.length;
      if (bytes > LIMITS.bytes) return err({ code: 'too-large', limitMB: LIMITS.bytes / 1e6 });
      hash.update(chunk);
      await file.write(chunk);
    }
    await file.sync();
  } finally {
    await file.close();
  }
  return bytes === 0 ? err({ code: 'empty' }) : ok({ path, sha256: hash.digest('hex'), bytes });
}

/** Gives a file that was taken in its lasting name. The same bytes under that name are replaced, which mends a damaged original. */
export async function keepOriginal(folder: string, taken: TakenIn, format: string): Promise<void> {
  const path = originalPath(folder, { sha256: taken.sha256, format });
  await mkdir(dirname(path), { recursive: true });
  await rename(taken.path, path);
  await flushFolder(dirname(path));
}

/** A new name is on the disk only when its folder is; Windows does this by itself and cannot open folders. */
async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try { await handle.sync(); } finally { await handle.close(); }
}

/** Removes what earlier runs took in and never kept. */
export async function clearIncoming(folder: string): Promise<void> {
  const names = await readdir(incomingIn(folder)).catch(() => []);
  await Promise.all(names.map((name) => rm(join(incomingIn(folder), name), { force: true })));
}

/** Whether an original is there whole. @throws when the disk cannot be read */
export async function stateOfOriginal(path: string, sha256: string): Promise<'whole' | 'missing' | 'damaged'> {
  if (!(await stat(path).catch(() => undefined))?.isFile()) return 'missing';
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) hash.update(chunk);
  return hash.digest('hex') === sha256 ? 'whole' : 'damaged';
}
