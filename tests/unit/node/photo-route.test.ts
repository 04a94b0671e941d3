import { mkdirSync, writeFileSync } from 'node:fs';
import { request, type IncomingHttpHeaders } from 'node:http';
import { join } from 'node:path';
import fc from 'fast-check';
import sharp from 'sharp';
import { afterAll, describe, expect, it, onTestFinished } from 'vitest';
import { answerPhoto } from '../../../electron/main/scheme.ts';
import { openDoor } from '../../../electron/node/door.ts';
import { PAGE_POLICY } from '../../../electron/node/page-policy.ts';
import { answerPhotos, isPhotoPath, type PhotoAsked } from '../../../electron/node/photo-route.ts';
import { serveLoopback } from '../../../electron/loopback/server.ts';
import type { AppError } from '../../../shared/channels.ts';
import type { IncomingPhoto } from '../../../shared/channels-photo.ts';
import type { Result } from '../../../shared/result.ts';
import { inPieces, withPhoneNotes } from '../../fixtures/photo/photo-files.ts';
import { fourCylinder } from '../../fixtures/plain-sheets.ts';
import { photoReader, testProgram, valueOf } from '../../fixtures/test-program.ts';
import { temporaryFolder } from '../../fixtures/temporary-folder.ts';

const reader = photoReader();
afterAll(() => reader.close());

type Answer = { readonly status: number; readonly headers: IncomingHttpHeaders; readonly body: Buffer };
type Asked = { readonly path: string; readonly method?: string; readonly headers?: Record<string, string>; readonly body?: Uint8Array };

/** Sends exactly these headers and this path; `fetch` would tidy both. */
const send = (port: number, { path, method = 'GET', headers = {}, body }: Asked): Promise<Answer> => new Promise((done, failed) => {
  const sent = request({ host: '127.0.0.1', port, path, method, headers: { host: `127.0.0.1:${port}`, ...headers } }, (response) => {
    const chunks: Buffer[] = [];
    response.on('data', (chunk: Buffer) => { chunks.push(chunk); }).on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(chunks) }));
  });
  sent.on('error', failed).end(body);
});

const told = <T>({ body }: Answer): Result<T, AppError> => JSON.parse(body.toString()) as Result<T, AppError>;
const plug = (): Promise<Buffer> => withPhoneNotes(sharp({ create: { width: 640, height: 480, channels: 3, background: '#a98' } })).jpeg().toBuffer();

async function served() {
  const { handlers, photos } = await testProgram({ reader });
  const { id: engineId } = valueOf(await handlers['engine.save']({ id: null, engine: fourCylinder }));
  const { id: readingId } = valueOf(await handlers['reading.start']({ engineId }));
  const page = join(temporaryFolder(), 'page');
  mkdirSync(page);
  writeFileSync(join(page, 'index.html'), '<!doctype html>');
  const answer = (asked: PhotoAsked) => answerPhotos(photos, asked, () => undefined);
  const loopback = await serveLoopback({ door: openDoor(handlers, () => undefined), photos: answer, page, port: 0 });
  onTestFinished(() => loopback.close());
  const { port, address } = loopback;
  const opened = await send(port, { path: new URL(address).pathname + new URL(address).search });
  const ours = { cookie: opened.headers['set-cookie']?.[0]?.split('; ')[0] ?? '', origin: `http://127.0.0.1:${port}` };
  const bringIn = (body: Uint8Array, name: string, headers: Record<string, string> = ours): Promise<Answer> =>
    send(port, { path: `/photos/incoming?readingId=${readingId}&name=${encodeURIComponent(name)}`, method: 'POST', headers, body });
  return { port, ours, readingId, handlers, bringIn, answer };
}

