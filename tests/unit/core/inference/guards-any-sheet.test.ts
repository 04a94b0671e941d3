import fc from 'fast-check';
import { describe, it } from 'vitest';
import { anySheet } from './any-sheet.ts';
import { expectGuarded } from './guarded.ts';

const RUNS = 10_000;

describe('what the program must never do', () => {
  it('is not done on any sheet that the format takes', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        expectGuarded(sheet);
      }),
      { numRuns: RUNS },
    );
    console.log(`guards: ${RUNS} random sheets`);
  }, 2_400_000);
});
