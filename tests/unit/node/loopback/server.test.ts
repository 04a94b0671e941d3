import { once } from 'node:events';
import { mkdirSync, writeFileSync } from 'node:fs';
import { request, type IncomingHttpHeaders } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { BODY_LIMIT_BYTES } from '../../../../electron/loopback/body.ts';
import { serveLoopback } from '../../../../electron/loopback/server.ts';
import { openDoor } from '../../../../electron/node/door.ts';
import { PAGE_POLICY } from '../../../../electron/node/page-policy.ts';
import { fourCylinder } from '../../../fixtures/plain-sheets.ts';
import { answerPhotos } from '../../../../electron/node/photo-route.ts';
import { testProgram } from '../../../fixtures/test-program.ts';
import { temporaryFolder } from '../../../fixtures/temporary-folder.ts';

type Answer = { readonly status: number; readonly headers: IncomingHttpHeaders; readonly body: string };
type Asked = { readonly path: string; readonly method?: string; readonly headers?: Record<string, string>; readonly body?: string };

/** Sends exactly these headers and this path; `fetch` would tidy both. */
const send = (port: number, { path, method = 'GET', headers = {}, body }: Asked): Promise<Answer> => new Promise((done, failed) => {
  const sent = request({ host: '127.0.0.1', port, path, method, headers: { host: `127.0.0.1:${port}`, ...headers } }, (response) => {
    let text = '';
    response.setEncoding('utf8').on('data', (chunk: string) => { text += chunk; }).on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, body: text }));
  });
  sent.on('error', failed).end(body);
});

const canConnect = (host: string, port: number): Promise<boolean> => new Promise((done) => {
  const socket = connect({ host, port, timeout: 500 });
  const end = (reached: boolean): void => { socket.destroy(); done(reached); };
  socket.once('connect', () => end(true)).once('error', () => end(false)).once('timeout', () => end(false));
});

async function served() {
  const page = join(temporaryFolder(), 'page');
  mkdirSync(join(page, 'assets'), { recursive: true });
  writeFileSync(join(page, 'index.html'), '<!doctype html><title>Page</title>');
  writeFileSync(join(page, '../secret.html'), 'secret');
  const { handlers, photos } = await testProgram();
  const loopback = await serveLoopback({
    door: openDoor(handlers, () => undefined), photos: (asked) => answerPhotos(photos, asked, () => undefined), page, port: 0,
  });
  onTestFinished(() => loopback.close());
  const { port, address } = loopback;
  const opened = await send(port, { path: new URL(address).pathname + new URL(address).search });
  const cookie = opened.headers['set-cookie']?.[0]?.split('; ')[0] ?? '';
  const call = (channel: string, body: string, headers: Record<string, string> = {}): Promise<Answer> =>
    send(port, { path: `/call/${channel}`, method: 'POST', body, headers: { cookie, origin: `http://127.0.0.1:${port}`, 'content-type': 'application/json', ...headers } });
  return { loopback, port, cookie, opened, call };
}

