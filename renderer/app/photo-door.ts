import type { AppError } from '../../shared/channels.ts';
import type { IncomingPhoto } from '../../shared/channels-photo.ts';
import { err, type Result } from '../../shared/result.ts';

/** `small` at most 320 pixels long, `screen` 2048, `full` all of them; to be saved: `export` without personal data, `original` the file itself. */
export type PhotoSize = 'small' | 'screen' | 'full' | 'export' | 'original';

export const photoAddress = (id: string, size: PhotoSize): string => `/photos/${encodeURIComponent(id)}/${size}`;

/** What stopped a photo on its way: the person, or something the person has to know. */
export type SendFailure = { readonly stopped: true } | { readonly stopped: false; readonly error: AppError };

/** Hands a file to the host, which keeps it byte for byte. Never throws. */
export async function sendPhoto(readingId: string, file: File, signal: AbortSignal): Promise<Result<IncomingPhoto, SendFailure>> {
  const asked = new URLSearchParams({ readingId, name: file.name });
  try {
    const response = await fetch(`/photos/incoming?${asked.toString()}`, { method: 'POST', body: file, signal });
    const reply = (await response.json()) as Result<IncomingPhoto, AppError>;
    return reply.ok ? reply : err({ stopped: false, error: reply.error });
  } catch (cause) {
    if (signal.aborted) return err({ stopped: true });
    return err({ stopped: false, error: { code: 'internal', message: `The file could not be read or sent: ${cause instanceof Error ? cause.message : String(cause)}` } });
  }
}
