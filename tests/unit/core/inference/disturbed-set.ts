import fc from 'fast-check';
import type { ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import { USES } from '../../../../shared/vocabulary/engine.ts';
import { facet } from './any-sheet.ts';
import { sooty } from './guarded.ts';

/** The picture that may lead to a hotter plug, disturbed in a few places: where a guard has something to hold back. */
export const disturbedSet: fc.Arbitrary<ReadingSheet> = fc
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
