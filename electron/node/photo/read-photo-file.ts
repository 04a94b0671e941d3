import { constants, open, type FileHandle } from 'node:fs/promises';
import { err, ok, type Result } from '../../../shared/result.ts';
import { LIMITS } from './limits.ts';
import type { PhotoError } from './photo-error.ts';

// Without following a link and without waiting for a pipe. Windows knows neither flag.
const FLAGS = constants.O_RDONLY | (constants.O_NOFOLLOW as number | undefined ?? 0) | (constants.O_NONBLOCK as number | undefined ?? 0);

/** The bytes of an ordinary file within the limits. Links are not followed. */
export async function readPhotoFile(path: string): Promise<Result<Uint8Array, PhotoError>> {
  let file: FileHandle | undefined;
  try {
    file = await open(path, FLAGS);
    return await bytesOf(file);
  } catch (error) {
    return err(failureOf(error));
  } finally {
    await file?.close();
  }
}

async function bytesOf(file: FileHandle): Promise<Result<Uint8Array, PhotoError>> {
  const stat = await file.stat();
  if (stat.isDirectory()) return err({ code: 'folder' });
  if (!stat.isFile()) return err({ code: 'not-a-file' });
  if (stat.size === 0) return err({ code: 'empty' });
  if (stat.size > LIMITS.bytes) return err({ code: 'too-large', limitMB: LIMITS.bytes / 1e6 });
  return ok(await file.readFile());
}

function failureOf(error: unknown): PhotoError {
  switch (error instanceof Error && 'code' in error ? error.code : undefined) {
    case 'ENOENT': return { code: 'no-file' };
    case 'ENOTDIR': return { code: 'no-file' };
    case 'EISDIR': return { code: 'folder' };
    case 'ELOOP': return { code: 'link' };
    case 'ENXIO': return { code: 'not-a-file' };
    case 'EACCES': return { code: 'not-allowed' };
    case 'EPERM': return { code: 'not-allowed' };
    default: throw error;
  }
}
