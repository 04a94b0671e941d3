import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { buildAll, ROOT } from '../../electron/start/targets.ts';
import { STATIONS, hrefOf, type Route } from '../../renderer/app/route.ts';
import type { Channel } from '../../shared/channel-names.ts';
import type { Input, Output } from '../../shared/channels.ts';
import { callFrom } from '../e2e/library-steps.ts';
import { launchBrowser, startLoopback } from '../e2e/loopback-host.ts';
import { chromium } from './chromium.ts';

/*
 * Every screen of the demo library as pictures, in both themes and two sizes, for looking at and for the README.
 * npm run screenshots [-- FOLDER]; the folder is dist/screenshots when none is named.
 */
const SIZES = [{ width: 1280, height: 800 }, { width: 1920, height: 1080 }] as const;
const THEMES = ['light', 'dark'] as const;

async function answered<C extends Channel>(page: Page, channel: C, input: Input<C>): Promise<Output<C>> {
  const reply = await callFrom(page, channel, input);
  if (!reply.ok) throw new Error(`${channel}: ${JSON.stringify(reply.error)}`);
  return reply.value;
}

/** The screens worth a picture: the shelf, one engine's log and editor, and the stations of one reading of each engine. */
async function screens(page: Page): Promise<readonly (readonly [string, Route])[]> {
  const engines = await answered(page, 'engine.list', null);
  const readings = await Promise.all(engines.map(async ({ id, engine }) => {
    const [newest, before] = await answered(page, 'reading.list', { engineId: id });
    return { name: (engine.name ?? 'engine').split(' ', 1).join('').toLowerCase(), reading: before ?? newest };
  }));
  const first = engines.find(({ engine }) => engine.layout === 'inline') ?? engines[0];
  return [
    ['shelf', { page: 'shelf' }],
    ['settings', { page: 'settings' }],
    ...(first ? [['log', { page: 'engine', id: first.id }] as const, ['engine', { page: 'engine-edit', id: first.id }] as const] : []),
    ...readings.flatMap(({ name, reading }) => (reading ? STATIONS.map((station) => [`${name}-${station}`, { page: 'reading', id: reading.id, station }] as const) : [])),
  ];
}

async function take(browser: Browser, address: string, folder: string): Promise<number> {
  let taken = 0;
  for (const viewport of SIZES) for (const colorScheme of THEMES) {
    const context = await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' });
    const page = await context.newPage();
    await page.goto(address);
    await page.waitForURL((url) => url.pathname === '/');
    for (const [name, route] of await screens(page)) {
      await page.goto(`${new URL(address).origin}/${hrefOf(route)}`);
      await page.getByRole('main').waitFor();
      await page.waitForLoadState('networkidle');
      await page.waitForTimeout(300);
      await page.screenshot({ path: join(folder, `${name}-${colorScheme}-${viewport.width}x${viewport.height}.png`) });
      taken += 1;
    }
    await context.close();
  }
  return taken;
}

const browserPath = chromium();
if (browserPath === null) {
  process.exitCode = 1;
} else {
  process.env['CORENOSE_CHROMIUM'] = browserPath;
  await buildAll((line) => process.stdout.write(line));
  const folder = resolve(process.argv[2] ?? join(ROOT, 'dist/screenshots'));
  mkdirSync(folder, { recursive: true });
  const scratch = mkdtempSync(join(tmpdir(), 'corenose-screenshots-'));
  const host = await startLoopback(['--demo', '--library', join(scratch, 'library')]);
  const browser = await launchBrowser();
  try {
    process.stdout.write(`${await take(browser, host.address, folder)} pictures in ${folder}\n`);
  } finally {
    await browser.close();
    await host.stop();
    rmSync(scratch, { recursive: true, force: true, maxRetries: 5 });
  }
}
