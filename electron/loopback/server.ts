import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createReadStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';
import type { Door } from '../node/door.ts';
import { pageFile } from '../node/page-files.ts';
import { PAGE_HEADERS } from '../node/page-policy.ts';
import { isPhotoPath, type PhotoAsked } from '../node/photo-route.ts';
import type { Program } from '../node/program.ts';
import { accessFor, type Access } from './access.ts';
import { readBody } from './body.ts';
import { turnAway } from './turn-away.ts';

export type LoopbackGiven = {
  readonly door: Door;
  readonly photos: Program['photos'];
  /** Folder of the built page. */
  readonly page: string;
  /** 0 lets the system choose. */
  readonly port: number;
};

export type Loopback = {
  readonly port: number;
  /** The address that opens the program, for as long as it runs. */
  readonly address: string;
  /** An address that opens the program once, within a minute. */
  readonly ticketAddress: () => string;
  readonly close: () => Promise<void>;
};

/**
 * Serves the page and its calls on this machine only.
 * @throws when the port is taken (`EADDRINUSE`).
 */
export async function serveLoopback({ door, photos, page, port: wanted }: LoopbackGiven): Promise<Loopback> {
  const server = createServer({ requestTimeout: 120_000, headersTimeout: 10_000, maxHeaderSize: 16 * 1024 });
  const port = await listen(server, wanted);
  const access = accessFor(port);
  server.on('request', (request, response) => {
    answer({ door, photos, page, access }, request, response).catch(() => { if (!response.headersSent) refuse(response, 500, 'Corenose made a mistake.'); });
  });
  const addressWith = (key: string): string => `http://127.0.0.1:${port}/open?key=${key}`;
  return {
    port,
    address: addressWith(access.key),
    ticketAddress: () => addressWith(access.ticket()),
    close: () => new Promise((done) => { server.close(() => done()); server.closeAllConnections(); }),
  };
}

const listen = (server: Server, port: number): Promise<number> =>
  new Promise((done, failed) => {
    server.once('error', failed);
    server.listen({ host: '127.0.0.1', port, exclusive: true }, () => done((server.address() as AddressInfo).port));
  });

type Parts = { readonly door: Door; readonly photos: Program['photos']; readonly page: string; readonly access: Access };

async function answer(parts: Parts, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const { access, page } = parts;
  const address = `http://127.0.0.1${request.url ?? ''}`;
  if (!access.isOurHost(request.headers)) return refuse(response, 421, 'This address is not the one Corenose serves.');
  if (request.url?.startsWith('/') !== true || !URL.canParse(address)) return refuse(response, 400, 'Not an address.');
  const { pathname, searchParams } = new URL(address);
  if (pathname === '/open' && request.method === 'GET') return open(access, searchParams.get('key') ?? '', request, response);
  if (!access.admits(request.headers, request.method)) return turnAway(request, response);
  if (request.method === 'POST' && pathname.startsWith('/call/')) return call(parts, pathname.slice('/call/'.length), request, response);
  if (isPhotoPath(pathname)) return photo(parts, { pathname, query: searchParams }, request, response);
  if (request.method !== 'GET') return refuse(response, 405, 'Only GET, and POST for calls.');
  const file = await pageFile(page, pathname);
  if (file === null) return refuse(response, 404, 'There is nothing here.');
  response.writeHead(200, { ...PAGE_HEADERS, 'content-type': file.type }).end(file.bytes);
}

/** Answers with a page that goes on by itself: a redirect would still count as coming from elsewhere, and the strict cookie would not be sent. */
function open(access: Access, key: string, request: IncomingMessage, response: ServerResponse): void {
  const cookie = access.redeem(key);
  if (cookie === null) return turnAway(request, response);
  response.writeHead(200, { ...PAGE_HEADERS, 'content-type': 'text/html; charset=utf-8', 'set-cookie': cookie })
    .end('<!doctype html><html lang="en"><title>Corenose</title><meta http-equiv="refresh" content="0;url=/">');
}

async function call({ door }: Parts, channel: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const body = await readBody(request);
  if (!body.ok) return reply(response, body.error.status, { ok: false, error: { code: 'bad-request', problems: [{ path: '', message: body.error.message }] } });
  reply(response, 200, await door.call(channel, body.value, true));
}

async function photo({ photos }: Parts, asked: Pick<PhotoAsked, 'pathname' | 'query'>, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const { status, headers, file, json } = await photos({ ...asked, method: request.method ?? '', body: request.iterator({ destroyOnReturn: false }) });
  response.writeHead(status, { ...PAGE_HEADERS, ...headers });
  if (file === undefined) response.end(JSON.stringify(json));
  else await pipeline(createReadStream(file), response).catch(() => response.destroy());
}

function reply(response: ServerResponse, status: number, value: unknown): void {
  response.writeHead(status, { ...PAGE_HEADERS, 'content-type': 'application/json; charset=utf-8' }).end(JSON.stringify(value));
}

function refuse(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { ...PAGE_HEADERS, 'content-type': 'text/plain; charset=utf-8', connection: 'close' }).end(`${words}\n`);
}
