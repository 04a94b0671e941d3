import { z } from 'zod';
import type { AppError } from '../../shared/channels.ts';
import { err, type Result } from '../../shared/result.ts';
import type { PhotoDesk, PictureFile } from './photo-store/photo-desk.ts';
import { endingOf } from './photo-store/originals.ts';
import { appErrorOf } from './storage/failure.ts';

/** A request below `/photos/`, from a page that the host has made sure is ours. */
export type PhotoAsked = { readonly method: string; readonly pathname: string; readonly query: URLSearchParams; readonly body: AsyncIterable<Uint8Array> };

/** `file`: a path on disk whose bytes are the answer; otherwise `json` is. */
export type PhotoAnswer = { readonly status: number; readonly headers: Readonly<Record<string, string>>; readonly file?: string; readonly json?: unknown };

export const isPhotoPath = (pathname: string): boolean => pathname.startsWith('/photos/');

const TYPES: Readonly<Record<string, string>> = {
  jpeg: 'image/jpeg', png: 'image/png', webp: 'image/webp', tiff: 'image/tiff', gif: 'image/gif', avif: 'image/avif', heic: 'image/heic',
};
/** What shows a photo never changes under its address. */
const KEPT_BY_BROWSER = 'private, max-age=31536000, immutable';
const PICTURE = /^\/photos\/([0-9a-f-]{36})\/(small|screen|full|export|original)$/;

/** Answers both hosts' requests for photos: a file on its way in, and pictures on their way out. Never throws; what goes wrong is told to `log`. */
export async function answerPhotos(desk: PhotoDesk, asked: PhotoAsked, log: (line: string) => void): Promise<PhotoAnswer> {
  try {
    if (asked.pathname === '/photos/incoming') return asked.method === 'POST' ? await incoming(desk, asked) : notAllowed('POST');
    const [, id, what] = PICTURE.exec(asked.pathname) ?? [];
    if (id === undefined || what === undefined) return told(404, err({ code: 'not-found', what: 'photo' }));
    return asked.method === 'GET' ? await outgoing(desk, id, what as Wanted) : notAllowed('GET');
  } catch (error) {
    log(`${asked.method} ${asked.pathname}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
    return told(500, err(appErrorOf(error) ?? { code: 'internal', message: 'Corenose made a mistake with this photo. What was saved before is safe.' }));
  }
}

type Wanted = 'small' | 'screen' | 'full' | 'export' | 'original';

const told = (status: number, json: Result<unknown, AppError>): PhotoAnswer => ({ status, headers: { 'content-type': 'application/json; charset=utf-8' }, json });
const notAllowed = (method: string): PhotoAnswer => {
  const answer = told(405, err({ code: 'bad-request', problems: [{ path: '', message: `only ${method} is answered here` }] }));
  return { ...answer, headers: { ...answer.headers, allow: method } };
};

async function incoming(desk: PhotoDesk, { query, body }: PhotoAsked): Promise<PhotoAnswer> {
  const readingId = z.uuid().safeParse(query.get('readingId'));
  if (!readingId.success) return told(400, err({ code: 'bad-request', problems: [{ path: 'readingId', message: 'give the id of a reading' }] }));
  return told(200, await desk.bringIn({ readingId: readingId.data, name: fileName(query.get('name') ?? ''), body }));
}

/** The last part of a name, without what no file is called: at most 255 characters. */
function fileName(given: string): string {
  const last = given.split(/[/\\]/).at(-1) ?? '';
  const clean = last.replace(/[\p{C}]/gu, ' ').trim().slice(0, 255);
  return clean === '' || clean === '.' || clean === '..' ? 'photo' : clean;
}

async function outgoing(desk: PhotoDesk, id: string, wanted: Wanted): Promise<PhotoAnswer> {
  const found = wanted === 'original' ? await desk.original(id) : await desk.picture(id, wanted === 'export' ? 'full' : wanted);
  if (!found.ok) return told(404, found);
  const { path, row } = found.value;
  if (wanted === 'original') return { status: 200, file: path, headers: { 'content-type': TYPES[row.format] ?? 'application/octet-stream', ...saved(nameWithEnding(found.value)) } };
  const headers = { 'content-type': 'image/jpeg', 'cache-control': KEPT_BY_BROWSER };
  return { status: 200, file: path, headers: wanted === 'export' ? { ...headers, ...saved(`plug-photo-${row.id.slice(0, 8)}.jpg`) } : headers };
}

/** The name it came under; its ending is that of what it is. */
function nameWithEnding({ row: { name, format } }: PictureFile): string {
  const ending = endingOf(format);
  const usual = format === 'jpeg' ? /[.]jpe?g$/i : format === 'tiff' ? /[.]tiff?$/i : format === 'heic' ? /[.](heic|heif)$/i : new RegExp(`[.]${ending}$`, 'i');
  return usual.test(name) ? name : `${name}.${ending}`;
}

/** RFC 6266: saved as a file, never shown in the page's place; the name in UTF-8 beside a plain one. */
const saved = (name: string): { readonly 'content-disposition': string } => ({
  'content-disposition': `attachment; filename="${name.replace(/[^\x20-\x7e]|["\\%]/g, '_')}"; filename*=UTF-8''${encodeURIComponent(name).replace(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`)}`,
});
