import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { buildAll, ROOT } from '../../electron/start/targets.ts';
import { launchBrowser, startLoopback } from '../e2e/loopback-host.ts';
import { SIZES, THEMES, addEmptyReading, addRadialReading, visitScreens } from '../e2e/screens.ts';
import { chromium } from './chromium.ts';

/*
 * Every screen as pictures, in both themes and two sizes, for looking at and for the README: of an empty library and an empty reading, of the demo
 * library, and of a radial with 36 plugs. Those of 1280 by 800 also in grey, where what only colour says is lost.
 * npm run screenshots [-- FOLDER]; the folder is dist/screenshots when none is named. Those of the README go to docs/screenshots.
 */
type Library = { readonly name: string; readonly args: readonly string[]; readonly prepare: (page: Page, address: string) => Promise<unknown> };

const LIBRARIES: readonly Library[] = [
  { name: 'empty', args: [], prepare: async () => undefined },
  { name: 'begun', args: [], prepare: addEmptyReading },
  { name: 'typical', args: ['--demo'], prepare: async () => undefined },
  { name: 'radial', args: [], prepare: addRadialReading },
];

async function take(browser: Browser, address: string, folder: string): Promise<number> {
  let taken = 0;
  for (const viewport of SIZES) for (const colorScheme of THEMES) {
    const context = await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' });
    const page = await context.newPage();
    await visitScreens(page, address, async (name) => {
      const picture = await page.screenshot();
      const file = `${name}-${colorScheme}-${viewport.width}x${viewport.height}.png`;
      writeFileSync(join(folder, file), picture);
      if (viewport === SIZES[0]) await sharp(picture).greyscale().toFile(join(folder, 'grey', file));
      taken += 1;
    });
    await context.close();
  }
  return taken;
}

async function takeLibrary(browser: Browser, { name, args, prepare }: Library, folder: string, scratch: string): Promise<number> {
  const host = await startLoopback([...args, '--library', join(scratch, name)]);
  try {
    const page = await browser.newPage();
    await prepare(page, host.address);
    await page.close();
    mkdirSync(join(folder, name, 'grey'), { recursive: true });
    return await take(browser, host.address, join(folder, name));
  } finally {
    await host.stop();
  }
}

/** The pictures of the README and of the other documents, by the screen they show. */
const README: Readonly<Record<string, string>> = {
  'marlisse-plugs': 'plugs', 'marlisse-findings': 'findings', 'marlisse-run': 'run', 'marlisse-cylinders': 'cylinders', shelf: 'shelf', 'halvorn-findings': 'stop',
  'engine-heat-ladder': 'heat-value', 'engine-heat-what-if': 'what-if', 'engine-heat-drive': 'drive',
  'marlisse-photos': 'photos', 'marlisse-photo': 'photo', 'engine-time': 'years',
};
/** Pictures of screens that need the larger window to show what they are for. */
const LARGE: Readonly<Record<string, string>> = { 'engine-photos': 'photos-over-the-years' };

/** Keeps the README's pictures small: a palette of 256 colours, which flat screens do not notice. */
async function keepForReadme(folder: string): Promise<void> {
  const kept = join(ROOT, 'docs/screenshots');
  mkdirSync(kept, { recursive: true });
  for (const [pictures, size] of [[README, '1280x800'], [LARGE, '1920x1080']] as const) for (const [screen, name] of Object.entries(pictures)) {
    await sharp(join(folder, 'typical', `${screen}-light-${size}.png`)).png({ palette: true, compressionLevel: 9 }).toFile(join(kept, `${name}.png`));
  }
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
  const browser = await launchBrowser();
  try {
    let taken = 0;
    for (const library of LIBRARIES) taken += await takeLibrary(browser, library, folder, scratch);
    process.stdout.write(`${taken} pictures in ${folder}\n`);
    await keepForReadme(folder);
  } finally {
    await browser.close();
    rmSync(scratch, { recursive: true, force: true, maxRetries: 5 });
  }
}
