import { createHash } from 'node:crypto';
import { diagnose, type Given } from '../../core/inference/diagnose.ts';
import { firstLook } from '../../core/inference/first-look.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { SCALES } from '../../core/knowledge/scales.ts';
import type { Knowledge } from '../../core/knowledge/types.ts';
import { withShopLines } from '../../core/shop-lines/with-shop-lines.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { FirstLook } from '../../shared/formats/first-look.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { ShopLine } from '../../shared/formats/shop-lines.v1.ts';

/** Of the lines and of what their words stand for. */
const digestOf = (knowledge: Knowledge): string => createHash('sha256').update(JSON.stringify({ knowledge, scales: SCALES })).digest('hex');

export const KNOWLEDGE_VERSION = KNOWLEDGE.version;
const OWN: Given = { knowledge: KNOWLEDGE, digest: digestOf(KNOWLEDGE) };

let last: { readonly key: string; readonly given: Given } = { key: '[]', given: OWN };

/** Worked out once for the same lines: what the solver remembers hangs on the very knowledge it was given. */
function givenWith(lines: readonly ShopLine[]): Given {
  const key = JSON.stringify(lines);
  if (key !== last.key) {
    const { knowledge, active } = withShopLines(KNOWLEDGE, lines);
    last = { key, given: active.length === 0 ? OWN : { knowledge, digest: digestOf(knowledge), shop: { lines: active, without: KNOWLEDGE } } };
  }
  return last.given;
}

/** The findings for a sheet, from the knowledge this program carries and the lines of a workshop that can be taken. The same in every host. */
export const diagnoseSheet = (sheet: ReadingSheet, lines: readonly ShopLine[] = []): Findings => diagnose(sheet, givenWith(lines));

/** What is decided of a sheet, by the same knowledge and lines, long before it is explained. */
export const firstLookAt = (sheet: ReadingSheet, lines: readonly ShopLine[] = []): FirstLook => firstLook(sheet, givenWith(lines));
