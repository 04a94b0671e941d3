import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anySheet } from './any-sheet.ts';
import { guarded } from './guarded.ts';

const RUNS = 10_000;

describe('what the program must never do', () => {
  it('is not done on any sheet that the format takes', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        expect(guarded(sheet).breaches).toEqual([]);
      }),
      { numRuns: RUNS },
    );
    console.log(`guards: ${RUNS} random sheets`);
  }, 2_400_000);
});