describe('a photo over the loopback host', () => {
  it('goes in, and comes out small, large, and byte for byte', async () => {
    const { port, ours, bringIn } = await served();
    const bytes = await plug();
    const { photo } = valueOf(told<IncomingPhoto>(await bringIn(bytes, 'Mein "Foto" 1 ä.jpg')));
    const small = await send(port, { path: `/photos/${photo.id}/small`, headers: ours });
    expect(small).toMatchObject({ status: 200, headers: { 'content-type': 'image/jpeg', 'content-security-policy': PAGE_POLICY, 'x-content-type-options': 'nosniff' } });
    expect(small.headers['content-disposition']).toBeUndefined();
    expect((await sharp(small.body).metadata()).width).toBe(320);
    const original = await send(port, { path: `/photos/${photo.id}/original`, headers: ours });
    expect(original.body.equals(bytes)).toBe(true);
    expect(original.headers['content-disposition']).toBe('attachment; filename="Mein _Foto_ 1 _.jpg"; filename*=UTF-8\'\'Mein%20%22Foto%22%201%20%C3%A4.jpg');
    const exported = await send(port, { path: `/photos/${photo.id}/export`, headers: ours });
    expect(exported.headers['content-disposition']).toMatch(/^attachment; filename="plug-photo-[0-9a-f]{8}[.]jpg"/);
    expect(await sharp(exported.body).metadata()).toMatchObject({ width: 640, height: 480 });
    expect(exported.body.includes('SN-4711')).toBe(false);
  });

  it('is told apart by what it is, never by the name or type it comes with', async () => {
    const { port, ours, bringIn } = await served();
    const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"><script>alert(1)</script></svg>');
    expect(told(await bringIn(svg, 'plug.jpg', { ...ours, 'content-type': 'image/jpeg' }))).toMatchObject({ ok: false, error: { problems: [{ path: 'plug.jpg', message: expect.stringContaining('SVG') as string }] } });
    const { photo } = valueOf(told<IncomingPhoto>(await bringIn(await plug(), 'page.html', { ...ours, 'content-type': 'text/html' })));
    const original = await send(port, { path: `/photos/${photo.id}/original`, headers: ours });
    expect(original.headers).toMatchObject({ 'content-type': 'image/jpeg', 'content-disposition': expect.stringMatching(/^attachment; filename="page.html.jpg"/) as string });
  });

  it('is named by its last part alone, whatever path comes with it', async () => {
    const { bringIn } = await served();
    const bytes = await plug();
    const names = ['../../etc/passwd', 'C:\\pictures\\plug 3.jpg', '..', '', '\u202egpj.exe', 'a\r\nset-cookie: x.jpg'];
    const kept: string[] = [];
    for (const [i, name] of names.entries()) kept.push(valueOf(told<IncomingPhoto>(await bringIn(Buffer.concat([bytes, Buffer.from([i])]), name))).photo.name);
    expect(kept).toEqual(['passwd', 'plug 3.jpg', 'photo', 'photo', 'gpj.exe', 'a  set-cookie: x.jpg']);
  });

  it.each([
    ['without the cookie', (ours: Record<string, string>) => ({ origin: ours['origin'] ?? '' })],
    ['with another cookie', (ours: Record<string, string>) => ({ ...ours, cookie: 'corenose-1=x' })],
    ['from a foreign page', (ours: Record<string, string>) => ({ ...ours, origin: 'https://elsewhere.example' })],
    ['from a page without an origin of its own', (ours: Record<string, string>) => ({ ...ours, origin: 'null' })],
    ['from a port beside ours', (ours: Record<string, string>) => ({ ...ours, origin: 'http://127.0.0.1:1' })],
    ['without saying from where', ({ cookie }: Record<string, string>) => ({ cookie: cookie ?? '' })],
  ] as const)('is not taken %s, and nothing is added', async (_, headersOf) => {
    const { bringIn, ours, handlers, readingId } = await served();
    expect((await bringIn(await plug(), 'plug.jpg', headersOf(ours))).status).toBe(403);
    expect(valueOf(await handlers['photo.list']({ readingId }))).toEqual([]);
  });

  it('is not shown without the cookie, nor to a page that reached this machine under another name', async () => {
    const { port, ours, bringIn } = await served();
    const { photo } = valueOf(told<IncomingPhoto>(await bringIn(await plug(), 'plug.jpg')));
    const path = `/photos/${photo.id}/original`;
    expect((await send(port, { path })).status).toBe(403);
    expect((await send(port, { path, headers: { ...ours, host: 'rebound.example' } })).status).toBe(421);
    expect((await send(port, { path, headers: { ...ours, origin: 'https://elsewhere.example' } })).status).toBe(403);
  });

  it('is reached by its id and a size, and by no other path', async () => {
    const { port, ours, bringIn } = await served();
    const { id } = valueOf(told<IncomingPhoto>(await bringIn(await plug(), 'plug.jpg'))).photo;
    const paths = [
      `/photos/${id}`, `/photos/${id}/`, `/photos/${id}/large`, `/photos/${id}/small/`, `/photos/${id}/../../library.sqlite`, `/photos/..%2f..%2flibrary.sqlite/small`,
      `/photos/${id.toUpperCase()}/small/x`, `/photos/${id}%00/small`, '/photos/incoming', '/photos/', '/photos//small', '/photos/00000000-0000-4000-8000-00000000ffff/small',
      `/photos/${id}/small%2f..%2foriginal`, '/photos/%2e%2e/%2e%2e/etc/passwd',
    ];
    for (const path of paths) expect([path, (await send(port, { path, headers: ours })).status >= 400]).toEqual([path, true]);
    for (const method of ['PUT', 'DELETE', 'PATCH']) expect((await send(port, { path: `/photos/${id}/original`, method, headers: ours })).status).toBe(405);
  });

  it('is refused over the limit with words, though more was on its way', async () => {
    const { bringIn } = await served();
    const problems = [{ path: 'film.jpg', message: 'the file is too large; at most 150 MB are read' }];
    expect(told(await bringIn(Buffer.alloc(151_000_000), 'film.jpg'))).toMatchObject({ ok: false, error: { problems } });
  }, 30_000);

  it('needs a reading that is there', async () => {
    const { port, ours } = await served();
    const asked = (query: string) => send(port, { path: `/photos/incoming?${query}`, method: 'POST', headers: ours, body: Buffer.from('x') });
    expect((await asked('name=a.jpg')).status).toBe(400);
    expect(told(await asked('name=a.jpg&readingId=..%2f..'))).toMatchObject({ ok: false, error: { code: 'bad-request', problems: [{ path: 'readingId' }] } });
    expect(told(await asked('name=a.jpg&readingId=00000000-0000-4000-8000-00000000ffff'))).toMatchObject({ ok: false, error: { code: 'not-found', what: 'reading' } });
  });
});

