import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { SEEDS } from '../../seeds/index.ts';
import { fourCylinder } from '../fixtures/plain-sheets.ts';
import { callFrom, damageLibrary } from './library-steps.ts';
import { launchBrowser, libraryIn, startAndEnd, startLoopback, type Started } from './loopback-host.ts';
import { scratchFolder } from './scratch.ts';

const scratch = scratchFolder();
let browser: Browser;
beforeAll(async () => { browser = await launchBrowser(); });
afterAll(() => browser.close());

async function started(args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Started> {
  const host = await startLoopback(args, env);
  onTestFinished(() => host.kill());
  return host;
}

async function visitor(address: string): Promise<Page> {
  const context = await browser.newContext();
  onTestFinished(() => context.close());
  const page = await context.newPage();
  await page.goto(address);
  return page;
}

async function opened(host: Started): Promise<Page> {
  const page = await visitor(host.address);
  await page.waitForURL((url) => url.pathname === '/');
  return page;
}

describe('npm start on a machine without a display', () => {
  it('says which host it took and why, prints its address, stays up, and ends cleanly', async () => {
    const host = await started(['--library', libraryIn(scratch, 'first')]);
    const lines = host.output().trim().split('\n');
    expect(lines.filter((line) => line.startsWith('Host: '))).toEqual(['Host: loopback, because it was asked for.']);
    expect(lines).toContain(`Library: ${libraryIn(scratch, 'first')}`);
    expect((await fetch(host.address)).status).toBe(200);
    const code = await host.stop();
    await expect(fetch(host.address)).rejects.toThrow();
    if (process.platform === 'win32') return; // has no Ctrl-C that one process can send another
    expect(code).toBe(0);
    expect(host.output()).toMatch(/Closed\.\n$/);
  });

  it('opens by its printed address, and keeps the key out of the address that stays', async () => {
    const page = await opened(await started(['--library', libraryIn(scratch, 'opened')]));
    expect(page.url()).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    expect(await callFrom(page, 'app.info', null)).toMatchObject({ ok: true, value: { host: 'loopback', library: { readOnly: false, trouble: null } } });
  });

  it('shows a page that was built for use, also where a test runner built it', async () => {
    const page = await opened(await started(['--library', libraryIn(scratch, 'built')]));
    const script = await page.evaluate(async () => (await fetch(document.querySelector('script')?.src ?? '')).text());
    expect(script.length).toBeGreaterThan(100_000);
    expect(script).not.toContain('jsxDEV');
  });

  it('takes the library from the environment when none is asked for', async () => {
    const host = await started([], { CORENOSE_LIBRARY: libraryIn(scratch, 'environment') });
    expect(host.output()).toContain(`Library: ${libraryIn(scratch, 'environment')}\n`);
  });

  it('refuses an option it does not know, and a port that is taken', async () => {
    expect(await startAndEnd(['--colour'])).toMatchObject({ code: 2, stdout: '', stderr: expect.stringMatching(/^Unknown option '--colour'\n/) as string });
    const port = new URL((await started(['--library', libraryIn(scratch, 'port')])).address).port;
    const second = await startAndEnd(['--host', 'loopback', '--no-open', '--library', libraryIn(scratch, 'port2'), '--port', port]);
    expect(second).toMatchObject({ code: 1, stderr: `Port ${port} is taken. Choose another with --port, or leave it out.\n` });
  });
});

describe('strangers to the loopback host', () => {
  it('see a word on how to open it, and nothing else', async () => {
    const host = await started(['--library', libraryIn(scratch, 'strangers')]);
    const page = await visitor(new URL(host.address).origin);
    expect(await page.locator('body').innerText()).toContain('Corenose opens only by the address');
  });

  it('cannot make a call from a page of their own, even in the browser that has the cookie', async () => {
    const host = await started(['--library', libraryIn(scratch, 'crossing')]);
    const page = await opened(host);
    const other = createServer((_request, response) => { response.writeHead(200, { 'content-type': 'text/html' }).end('<!doctype html>'); }).listen(0, '127.0.0.1');
    onTestFinished(() => { other.close(); });
    const foreign = await page.context().newPage();
    await foreign.goto(`http://127.0.0.1:${(other.address() as AddressInfo).port}/`);
    const body = JSON.stringify({ id: null, engine: fourCylinder });
    const outcome = await foreign.evaluate(async ({ to, text }) => {
      const attempt = (init: RequestInit): Promise<string> => fetch(`${to}/call/engine.save`, { method: 'POST', credentials: 'include', body: text, ...init }).then((answer) => `${answer.type} ${answer.status}`, () => 'refused');
      const calls = [await attempt({ headers: { 'content-type': 'application/json' } }), await attempt({ mode: 'no-cors', headers: { 'content-type': 'text/plain' } })];
      const frame = document.body.appendChild(document.createElement('iframe'));
      frame.src = `${to}/`;
      await new Promise((done) => { setTimeout(done, 500); });
      return { calls, framed: frame.contentDocument !== null };
    }, { to: new URL(host.address).origin, text: body });
    expect(outcome.calls).toEqual(['refused', 'refused']);
    expect(await callFrom(page, 'engine.list', null)).toEqual({ ok: true, value: [] });
    const frames = foreign.frames().filter((frame) => frame !== foreign.mainFrame());
    for (const frame of frames) expect(await frame.content()).not.toContain('Corenose');
  });

  it('cannot run a script in the page', async () => {
    const page = await opened(await started(['--library', libraryIn(scratch, 'script')]));
    const violated = page.evaluate(() => new Promise<string>((done) => { document.addEventListener('securitypolicyviolation', (event) => done(event.effectiveDirective), { once: true }); }));
    await page.evaluate(() => { const script = document.createElement('script'); script.textContent = 'window.planted = true'; document.head.append(script); });
    expect(await violated).toBe('script-src-elem');
    expect(await page.evaluate(() => window.planted)).toBeUndefined();
  });
});

describe('the library behind the loopback host', () => {
  it('has everything again after the program was ended, and after it was cut off', async () => {
    const library = libraryIn(scratch, 'kept');
    for (const end of ['stop', 'kill'] as const) {
      const host = await started(['--library', library]);
      const saved = await callFrom(await opened(host), 'engine.save', { id: null, engine: { ...fourCylinder, name: `before ${end}` } });
      expect(saved).toMatchObject({ ok: true });
      await host[end]();
    }
    const page = await opened(await started(['--library', library]));
    for (const name of ['before stop', 'before kill']) await page.getByText(name).first().waitFor();
  });

  it('is shown read-only where a second program opens it', async () => {
    const library = libraryIn(scratch, 'shared');
    await callFrom(await opened(await started(['--library', library])), 'engine.save', { id: null, engine: fourCylinder });
    const second = await started(['--library', library]);
    expect(second.output()).toContain('Another Corenose has this library open.');
    const page = await opened(second);
    await page.getByText('Another Corenose has this library open').first().waitFor();
    expect(await callFrom(page, 'engine.list', null)).toMatchObject({ ok: true, value: [{ engine: fourCylinder }] });
    expect(await callFrom(page, 'engine.save', { id: null, engine: fourCylinder })).toMatchObject({ ok: false, error: { code: 'read-only' } });
  });

  it('is left alone by the demo library, which holds every seed with its findings', async () => {
    const library = libraryIn(scratch, 'demo');
    const page = await opened(await started(['--library', library, '--demo']));
    for (const { name } of SEEDS) await page.getByText(name).first().waitFor();
    const engines = await callFrom(page, 'engine.list', null);
    if (!engines.ok) throw new Error('no engines');
    expect(engines.value.map(({ readings }) => readings).sort()).toEqual(SEEDS.map(({ sheets }) => sheets.length).sort());
    for (const { id: engineId } of engines.value) {
      const readings = await callFrom(page, 'reading.list', { engineId });
      expect(readings.ok && readings.value.every(({ state, verdicts }) => state === 'kept' && verdicts.length > 0)).toBe(true);
    }
    await callFrom(page, 'library.use', { kind: 'own' });
    expect(await callFrom(page, 'engine.list', null)).toEqual({ ok: true, value: [] });
  });

  it('offers its backups in the window when it is damaged, and goes on from one', async () => {
    const library = libraryIn(scratch, 'damaged');
    const backup = await damageLibrary(library, { ...fourCylinder, name: 'Saved from damage' });
    const page = await opened(await started(['--library', library]));
    await page.getByText('The library file is damaged').first().waitFor();
    await page.getByRole('button', { name: new RegExp(backup) }).click();
    await page.getByRole('dialog').getByRole('button', { name: new RegExp(backup) }).click();
    await page.getByText('Saved from damage').first().waitFor();
  });
});
