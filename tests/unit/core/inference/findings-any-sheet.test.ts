import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { findings as findingsFormat } from '../../../../shared/formats/findings.v1.ts';
import { parseReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { anySheet } from './any-sheet.ts';

describe('findings', () => {
  it('are made only of sheets that the strict format takes', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        expect(parseReadingSheet(sheet)).toMatchObject({ ok: true });
      }),
      { numRuns: 2000 },
    );
  });

  it('follow their format and are the same bytes every time', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        const first = diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'digest' });
        expect(findingsFormat.safeParse(first).error).toBeUndefined();
        expect(JSON.stringify(diagnose(sheet, { knowledge: KNOWLEDGE, digest: 'digest' }))).toBe(JSON.stringify(first));
      }),
      { numRuns: 60 },
    );
  }, 600_000);
});
