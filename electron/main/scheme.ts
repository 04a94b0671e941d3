import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
import type { Protocol } from 'electron';
import { pageFile } from '../node/page-files.ts';
import { PAGE_HEADERS } from '../node/page-policy.ts';
import { isPhotoPath } from '../node/photo-route.ts';
import type { Program } from '../node/program.ts';

export const SCHEME = 'corenose';
export const PAGE_ADDRESS = `${SCHEME}://app/index.html`;

/** Must run before the app is ready. The scheme behaves as a website of its own; it gets no way around its security policy. */
export function registerScheme(protocol: Pick<Protocol, 'registerSchemesAsPrivileged'>): void {
  protocol.registerSchemesAsPrivileged([{ scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } }]);
}

export function serveScheme(protocol: Pick<Protocol, 'handle'>, folder: string, photos: Program['photos']): void {
  protocol.handle(SCHEME, (request) => {
    const { host, pathname } = new URL(request.url);
    return host === 'app' && isPhotoPath(pathname) ? answerPhoto(request, photos) : answer(request, folder);
  });
}

/** Gives out the built page's files, to GET on our own host only. */
export async function answer({ method, url }: Pick<Request, 'method' | 'url'>, folder: string): Promise<Response> {
  const { host, pathname } = new URL(url);
  if (method !== 'GET') return new Response(null, { status: 405, headers: PAGE_HEADERS });
  const file = host === 'app' ? await pageFile(folder, pathname) : null;
  if (file === null) return new Response(null, { status: 404, headers: PAGE_HEADERS });
  return new Response(file.bytes, { headers: { ...PAGE_HEADERS, 'content-type': file.type } });
}

/** Takes photos in and gives them out. A request that names an origin must name our own. */
export async function answerPhoto(request: Pick<Request, 'method' | 'url' | 'headers' | 'body'>, photos: Program['photos']): Promise<Response> {
  const { pathname, searchParams } = new URL(request.url);
  const origin = request.headers.get('origin');
  if (origin !== null && origin !== `${SCHEME}://app`) return new Response(null, { status: 403, headers: PAGE_HEADERS });
  const { status, headers, file, json } = await photos({ method: request.method, pathname, query: searchParams, body: request.body ?? Readable.from([]) });
  const body = file === undefined ? JSON.stringify(json) : (Readable.toWeb(createReadStream(file)) as ReadableStream);
  return new Response(body, { status, headers: { ...PAGE_HEADERS, ...headers } });
}
