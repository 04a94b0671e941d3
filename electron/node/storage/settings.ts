import type { Kysely } from 'kysely';
import { DEFAULT_SETTINGS, settings, type Settings } from '../../../shared/channels.ts';
import type { Tables } from './tables.ts';

/** The settings that were saved. One that is missing, or that this version does not know, is at its default. */
export async function readSettings(db: Kysely<Tables>): Promise<Settings> {
  const rows = await db.selectFrom('setting').selectAll().execute();
  const saved = Object.fromEntries(rows.filter(({ name }) => name in DEFAULT_SETTINGS).map(({ name, json }) => [name, JSON.parse(json) as unknown]));
  const parsed = settings.safeParse({ ...DEFAULT_SETTINGS, ...saved });
  return parsed.success ? parsed.data : DEFAULT_SETTINGS;
}

export async function writeSettings(db: Kysely<Tables>, values: Settings): Promise<void> {
  const rows = Object.entries(values).map(([name, value]) => ({ name, json: JSON.stringify(value) }));
  await db.insertInto('setting').values(rows).onConflict((on) => on.column('name').doUpdateSet((e) => ({ json: e.ref('excluded.json') }))).execute();
}
