import type { Kysely } from 'kysely';
import type { DraftOf, KeptEngineDraft } from '../../../shared/channels-engine-draft.ts';
import type { Tables } from './tables.ts';

const PREFIX = 'engine draft ';

/** Engines that are being written down, by the engine they will change or 'new'. They lie beside the settings, one row each. */
export async function listEngineDrafts(db: Kysely<Tables>): Promise<Record<DraftOf, KeptEngineDraft>> {
  const rows = await db.selectFrom('setting').selectAll().where('name', 'like', `${PREFIX}%`).orderBy('name').execute();
  return Object.fromEntries(rows.map(({ name, json }) => [name.slice(PREFIX.length), JSON.parse(json) as KeptEngineDraft]));
}

/** Keeps a draft in place of the one before; null lets it go. */
export async function keepEngineDraft(db: Kysely<Tables>, of: DraftOf, draft: KeptEngineDraft | null): Promise<void> {
  const name = `${PREFIX}${of}`;
  if (draft === null) {
    await db.deleteFrom('setting').where('name', '=', name).execute();
    return;
  }
  await db.insertInto('setting').values({ name, json: JSON.stringify(draft) })
    .onConflict((on) => on.column('name').doUpdateSet((e) => ({ json: e.ref('excluded.json') }))).execute();
}
