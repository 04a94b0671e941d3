import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { ShopLine } from '../../shared/formats/shop-lines.v1.ts';
import type { Knowledge } from '../knowledge/types.ts';
import { guardedHeat } from '../shop-lines/guards.ts';
import { conclude, type Conclusion } from './conclude.ts';

/** Lines of a workshop that are in the knowledge, and the knowledge without them, which keeps the guards. */
export type Shop = { readonly lines: readonly ShopLine[]; readonly without: Knowledge };

/** `guard`: what follows without the lines of the workshop, where there are any. */
export type Guarded = Conclusion & { readonly guard?: Conclusion };

/** Concludes with the lines of a workshop and without them, and lets the heat step be no hotter than the program's own knowledge allows. */
export function concludeWith(sheet: ReadingSheet, knowledge: Knowledge, shop: Shop | undefined): Guarded {
  const conclusion = conclude(sheet, knowledge);
  if (shop === undefined) return conclusion;
  const guard = conclude(sheet, shop.without);
  return { ...conclusion, heat: guardedHeat(conclusion.heat, guard.heat), guard };
}
