import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { Channel } from '../../shared/channel-names.ts';
import type { Input, Output } from '../../shared/channels.ts';
import { callFrom } from '../e2e/library-steps.ts';
import { launchBrowser, libraryIn, startLoopback } from '../e2e/loopback-host.ts';
import { frameWords } from './frames.ts';
import { eighteenFullFacets } from './sheets.ts';

/**
 * How soon the verdicts follow a key stroke in a real browser at 1280 x 800: eighteen cylinders, 24 plugs read in every facet, one facet of one plug after
 * another changed, every time to a sheet that was not seen before. From the event of the key stroke to the verdicts of its sheet in the page, to the frame
 * that shows them, and to the answer with its findings, which are asked for after a pause. Nothing fails here; a benchmark informs, tests decide.
 */
const ROUNDS = 2;
const PLUGS = eighteenFullFacets.plugs.length;
/** Time from key stroke to key stroke of somebody who works down a row of plugs, ms. */
const PACE = 250;

/** One change, in ms after its key stroke; `asked`: how long the host took to answer what the page asked of it. */
type Stroke = { readonly at: number; decided?: number; shown?: number; asked?: number; explained?: number };
declare global {
  interface Window { strokes: Stroke[] }
}

/** Notes what follows each key stroke that changes an answer. */
const watchStrokes = (page: Page): Promise<void> => page.evaluate(() => {
  window.strokes = [];
  const tray = document.querySelector('[role=listbox]') as Element;
  addEventListener('keydown', ({ key, timeStamp }) => { if (key.length === 1 && key !== ']') window.strokes.push({ at: timeStamp }); }, true);
  new MutationObserver(() => {
    const followed = tray.getAttribute('aria-busy') === 'true' ? [] : window.strokes.filter(({ decided }) => decided === undefined);
    for (const stroke of followed) stroke.decided = performance.now() - stroke.at;
    requestAnimationFrame(() => { setTimeout(() => { for (const stroke of followed) stroke.shown = performance.now() - stroke.at; }); });
  }).observe(tray, { attributeFilter: ['aria-busy'] });
  new PerformanceObserver((list) => {
    for (const { name, startTime, duration } of list.getEntries()) {
      const stroke = window.strokes.findLast(({ at }) => at <= startTime);
      if (stroke !== undefined && name.endsWith('/call/first-look')) stroke.asked = duration;
      if (stroke !== undefined && name.endsWith('/call/diagnose')) stroke.explained = startTime + duration - stroke.at;
    }
  }).observe({ type: 'resource' });
});

/** On the next plug changes the answer to one question, the first being the colour of the nose, to one that the plug did not have. */
async function changeNext(page: Page, question: number): Promise<void> {
  await page.keyboard.press(']');
  await page.keyboard.press('Home');
  for (let down = 0; down < question; down += 1) await page.keyboard.press('ArrowDown');
  const key = await page.getByRole('radiogroup').getByRole('radio', { checked: false }).first().getAttribute('aria-keyshortcuts');
  if (key === null) throw new Error('no key stands on the value');
  await page.keyboard.press(key);
}

const quiet = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => window.strokes.at(-1)?.shown !== undefined && window.strokes.at(-1)?.explained !== undefined);

/** Changes every plug once a round, each round at another question. */
async function changeAll(page: Page, from: number, between: () => Promise<unknown>): Promise<readonly Stroke[]> {
  for (let change = 0; change < ROUNDS * PLUGS; change += 1) {
    await changeNext(page, from + Math.floor(change / PLUGS));
    await between();
  }
  await quiet(page);
  return page.evaluate(() => window.strokes.splice(0));
}

function told(name: string, strokes: readonly Stroke[], of: 'decided' | 'shown' | 'asked' | 'explained'): void {
  const times = strokes.flatMap((stroke) => stroke[of] ?? []);
  process.stdout.write(`${name}: ${times.length} of ${strokes.length} changes, ${frameWords(times)}\n`);
}

async function valueFrom<C extends Channel>(page: Page, channel: C, input: Input<C>): Promise<Output<C>> {
  const reply = await callFrom(page, channel, input);
  if (!reply.ok) throw new Error(JSON.stringify(reply.error));
  return reply.value;
}

const scratch = mkdtempSync(join(tmpdir(), 'corenose-typing-'));
const program = await startLoopback(['--library', libraryIn(scratch, 'typing')]);
const browser = await launchBrowser();
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(program.address);
  await page.waitForURL((url) => url.pathname === '/');
  const { readingId: id } = await valueFrom(page, 'reading.import', { text: JSON.stringify(eighteenFullFacets) });
  await valueFrom(page, 'reading.reopen', { id });
  await page.evaluate((hash) => { location.hash = hash; }, `#/reading/${id}/plugs`);
  await page.getByRole('option', { name: /^Cylinder 1\b.*normal/ }).focus();
  await page.keyboard.press('Enter');
  await watchStrokes(page);
  const alone = await changeAll(page, 1, () => quiet(page));
  told('each change alone: verdicts in the page', alone, 'decided');
  told('each change alone: verdicts in a frame', alone, 'shown');
  told('each change alone: answer of the host to the page', alone, 'asked');
  told('each change alone: answer with the findings, its pause before it', alone, 'explained');
  const paced = await changeAll(page, 1 + ROUNDS, () => page.waitForTimeout(PACE));
  told(`a change each ${PACE} ms or more: verdicts in the page`, paced, 'decided');
  told(`a change each ${PACE} ms or more: verdicts in a frame`, paced, 'shown');
} finally {
  await browser.close();
  await program.stop();
  rmSync(scratch, { recursive: true, force: true });
}
