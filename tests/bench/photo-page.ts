import { createHash, randomUUID } from 'node:crypto';
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { originalPath } from '../../electron/node/photo-store/originals.ts';
import { addEngine } from '../../electron/node/storage/engines.ts';
import { openLibrary } from '../../electron/node/storage/library.ts';
import { placesIn } from '../../electron/node/storage/place.ts';
import { ROOT } from '../../electron/start/targets.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import { launchBrowser, libraryIn, startLoopback } from '../e2e/loopback-host.ts';
import { frameWords, watchFrames } from './frames.ts';

/**
 * How fluid the photos are in a real browser at 1280 x 800: the library of 20,000 photos is opened and scrolled for five seconds, and twelve phone photos of
 * 12 megapixels are brought in while a photo can be looked at. Frames are told from one to the next, tasks of the page by the browser's own trace.
 * The 20,000 lie in 1000 readings and share twenty pictures, so that making them does not take hours. Nothing fails here; a benchmark informs, tests decide.
 */
const [ENGINES, READINGS] = [40, 25];
const [SECONDS, MANY, WIDTH, HEIGHT] = [5, 12, 4032, 3024];
const AT = '2026-03-20T09:00:00.000Z';

const drawn = ['marlisse-1300', 'tarnelle-350'].flatMap((engine) => {
  const folder = join(ROOT, 'seeds', engine, 'photos');
  return readdirSync(folder).map((name) => join(folder, name));
}).slice(0, 20);

/** The library of a busy workshop: every reading with the same twenty pictures. */
async function fill(folder: string): Promise<number> {
  const { db, close } = await openLibrary({ folder, kind: 'own', now: new Date(AT) });
  if (db === null) throw new Error('the library did not open');
  const files = await Promise.all(drawn.map(async (path) => {
    const bytes = readFileSync(path);
    const { width, height } = await sharp(bytes).metadata();
    return { sha256: createHash('sha256').update(bytes).digest('hex'), bytes: bytes.length, format: 'jpeg', width, height, colour: 'yes' as const, taken_at: null, camera: null, problem: null };
  }));
  for (const [i, file] of files.entries()) {
    const to = originalPath(placesIn(folder).photos, file);
    mkdirSync(dirname(to), { recursive: true });
    copyFileSync(drawn[i]!, to);
  }
  await db.insertInto('photo_file').values(files).execute();
  for (let e = 0; e < ENGINES; e += 1) {
    const engine: Engine = { name: `Bench engine ${e + 1}`, use: 'road', cylinders: 4 };
    const engineId = randomUUID();
    await addEngine(db, engineId, engine, AT);
    const sheet = JSON.stringify({ format: 'corenose.reading-sheet', version: 1, engine, plugs: [{ cylinder: 1 }] });
    for (let r = 0; r < READINGS; r += 1) {
      const readingId = randomUUID();
      await db.insertInto('reading').values({
        id: readingId, engine_id: engineId, state: 'draft', revision: 1, dated: null, sheet, pending: '{}', findings: null, created_at: AT, changed_at: AT, removed_at: null,
      }).execute();
      await db.insertInto('photo').values(files.map(({ sha256 }, i) => ({
        id: randomUUID(), engine_id: engineId, reading_id: readingId, sha256, name: `IMG_${e}${r}${i}.jpg`, shown_at: new Date(Date.parse(AT) + 60_000 * (e * READINGS + r)).toISOString(),
        cylinder: 1 + (i % 4), position: 'only', view: 'end-on' as const, place_order: i, white: null, geometry: null, measure: null, annotations: '[]', added_at: AT, removed_at: null,
      }))).execute();
    }
  }
  close();
  return ENGINES * READINGS * files.length;
}

type TraceEvent = {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
};

/** Frames and tasks of the page while `act` runs. Tasks are told in time on the clock and in time of the processor, which other programs do not lengthen. */
async function watched(name: string, page: Page, act: () => Promise<void>): Promise<void> {
  const gaps = await watchFrames(page);
  const browser = page.context().browser();
  await browser?.startTracing(page, { categories: ['toplevel', '__metadata'] });
  const begun = Date.now();
  await act();
  const took = Date.now() - begun;
  const { traceEvents } = JSON.parse(String(await browser?.stopTracing())) as { traceEvents: readonly TraceEvent[] };
  told(`${name} (${took} ms)`, await gaps(), tasksIn(traceEvents));
}

