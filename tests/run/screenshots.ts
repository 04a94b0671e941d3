import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser } from 'playwright-core';
import sharp from 'sharp';
import { buildAll, ROOT } from '../../electron/start/targets.ts';
import { launchBrowser, startLoopback } from '../e2e/loopback-host.ts';
import { SIZES, THEMES, visitScreens } from '../e2e/screens.ts';
import { chromium } from './chromium.ts';

/*
 * Every screen of the demo library as pictures, in both themes and two sizes, for looking at and for the README.
 * npm run screenshots [-- FOLDER]; the folder is dist/screenshots when none is named. Those of the README go to docs/screenshots.
 */
async function take(browser: Browser, address: string, folder: string): Promise<number> {
  let taken = 0;
  for (const viewport of SIZES) for (const colorScheme of THEMES) {
    const context = await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' });
    const page = await context.newPage();
    await visitScreens(page, address, async (name) => {
      await page.screenshot({ path: join(folder, `${name}-${colorScheme}-${viewport.width}x${viewport.height}.png`) });
      taken += 1;
    });
    await context.close();
  }
  return taken;
}

/** The pictures of the README, by the screen they show. */
const README: Readonly<Record<string, string>> = {
  'marlisse-plugs': 'plugs', 'marlisse-findings': 'findings', 'marlisse-run': 'run', 'marlisse-cylinders': 'cylinders', shelf: 'shelf', 'halvorn-findings': 'stop',
};

/** Keeps the README's pictures small: a palette of 256 colours, which flat screens do not notice. */
async function keepForReadme(folder: string): Promise<void> {
  const kept = join(ROOT, 'docs/screenshots');
  mkdirSync(kept, { recursive: true });
  for (const [screen, name] of Object.entries(README)) {
    await sharp(join(folder, `${screen}-light-1280x800.png`)).png({ palette: true, compressionLevel: 9 }).toFile(join(kept, `${name}.png`));
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
  const host = await startLoopback(['--demo', '--library', join(scratch, 'library')]);
  const browser = await launchBrowser();
  try {
    process.stdout.write(`${await take(browser, host.address, folder)} pictures in ${folder}\n`);
    await keepForReadme(folder);
  } finally {
    await browser.close();
    await host.stop();
    rmSync(scratch, { recursive: true, force: true, maxRetries: 5 });
  }
}
