import type { Protocol } from 'electron';
import type { Route } from 'playwright-core';
import { state } from './app.ts';
import { meant } from './addresses.ts';

type Handler = Parameters<Protocol['handle']>[1];
const handlers = new Map<string, Handler>();
const privileged = new Set<string>();

export const protocol = {
  registerSchemesAsPrivileged: (schemes) => {
    if (state.ready) throw new Error('schemes are registered before ready');
    for (const { scheme, privileges } of schemes) if (privileges?.standard && privileges.secure) privileged.add(scheme);
  },
  handle: (scheme, handler) => {
    if (!privileged.has(scheme)) throw new Error(`${scheme} was not registered as standard and secure`);
    handlers.set(scheme, handler);
  },
} satisfies Partial<Protocol>;

/** Answers a request of the page: by the handler of its scheme, or not at all. Nothing in these tests reaches a network. */
export async function answerRoute(route: Route): Promise<void> {
  const request = route.request();
  const url = meant(request.url());
  const handler = handlers.get(new URL(url).protocol.replace(':', ''));
  if (handler === undefined) return route.abort('blockedbyclient');
  const body = request.postDataBuffer();
  const headers = withoutPseudo(await request.allHeaders());
  const asked = new Request(url, { method: request.method(), headers, ...(body === null ? {} : { body: new Uint8Array(body) }) });
  const response = await handler(asked);
  await route.fulfill({ status: response.status, headers: Object.fromEntries(response.headers), body: Buffer.from(await response.arrayBuffer()) });
}

/** As the program would get them: without those of HTTP/2, the page's origin as it is meant. */
const withoutPseudo = (headers: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(headers).filter(([name]) => !name.startsWith(':')).map(([name, value]) => [name, name === 'origin' ? meant(value).replace(/[/]$/, '') : value]));
