import type { Kysely } from 'kysely';
import type { AppError, Handlers, Input, Output } from '../../../shared/channels.ts';
import type { ShopLine, ShopLines } from '../../../shared/formats/shop-lines.v1.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { parseShopLinesText, problemsOfLines } from '../shop-lines-text.ts';
import { findShopLine, listShopLines, putShopLine, setShopLineRemoved } from '../storage/shop-lines.ts';
import type { Tables } from '../storage/tables.ts';
import { notFound, reads, writes, type Given } from './given.ts';

type Group = Pick<Handlers, 'shop.list' | 'shop.save' | 'shop.remove' | 'shop.restore' | 'shop.import' | 'shop.export'>;
type Db = Kysely<Tables>;

/** The lines of this workshop: in, out, on, off. What breaks a rule of the knowledge is refused, with the field and the reason. */
export function shopHandlers(given: Given): Group {
  const now = (): string => given.clock().toISOString();
  return {
    'shop.list': reads(given, async (db) => ok(await listShopLines(db))),
    'shop.save': writes(given, (db, line) => save(given, db, line)),
    'shop.remove': writes(given, async (db, { id }) => ((await setShopLineRemoved(db, id, now())) ? ok(null) : notFound('line'))),
    'shop.restore': writes(given, async (db, { id }) => {
      const line = (await setShopLineRemoved(db, id, null)) ? await findShopLine(db, id) : undefined;
      return line === undefined ? notFound('line') : ok(line);
    }),
    'shop.import': writes(given, (db, { text }) => importLines(given, db, text)),
    'shop.export': reads(given, async (db) => {
      const file: ShopLines = { format: 'corenose.shop-lines', version: 1, lines: await listShopLines(db) };
      return ok({ fileName: 'own-lines.shop.json', text: `${JSON.stringify(file, null, 2)}\n` });
    }),
  };
}

async function save({ clock, newId, knowledge }: Given, db: Db, { id, ...said }: Input<'shop.save'>): Promise<Result<ShopLine, AppError>> {
  const others = (await listShopLines(db)).filter((line) => line.id !== id);
  if (id !== null && (await findShopLine(db, id)) === undefined) return notFound('line');
  const line: ShopLine = { id: id ?? newId(), ...said };
  const problems = problemsOfLines([line], knowledge, others).map(({ path, message }) => ({ path: path.replace('lines.0.', ''), message }));
  if (problems.length > 0) return err({ code: 'bad-request', problems });
  await putShopLine(db, line, clock().toISOString());
  return ok(line);
}

async function importLines({ clock, knowledge }: Given, db: Db, text: string): Promise<Result<Output<'shop.import'>, AppError>> {
  const lines = parseShopLinesText(text, knowledge);
  if (!lines.ok) return err({ code: 'bad-request', problems: lines.error });
  const here = await listShopLines(db);
  const isHere = ({ id, says }: ShopLine): boolean => here.some((line) => line.id === id || JSON.stringify(line.says) === JSON.stringify(says));
  const fresh = lines.value.filter((line) => !isHere(line));
  const problems = problemsOfLines(fresh, knowledge, here);
  if (problems.length > 0) return err({ code: 'bad-request', problems });
  const at = clock().toISOString();
  await db.transaction().execute(async (whole) => { for (const line of fresh) await putShopLine(whole, line, at); });
  return ok({ added: fresh.length, known: lines.value.length - fresh.length });
}
