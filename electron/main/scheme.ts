import type { Protocol } from 'electron';
import { pageFile } from '../node/page-files.ts';
import { PAGE_HEADERS } from '../node/page-policy.ts';

export const SCHEME = 'corenose';
export const PAGE_ADDRESS = `${SCHEME}://app/index.html`;

/** Must run before the app is ready. The scheme behaves as a website of its own; it gets no way around its security policy. */
export function registerScheme(protocol: Pick<Protocol, 'registerSchemesAsPrivileged'>): void {
  protocol.registerSchemesAsPrivileged([{ scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } }]);
}

export function serveScheme(protocol: Pick<Protocol, 'handle'>, folder: string): void {
  protocol.handle(SCHEME, (request) => answer(request, folder));
}

/** Gives out the built page's files, to GET on our own host only. */
export async function answer({ method, url }: Pick<Request, 'method' | 'url'>, folder: string): Promise<Response> {
  const { host, pathname } = new URL(url);
  if (method !== 'GET') return new Response(null, { status: 405, headers: PAGE_HEADERS });
  const file = host === 'app' ? await pageFile(folder, pathname) : null;
  if (file === null) return new Response(null, { status: 404, headers: PAGE_HEADERS });
  return new Response(file.bytes, { headers: { ...PAGE_HEADERS, 'content-type': file.type } });
}
