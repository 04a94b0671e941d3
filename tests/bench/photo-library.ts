import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openLibrary } from '../../electron/node/storage/library.ts';
import { countPhotos, pageOfCards } from '../../electron/node/storage/photos.ts';
import type { Tables } from '../../electron/node/storage/tables.ts';
import { fourCylinder } from '../fixtures/plain-sheets.ts';
import type { Kysely } from 'kysely';

/**
 * How much of the processor's time the host takes to open a library of 20,000 photos and to give its pages, wherever in it they lie. `--keep DIR` leaves
 * the library there, to be looked at with `npm start -- --library DIR`; its originals are not there, only what is known of them.
 */
const [PHOTOS, READINGS, PAGE] = [20_000, 500, 100];

const idOf = (n: number): string => `00000000-0000-4000-8000-${String(n).padStart(12, '0')}`;
const at = (n: number): string => new Date(Date.UTC(2016, 0, 1) + n * 4.6e6).toISOString();

async function fill(db: Kysely<Tables>): Promise<void> {
  await db.transaction().execute(async (step) => {
    for (let r = 0; r < READINGS; r += 1) {
      const [engine, reading] = [idOf(r), idOf(100_000 + r)];
      const json = JSON.stringify({ ...fourCylinder, name: `Engine ${r}` });
      await step.insertInto('engine').values({ id: engine, json, created_at: at(r), changed_at: at(r), removed_at: null }).execute();
      const sheet = JSON.stringify({ format: 'corenose.reading-sheet', version: 1, engine: fourCylinder, plugs: [{ cylinder: 1 }] });
      await step.insertInto('reading').values({
        id: reading, engine_id: engine, state: 'kept', revision: 1, dated: at(r).slice(0, 10), sheet, pending: '{}', findings: null,
        created_at: at(r), changed_at: at(r), removed_at: null,
      }).execute();
    }
    for (let n = 0; n < PHOTOS; n += 1) {
      const sha256 = createHash('sha256').update(String(n)).digest('hex');
      const about = { bytes: 3_100_000, format: 'jpeg', width: 4032, height: 3024, colour: 'yes' as const, taken_at: at(n).slice(0, 19), camera: null, problem: null };
      await step.insertInto('photo_file').values({ sha256, ...about }).execute();
      await step.insertInto('photo').values({
        id: idOf(200_000 + n), engine_id: idOf(n % READINGS), reading_id: idOf(100_000 + (n % READINGS)), sha256, name: `IMG_${n}.jpg`, shown_at: at(n),
        cylinder: 1 + (n % 4), position: 'only', view: 'end-on', place_order: 0, white: null, geometry: null, measure: 'x'.repeat(3000), annotations: '[]',
        added_at: at(n), removed_at: null,
      }).execute();
    }
  });
}

async function timed<T>(what: () => Promise<T> | T): Promise<{ readonly ms: number; readonly value: T }> {
  const begun = process.cpuUsage();
  const value = await what();
  const { user, system } = process.cpuUsage(begun);
  return { ms: (user + system) / 1000, value };
}

const keep = process.argv.indexOf('--keep');
const kept = keep === -1 ? undefined : process.argv[keep + 1];
const folder = kept ?? mkdtempSync(join(tmpdir(), 'corenose-library-'));
const open = () => openLibrary({ folder, kind: 'own', now: new Date('2026-03-20T09:00:00Z') });

const first = await open();
if (first.db === null) throw new Error('the library did not open');
await fill(first.db);
first.close();
const again = await timed(open);
const { db } = again.value;
if (db === null) throw new Error('the library did not open again');
const count = await timed(() => countPhotos(db, {}));
const pages: number[] = [];
for (let offset = 0; offset < PHOTOS; offset += 10 * PAGE) pages.push((await timed(() => pageOfCards(db, {}, { offset, limit: PAGE }))).ms);
const found = await timed(() => pageOfCards(db, { find: 'Engine 499' }, { offset: 0, limit: PAGE }));
again.value.close();
if (kept === undefined) rmSync(folder, { recursive: true });
pages.sort((one, other) => one - other);
process.stdout.write(`${count.value} photos: opened and checked in ${again.ms.toFixed(0)} ms, counted in ${count.ms.toFixed(1)} ms, a page of ${PAGE} in `
  + `${(pages[Math.floor(pages.length / 2)] ?? NaN).toFixed(1)} ms (at most ${(pages.at(-1) ?? NaN).toFixed(1)} ms), found by name in ${found.ms.toFixed(1)} ms of the processor's time\n`);