/** The tasks of the page's own thread, ms. */
function tasksIn(events: readonly TraceEvent[]): readonly { readonly clock: number; readonly processor: number }[] {
  const mains = events.filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain').map(({ pid, tid }) => `${pid} ${tid}`);
  return events.filter(({ name, pid, tid }) => name.endsWith('RunTask') && mains.includes(`${pid} ${tid}`))
    .map(({ dur = 0, tdur = 0 }) => ({ clock: dur / 1000, processor: tdur / 1000 }));
}

function told(name: string, gaps: readonly number[], tasks: ReturnType<typeof tasksIn>): void {
  const rate = (1000 * gaps.length) / gaps.reduce((sum, gap) => sum + gap, 0);
  const longest = (of: (task: (typeof tasks)[number]) => number): string => Math.max(0, ...tasks.map(of)).toFixed(0);
  process.stdout.write(`${name}: ${rate.toFixed(1)} frames a second, ${frameWords(gaps)}; `
    + `longest of ${tasks.length} tasks ${longest(({ processor }) => processor)} ms of the processor, ${longest(({ clock }) => clock)} ms on the clock\n`);
}

async function phonePhotos(folder: string): Promise<readonly string[]> {
  return Promise.all(Array.from({ length: MANY }, async (_, i) => {
    const file = join(folder, `IMG_${2000 + i}.jpg`);
    const grain = { create: { width: WIDTH, height: HEIGHT, channels: 3 as const, background: '#808080', noise: { type: 'gaussian' as const, mean: 128, sigma: 12 } } };
    const picture = sharp(drawn[i]).resize(WIDTH, HEIGHT).composite([{ input: await sharp(grain).png().toBuffer(), blend: 'overlay' }]);
    writeFileSync(file, await picture.jpeg({ quality: 90 }).toBuffer());
    return file;
  }));
}

async function scroll(page: Page): Promise<void> {
  const from = Date.now();
  await page.mouse.move(640, 500);
  while (Date.now() - from < 1000 * SECONDS) {
    await page.mouse.wheel(0, 120);
    await page.waitForTimeout(16);
  }
}

const scratch = mkdtempSync(join(tmpdir(), 'corenose-photo-page-'));
const folder = libraryIn(scratch, 'photos');
const count = await fill(folder);
const phone = await phonePhotos(scratch);
const program = await startLoopback(['--library', folder]);
const browser = await launchBrowser();
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(program.address);
  await page.getByRole('link', { name: 'Photos', exact: true }).waitFor();
  await page.waitForTimeout(500);
  await watched(`opening the library of ${count} photos`, page, async () => {
    await page.getByRole('link', { name: 'Photos', exact: true }).click();
    await page.getByText(`${count} photos`).waitFor();
    await page.locator('[data-index="0"] img').waitFor();
  });
  await page.waitForTimeout(1500);
  await watched(`scrolling it for ${SECONDS} s`, page, () => scroll(page));
  await page.goto(`${new URL(program.address).origin}/#/`);
  await page.getByRole('button', { name: /^(Start|Go on)/ }).first().click();
  await page.getByRole('link', { name: /^Photos/ }).last().click();
  await page.getByRole('button', { name: 'Add photos' }).waitFor();
  await page.waitForTimeout(1000);
  const before = await page.locator('[data-photo]').count();
  await watched(`bringing in and measuring ${MANY} photos of 12 megapixels`, page, async () => {
    await page.getByLabel('Add photos').last().setInputFiles([...phone]);
    const all = (wanted: number): boolean => document.querySelectorAll('[data-photo]').length === wanted && document.querySelector('progress') === null;
    await page.waitForFunction(all, before + MANY, { timeout: 120_000 });
  });
} finally {
  await browser.close();
  await program.stop();
  rmSync(scratch, { recursive: true, force: true });
}
