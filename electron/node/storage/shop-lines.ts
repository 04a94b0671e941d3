import type { Kysely } from 'kysely';
import type { ShopLine } from '../../../shared/formats/shop-lines.v1.ts';
import type { Tables } from './tables.ts';

const lineOf = (row: { readonly json: string }): ShopLine => JSON.parse(row.json) as ShopLine;

/** The lines of this workshop that are not removed, in the order in which they were added. */
export async function listShopLines(db: Kysely<Tables>): Promise<ShopLine[]> {
  const rows = await db.selectFrom('shop_line').selectAll().where('removed_at', 'is', null).orderBy('created_at').orderBy('id').execute();
  return rows.map(lineOf);
}

/** The line with this id, unless it is unknown or removed. */
export async function findShopLine(db: Kysely<Tables>, id: string): Promise<ShopLine | undefined> {
  const row = await db.selectFrom('shop_line').selectAll().where('id', '=', id).where('removed_at', 'is', null).executeTakeFirst();
  return row && lineOf(row);
}

/** Adds a line, or puts it in the place of the one with its id, also of one that was removed. */
export async function putShopLine(db: Kysely<Tables>, line: ShopLine, at: string): Promise<void> {
  const row = { id: line.id, json: JSON.stringify(line), created_at: at, changed_at: at, removed_at: null };
  await db.insertInto('shop_line').values(row)
    .onConflict((on) => on.column('id').doUpdateSet({ json: row.json, changed_at: at, removed_at: null })).execute();
}

/** Hides a line, or shows it again with `null`. @returns whether there was such a line. */
export async function setShopLineRemoved(db: Kysely<Tables>, id: string, removedAt: string | null): Promise<boolean> {
  const { numUpdatedRows } = await db.updateTable('shop_line').set({ removed_at: removedAt }).where('id', '=', id).executeTakeFirst();
  return numUpdatedRows > 0n;
}