describe('a path below the photos', () => {
  it('gives a photo or a refusal in words, whatever is asked, and never a mistake', async () => {
    const { answer } = await served();
    const piece = fc.constantFrom('..', '%2e%2e', '/', '%2f', 'small', 'original', 'incoming', '00000000-0000-4000-8000-000000000001', '%00', '\\', 'photos', 'ä');
    await fc.assert(fc.asyncProperty(fc.array(piece, { maxLength: 8 }), fc.constantFrom('GET', 'POST', 'PUT'), async (pieces, method) => {
      const pathname = `/photos/${pieces.join('')}`;
      expect(isPhotoPath(pathname)).toBe(true);
      const { status, file } = await answer({ method, pathname, query: new URLSearchParams(), body: inPieces(new Uint8Array()) });
      expect([400, 404, 405]).toContain(status);
      expect(file).toBeUndefined();
    }), { numRuns: 300 });
  });
});

describe('a photo over the own scheme of the desktop', () => {
  it('goes in and out as on the loopback host, and not for a page of another origin', async () => {
    const { answer, readingId } = await served();
    const bytes = await plug();
    const asked = (path: string, given: RequestInit = {}) => answerPhoto(new Request(`corenose://app${path}`, given), answer);
    const incoming = `/photos/incoming?readingId=${readingId}&name=plug.jpg`;
    expect((await asked(incoming, { method: 'POST', body: new Uint8Array(bytes), headers: { origin: 'https://elsewhere.example' } })).status).toBe(403);
    const { photo } = valueOf((await (await asked(incoming, { method: 'POST', body: new Uint8Array(bytes), headers: { origin: 'corenose://app' } })).json()) as Result<IncomingPhoto, AppError>);
    const original = await asked(`/photos/${photo.id}/original`);
    expect(original.headers.get('content-security-policy')).toBe(PAGE_POLICY);
    expect(Buffer.from(await original.arrayBuffer()).equals(bytes)).toBe(true);
  });
});
