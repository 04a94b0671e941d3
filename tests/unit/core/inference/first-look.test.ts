import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diagnose, type Given } from '../../../../core/inference/diagnose.ts';
import { firstLook } from '../../../../core/inference/first-look.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { withShopLines } from '../../../../core/shop-lines/with-shop-lines.ts';
import { SEEDS } from '../../../../seeds/index.ts';
import { firstLook as firstLookFormat, type FirstLook } from '../../../../shared/formats/first-look.ts';
import type { Findings } from '../../../../shared/formats/findings.v1.ts';
import { parseReadingSheet, type ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { anyLines } from '../shop-lines/any-lines.ts';
import { anySheet } from './any-sheet.ts';

const own: Given = { knowledge: KNOWLEDGE, digest: 'test' };

const decidedIn = ({ plugs, stop }: Findings): FirstLook => ({
  plugs: plugs.map(({ causes: _causes, nextChecks: _nextChecks, doubts: _doubts, ...decided }) => decided), stop,
});
const agree = (sheet: ReadingSheet, given: Given): void => expect(firstLook(sheet, given)).toEqual(decidedIn(diagnose(sheet, given)));

describe('a first look', () => {
  it('follows its format and decides what the findings of the same sheet decide, whatever the sheet', () => {
    fc.assert(fc.property(anySheet, (sheet) => {
      expect(firstLookFormat.safeParse(firstLook(sheet, own)).error).toBeUndefined();
      agree(sheet, own);
    }), { numRuns: 60 });
  }, 600_000);

  it('decides what the findings decide where lines of a workshop take part', () => {
    fc.assert(fc.property(anySheet, anyLines(4), (sheet, lines) => {
      const { knowledge, active } = withShopLines(KNOWLEDGE, lines);
      agree(sheet, { knowledge, digest: 'theirs', shop: { lines: active, without: KNOWLEDGE } });
    }), { numRuns: 25 });
  }, 600_000);

  const demo = SEEDS.flatMap(({ name, sheets }) => sheets.map((raw, i): readonly [string, unknown] => [`${name}, reading ${i + 1}`, raw]));
  it.each(demo)('decides what the findings decide of the demo’s %s', (_, raw) => {
    const sheet = parseReadingSheet(raw);
    if (!sheet.ok) throw new Error('the demo’s sheet does not parse');
    agree(sheet.value, own);
  }, 60_000);
});
