import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import type { Strength } from '../../../../core/knowledge/strengths.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { anySheet } from './any-sheet.ts';
import { healthyStaysHealthy, plainSheet, relabellingRelabels, surerMovesFurther, unobservedChangesNothing } from './invariants.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

const RUNS = 60;
const holds = (sheets: fc.Arbitrary<ReadingSheet>, breaches: (sheet: ReadingSheet) => string[]): void => {
  fc.assert(fc.property(sheets, (sheet) => { expect(breaches(sheet)).toEqual([]); }), { numRuns: RUNS });
};

describe('whatever is on the sheet', () => {
  it('a facet that nobody observed changes nothing', () => { holds(anySheet, unobservedChangesNothing); }, 600_000);
  it('a value read for sure moves every belief further, the same way, than the same value in doubt', () => { holds(anySheet, surerMovesFurther); }, 600_000);
  it('turning the cylinders of a symmetric engine turns the findings', () => { holds(anySheet, relabellingRelabels); }, 600_000);
  it('plugs that look normal are called normal and raise no fault above its prior', () => { holds(plainSheet, healthyStaysHealthy); }, 600_000);
});

describe('more plugs with the same sign', () => {
  const word = fc.constantFrom<Strength>('almost always', 'usually', 'often', 'sometimes', 'rarely');
  it('never lower the one shared cause that makes it', () => {
    fc.assert(
      fc.property(word, word, fc.double({ min: 0, max: 0.2, noNaN: true }), (made, seen, leak) => {
        const kb = knowledge(
          [condition('soot', { leak, shows: [shows('deposit', 'dry soot', seen)] })],
          [cause('rich', { scope: 'engine', makes: [makes('soot', made)] })],
        );
        const beliefs = [1, 2, 3, 4].map((count) => {
          const evidence = evidenceOf({
            format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4 },
            plugs: [1, 2, 3, 4].slice(0, count).map((cylinder) => ({ cylinder, tip: { deposit: 'dry soot' } })),
          });
          const network = networkFor(kb, evidence);
          return solverFor(network)(evidence).belief(network.shared[0]!);
        });
        beliefs.slice(1).forEach((belief, i) => { expect(belief).toBeGreaterThanOrEqual(beliefs[i]! - 1e-12); });
      }),
    );
  });
});
