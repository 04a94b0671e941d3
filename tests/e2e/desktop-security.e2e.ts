import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ROOT } from '../../electron/start/targets.ts';
import { CHANNELS } from '../../shared/channel-names.ts';
import { openDesktop, shownOn, skipReason, type Desktop } from './desktop.ts';
import { scratchFolder } from './scratch.ts';

const scratch = scratchFolder();
let desktop: Desktop;

beforeAll(async () => {
  if (skipReason === null) desktop = await openDesktop({ library: join(scratch, 'library'), profile: join(scratch, 'profile') });
});
afterAll(async () => { if (skipReason === null) await desktop.close(); });
beforeEach((context) => { if (skipReason !== null) context.skip(skipReason); });

/** Directives of the security policy that were broken while something was tried. */
const violationsOf = (attempt: string): Promise<string[]> => desktop.page.evaluate(async (script) => {
  const broken: string[] = [];
  const note = (event: SecurityPolicyViolationEvent): void => { broken.push(event.effectiveDirective); };
  document.addEventListener('securitypolicyviolation', note);
  const { attempts } = window as unknown as { attempts: Record<string, () => unknown> };
  try { await attempts[script]?.(); } catch { /* refused */ }
  await new Promise((done) => { setTimeout(done, 300); });
  document.removeEventListener('securitypolicyviolation', note);
  return broken;
}, attempt);

