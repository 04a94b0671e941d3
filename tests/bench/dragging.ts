import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { launchBrowser, libraryIn, startLoopback } from '../e2e/loopback-host.ts';
import { frameWords, watchFrames } from './frames.ts';

/**
 * How fluid the heat page is in a real browser at 1280 x 800: the time from frame to frame while a slider is dragged for three seconds, and while a
 * drive of four hours is computed beside the page. Nothing fails here; a benchmark informs, tests decide.
 */
const SECONDS = 3;

const told = (name: string, gaps: readonly number[]): unknown => process.stdout.write(`${name}: ${gaps.length} frames, ${frameWords(gaps)}\n`);

async function drag(page: Page, slider: string): Promise<void> {
  const thumb = page.getByRole('slider', { name: slider, exact: true });
  const box = await thumb.boundingBox();
  if (box === null) throw new Error(`no slider ${slider}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const from = Date.now();
  for (let i = 0; Date.now() - from < 1000 * SECONDS; i += 1) {
    await page.mouse.move(x - 100 + 100 * Math.cos(i / 12), y);
    await page.waitForTimeout(8);
  }
  await page.mouse.up();
}

/** A log of four hours, a sample a second, no two alike. */
const LOG = ['time,speed,load,lambda', ...Array.from({ length: 14_000 }, (_, i) =>
  [i, 1500 + Math.round(900 * Math.sin(i / 37)), (55 + 25 * Math.sin(i / 91)).toFixed(1), (0.95 + 0.07 * Math.sin(i / 53)).toFixed(3)].join(','))].join('\n');

const scratch = mkdtempSync(join(tmpdir(), 'corenose-dragging-'));
const program = await startLoopback(['--demo', '--library', libraryIn(scratch, 'dragging')]);
const browser = await launchBrowser();
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(program.address);
  await page.getByRole('link', { name: /Halvorn/ }).first().click();
  await page.getByRole('link', { name: 'Heat and spark' }).click();
  await page.getByRole('link', { name: 'What if' }).click();
  const read = await watchFrames(page);
  for (const slider of ['Load', 'Speed', 'Lambda', 'Gap']) {
    await page.waitForTimeout(500);
    await read();
    await drag(page, slider);
    told(`dragging ${slider} for ${SECONDS} s`, await read());
  }
  await page.getByRole('link', { name: 'A drive from cold' }).click();
  await page.waitForTimeout(1000);
  await read();
  const from = Date.now();
  await page.getByLabel('Import a log (CSV)').setInputFiles({ name: 'four-hours.csv', mimeType: 'text/csv', buffer: Buffer.from(LOG) });
  await page.getByText(/four-hours\.csv: 4 h/).waitFor();
  await page.getByRole('table', { name: 'A drive from cold' }).waitFor();
  await page.getByText('Computing …').waitFor({ state: 'hidden' });
  told(`while a drive of four hours was computed (${Date.now() - from} ms)`, await read());
} finally {
  await browser.close();
  await program.stop();
}
