import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import { USES } from '../../../../shared/vocabulary/engine.ts';
import { facet } from './any-sheet.ts';
import { expectGuarded, sooty } from './guarded.ts';

const RUNS = 10_000;

/** The picture that may lead to a hotter plug, disturbed in a few places: where a guard has something to hold back. */
const disturbed: fc.Arbitrary<ReadingSheet> = fc
  .record({
    changes: fc.array(fc.record({ plug: fc.integer({ min: 0, max: 3 }), facet }), { maxLength: 2 }),
    symptom: fc.option(fc.constantFrom(...SYMPTOMS), { freq: 2 }),
    use: fc.oneof({ weight: 3, arbitrary: fc.constant('road' as const) }, fc.constantFrom(...USES)),
    steps: fc.integer({ min: -2, max: 1 }),
  })
  .map(({ changes, symptom, use, steps }): ReadingSheet => {
    const plugs = sooty.plugs.map((plug, i) => {
      const here = changes.filter((change) => change.plug === i);
      const tip = here.reduce<Tip>((all, { facet: [name, value] }) => ({ ...all, [name]: value }), plug.tip ?? {});
      return { ...plug, fitted: { heatStepsFromSpecified: steps }, tip } as ReadingSheet['plugs'][number];
    });
    return { ...sooty, engine: { ...sooty.engine, use }, plugs, ...(symptom === null ? {} : { symptoms: [{ what: symptom }] }) };
  });

describe('what the program must never do', () => {
  it('is not done where a hotter plug is near: over sooty sets disturbed in a few places', () => {
    let hotter = 0;
    fc.assert(
      fc.property(disturbed, (sheet) => {
        if (expectGuarded(sheet) === 1) hotter += 1;
      }),
      { numRuns: RUNS },
    );
    console.log(`guards: ${RUNS} disturbed sooty sets, ${hotter} of them advised one step hotter`);
    expect(hotter).toBeGreaterThan(RUNS / 100);
  }, 2_400_000);
});