describe('the page in its window', () => {
  it('has nothing of Node, nor has a frame in it', async () => {
    const found = await desktop.page.evaluate(() => {
      const frame = document.body.appendChild(document.createElement('iframe'));
      const inside = frame.contentWindow as unknown as Record<string, unknown>;
      const names = ['require', 'process', 'module', 'Buffer', 'global'];
      const there = { page: names.filter((name) => name in window), frame: [...names, 'corenose'].filter((name) => name in inside) };
      frame.remove();
      return there;
    });
    expect(found).toEqual({ page: [], frame: [] });
  });

  it('has a bridge with the channels and nothing else, which it cannot change', async () => {
    const bridge = await desktop.page.evaluate(() => {
      'use strict';
      const attempt = (change: () => void): boolean => { try { change(); return true; } catch { return false; } };
      const loose = window.corenose as unknown as Record<string, unknown>;
      return {
        names: Object.keys(loose), kinds: [...new Set(Object.values(loose).map((each) => typeof each))],
        replaced: attempt(() => { (window as { corenose?: unknown }).corenose = {}; }), extended: attempt(() => { loose['more'] = 1; }),
      };
    });
    expect(bridge).toEqual({ names: [...CHANNELS], kinds: ['function'], replaced: false, extended: false });
  });

  it('is answered with problems when it sends rubbish, on every channel', async () => {
    const answers = await desktop.page.evaluate(async (names) => Promise.all(names.flatMap((name) => [undefined, 7, 'x', [], { path: '/etc/passwd' }, { id: '../../x' }].map(async (rubbish) => {
      const answer = await (window.corenose[name] as (input: unknown) => Promise<{ ok: boolean; error?: { code: string } }>)(rubbish);
      return `${name} ${JSON.stringify(rubbish)}: ${answer.ok ? 'taken' : (answer.error?.code ?? '')}`;
    }))), CHANNELS);
    expect(answers.filter((answer) => !answer.endsWith(': bad-request'))).toEqual([]);
  });

  it.each([
    ['an inline script', 'script-src-elem', () => { const script = document.createElement('script'); script.textContent = 'window.planted = true'; document.head.append(script); }],
    ['an inline handler', 'script-src-attr', () => { const button = document.createElement('button'); button.setAttribute('onclick', 'window.planted = true'); document.body.append(button); button.click(); button.remove(); }],
    ['a script from elsewhere', 'script-src-elem', () => { const script = document.createElement('script'); script.src = 'https://x.example/a.js'; document.head.append(script); }],
    ['a text run as code', 'script-src', () => new Promise<void>((done) => { setTimeout(() => { try { (Reflect.construct(Function, ['window.planted = true']) as () => void)(); } catch { /* refused */ } done(); }); })],
    ['an inline style sheet', 'style-src-elem', () => { const style = document.createElement('style'); style.textContent = 'body { display: none }'; document.head.append(style); }],
    ['a request to elsewhere', 'connect-src', () => fetch('https://x.example/')],
    ['a picture from elsewhere', 'img-src', () => { new Image().src = 'https://x.example/a.png'; }],
    ['a frame from elsewhere', 'frame-src', () => { const frame = document.createElement('iframe'); frame.src = 'https://x.example/'; document.body.append(frame); }],
    ['a worker made of text', 'worker-src', () => { new Worker(URL.createObjectURL(new Blob(['1']))); }],
    ['another base for its links', 'base-uri', () => { const base = document.createElement('base'); base.href = 'https://x.example/'; document.head.append(base); base.remove(); }],
    ['a form sent away', 'form-action', () => { const form = document.createElement('form'); form.action = 'https://x.example/'; document.body.append(form); form.submit(); form.remove(); }],
  ] as const)('may not have %s (%s)', async (name, directive, attempt) => {
    await desktop.page.evaluate(`(window.attempts ??= {})[${JSON.stringify(name)}] = ${attempt.toString()}`);
    expect(await violationsOf(name)).toContain(directive);
    expect(await desktop.page.evaluate(() => window.planted)).toBeUndefined();
  });

  it('opens no second window, by script or by link', async () => {
    const opened = await desktop.page.evaluate(() => {
      const link = document.body.appendChild(Object.assign(document.createElement('a'), { href: 'https://x.example/', target: '_blank', textContent: 'x' }));
      link.click();
      link.remove();
      return window.open('https://x.example/');
    });
    expect(opened).toBeNull();
    await desktop.page.waitForTimeout(300);
    expect(desktop.page.context().pages()).toHaveLength(1);
  });

  it.each([
    'https://x.example/', 'https://x.example/?next=corenose://app', 'http://127.0.0.1:9/', 'file:///etc/passwd', 'data:text/html,<h1>x</h1>', 'corenose://evil/index.html',
    'corenose://app.x.example/index.html', 'corenose://app/other.html', 'javascript:document.body.remove()', 'mailto:a@x.example',
  ])('stays where it is when it is sent to %s', async (address) => {
    const before = desktop.page.url();
    await desktop.page.evaluate((to) => { location.href = to; }, shownOn(address));
    await desktop.page.waitForTimeout(200);
    await desktop.page.evaluate((to) => { const link = document.body.appendChild(Object.assign(document.createElement('a'), { href: to })); link.click(); link.remove(); }, shownOn(address));
    await desktop.page.waitForTimeout(200);
    expect(desktop.page.url()).toBe(before);
    expect(await desktop.page.evaluate(() => window.corenose['app.info'](null))).toMatchObject({ ok: true });
  });

  it('is refused every permission', async () => {
    const asked = await desktop.page.evaluate(async () => ({
      notifications: await Notification.requestPermission(),
      place: await new Promise<string>((done) => { navigator.geolocation.getCurrentPosition(() => done('granted'), ({ code }) => done(code === 1 ? 'denied' : 'failed')); }),
      clipboard: await navigator.clipboard.readText().then(() => 'granted', () => 'denied'),
      camera: await navigator.mediaDevices.getUserMedia({ video: true }).then(() => 'granted', () => 'denied'),
    }));
    expect(asked).toEqual({ notifications: 'denied', place: 'denied', clipboard: 'denied', camera: 'denied' });
  });

  it.each(['/..%2fpackage.json', '/%2e%2e%2fpackage.json', '/..%5cpackage.json', '/assets', '/assets/', '/electron/main.cjs', '/..%2felectron%2fmain.cjs'])('gets nothing from outside the page\'s folder: %s', async (path) => {
    expect(await desktop.page.evaluate(async (address) => (await fetch(address)).status, path)).toBe(404);
  });

  it('asked for nothing but its own files', async () => {
    expect(desktop.requests.length).toBeGreaterThan(2);
    const away = desktop.requests.filter((address) => !/^(corenose:\/\/app\/|blob:)/.test(address) && !HOSTILE.test(address));
    expect(away).toEqual([]);
  });
});

/** What this file itself tries; the policy lets none of it out. */
const HOSTILE = /^(https:\/\/x\.example\/|http:\/\/127\.0\.0\.1:9\/|corenose:\/\/(evil|app\.x\.example)\/|data:|file:|mailto:)/;

describe('the preload', () => {
  const bundle = readFileSync(join(ROOT, 'dist/electron/preload.cjs'), 'utf8');
  const run = (process: object): string[] => {
    const exposed: string[] = [];
    const electron = { contextBridge: { exposeInMainWorld: (name: string) => exposed.push(name) }, ipcRenderer: { on: () => undefined } };
    runInNewContext(bundle, { process, require: (name: string) => (name === 'electron' ? electron : undefined) });
    return exposed;
  };

  it('exposes one thing, and that only in a page that is isolated and sandboxed', () => {
    expect(run({ contextIsolated: true, sandboxed: true })).toEqual(['corenose']);
    for (const process of [{ contextIsolated: false, sandboxed: true }, { contextIsolated: true, sandboxed: false }, {}]) expect(() => run(process)).toThrow('isolated and sandboxed');
  });

  it('needs nothing but electron, so that it loads in the sandbox', () => {
    expect([...bundle.matchAll(/require\("([^"]+)"\)/g)].map(([, name]) => name)).toEqual(['electron']);
  });
});
