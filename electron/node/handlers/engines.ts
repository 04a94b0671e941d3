import type { Kysely } from 'kysely';
import type { AppError, EngineRecord, Handlers } from '../../../shared/channels.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { ok, type Result } from '../../../shared/result.ts';
import { onEngine } from '../draft.ts';
import { addEngine, changeEngine, findEngine, listEngines, setEngineRemoved } from '../storage/engines.ts';
import { listReadings } from '../storage/readings.ts';
import type { Tables } from '../storage/tables.ts';
import { conflict, notFound, reads, writes, type Given } from './given.ts';

type Group = Pick<Handlers, 'engine.list' | 'engine.save' | 'engine.remove' | 'engine.restore'>;

async function found(db: Kysely<Tables>, id: string): Promise<Result<EngineRecord, AppError>> {
  const record = await findEngine(db, id);
  return record === undefined ? notFound('engine') : ok(record);
}

/** Words about an open draft that holds something the changed engine has no place for; undefined when there is none. */
async function draftInTheWay(db: Kysely<Tables>, engineId: string, engine: Engine): Promise<string | undefined> {
  const drafts = (await listReadings(db, engineId)).filter(({ state }) => state === 'draft');
  for (const draft of drafts) {
    const fits = onEngine(JSON.parse(draft.sheet) as ReadingSheet, engine);
    const first = fits.ok ? undefined : fits.error[0];
    if (first !== undefined) return `The open draft holds entries that the changed engine has no place for (${first.path}: ${first.message}). Keep or remove that draft first.`;
  }
  return undefined;
}

export function engineHandlers(given: Given): Group {
  const now = (): string => given.clock().toISOString();
  return {
    'engine.list': reads(given, async (db) => ok(await listEngines(db))),
    'engine.save': writes(given, async (db, { id, engine }) => {
      if (id === null) {
        const fresh = given.newId();
        await addEngine(db, fresh, engine, now());
        return found(db, fresh);
      }
      if ((await findEngine(db, id)) === undefined) return notFound('engine');
      const inTheWay = await draftInTheWay(db, id, engine);
      if (inTheWay !== undefined) return conflict(inTheWay);
      await changeEngine(db, id, engine, now());
      return found(db, id);
    }),
    'engine.remove': writes(given, async (db, { id }) => ((await setEngineRemoved(db, id, now())) ? ok(null) : notFound('engine'))),
    'engine.restore': writes(given, async (db, { id }) => ((await setEngineRemoved(db, id, null)) ? found(db, id) : notFound('engine'))),
  };
}
