import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { disturbedSet } from './disturbed-set.ts';
import { guarded } from './guarded.ts';

const RUNS = 10_000;

describe('what the program must never do', () => {
  it('is not done where a hotter plug is near: over sooty sets disturbed in a few places', () => {
    let hotter = 0;
    fc.assert(
      fc.property(disturbedSet, (sheet) => {
        const { step, breaches } = guarded(sheet);
        expect(breaches).toEqual([]);
        if (step === 1) hotter += 1;
      }),
      { numRuns: RUNS },
    );
    console.log(`guards: ${RUNS} disturbed sooty sets, ${hotter} of them advised one step hotter`);
    expect(hotter).toBeGreaterThan(RUNS / 100);
  }, 2_400_000);
});