describe('the loopback host', () => {
  it('gives the page to whoever opens the address it printed', async () => {
    const { port, cookie, opened } = await served();
    expect(opened).toMatchObject({ status: 200, body: expect.stringContaining('url=/') as string });
    expect(await send(port, { path: '/', headers: { cookie } })).toMatchObject({ status: 200, body: '<!doctype html><title>Page</title>' });
  });

  it('answers the calls of the page as the desktop does', async () => {
    const { call } = await served();
    const saved = JSON.parse((await call('engine.save', JSON.stringify({ id: null, engine: fourCylinder }))).body) as { ok: boolean; value: { engine: unknown } };
    expect(saved).toMatchObject({ ok: true, value: { engine: fourCylinder } });
    expect(JSON.parse((await call('engine.list', 'null')).body)).toMatchObject({ ok: true, value: [{ readings: 0 }] });
    expect(JSON.parse((await call('engine.list', '{"a":1}')).body)).toMatchObject({ ok: false, error: { code: 'bad-request' } });
    expect(JSON.parse((await call('nonsense', 'null')).body)).toEqual({ ok: false, error: { code: 'not-found', what: 'channel' } });
  });

  it('says with every answer, also a refusal, what a page may do', async () => {
    const { port, cookie } = await served();
    for (const asked of [{ path: '/', headers: { cookie } }, { path: '/' }, { path: '/none.js', headers: { cookie } }, { path: '/', headers: { host: 'x.example' } }])
      expect((await send(port, asked)).headers).toMatchObject({ 'content-security-policy': PAGE_POLICY, 'x-content-type-options': 'nosniff', 'referrer-policy': 'no-referrer' });
  });

  it.each([
    ['without the cookie', 403, {}],
    ['with a guessed cookie', 403, { cookie: 'corenose-1=x' }],
    ['for another name of this machine', 421, { host: 'rebound.example' }],
  ])('keeps the page to itself %s', async (_who, status, headers) => {
    const { port } = await served();
    expect(await send(port, { path: '/', headers })).toMatchObject({ status, body: expect.not.stringContaining('Page') as string });
  });

  it('tells a person who comes by an old address how to get back in, and lets nothing else out', async () => {
    const { port } = await served();
    for (const path of ['/', '/open?key=old']) {
      const { status, headers, body } = await send(port, { path, headers: { accept: 'text/html,*/*' } });
      expect({ status, type: headers['content-type'] }).toEqual({ status: 403, type: 'text/html; charset=utf-8' });
      expect(body).toContain('Go on in the window that it opened');
      expect(body).not.toContain('Page');
    }
  });

  it.each([
    ['from another site', { origin: 'https://x.example' }, 403],
    ['without saying where from', { origin: '' }, 403],
    ['as a plain form would send it', { 'content-type': 'text/plain' }, 415],
    ['as a form', { 'content-type': 'application/x-www-form-urlencoded' }, 415],
    ['to a rebound name', { host: 'rebound.example' }, 421],
    ['without the cookie', { cookie: '' }, 403],
  ])('runs no call %s', async (_how, headers, status) => {
    const { call } = await served();
    expect((await call('engine.save', JSON.stringify({ id: null, engine: fourCylinder }), headers)).status).toBe(status);
    expect(JSON.parse((await call('engine.list', 'null')).body)).toEqual({ ok: true, value: [] });
  });

  it.each(['/../secret.html', '/..%2fsecret.html', '/%2e%2e%2fsecret.html', '/..\\secret.html', '/..%5csecret.html', '/assets', '/assets/', '//secret.html', '/call/engine.list', '/%'])('gives nothing for %s', async (path) => {
    const { port, cookie } = await served();
    const { status, body } = await send(port, { path, headers: { cookie } });
    expect(status).toBeGreaterThanOrEqual(400);
    expect(body).not.toContain('secret');
    expect(body).not.toContain('index.html');
  });

  it.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS'])('knows no %s', async (method) => {
    const { port, cookie } = await served();
    expect((await send(port, { path: '/', method, headers: { cookie, origin: `http://127.0.0.1:${port}` } })).status).toBe(405);
  });

  it('stops reading a body that is too large, whatever length it claims', async () => {
    const { call } = await served();
    const chunked = await call('reading.import', `"${'x'.repeat(BODY_LIMIT_BYTES)}"`, { 'transfer-encoding': 'chunked' }).catch((error: unknown) => (error as NodeJS.ErrnoException).code);
    expect(typeof chunked === 'object' ? chunked.status : chunked).toSatisfy((end) => end === 413 || end === 'ECONNRESET' || end === 'EPIPE');
    expect(JSON.parse((await call('engine.list', 'null')).body)).toEqual({ ok: true, value: [] });
  });

  it.each(['{"a":', '', '\u0000'])('answers a call that is not JSON with what is wrong: %j', async (body) => {
    const { call } = await served();
    expect(await call('engine.list', body)).toMatchObject({ status: 400, body: expect.stringContaining('not JSON') as string });
  });

  it('outlives a connection that speaks nonsense', async () => {
    const { port, call } = await served();
    const socket = connect(port, '127.0.0.1').on('error', () => undefined);
    socket.end('NONSENSE\r\n\r\n').resume();
    await once(socket, 'close');
    expect((await call('engine.list', 'null')).status).toBe(200);
  });

  it('listens on this machine only', async () => {
    const { port } = await served();
    const outside = Object.values(networkInterfaces()).flat().filter((each) => each !== undefined).filter(({ internal, family }) => !internal && family === 'IPv4').map(({ address }) => address);
    for (const address of [...outside, '127.0.0.2']) {
      const reached = await canConnect(address, port);
      expect([address, reached]).toEqual([address, false]);
    }
  });

  it('says so when the port is taken', async () => {
    const { port, loopback } = await served();
    await expect(serveLoopback({ door: openDoor({} as never, () => undefined), photos: () => Promise.reject(new Error('not asked')), page: '/', port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
    expect(loopback.port).toBe(port);
  });
});
