import { describe, expect, it } from 'vitest';
import { evidenceOf, type Observation } from '../../../../core/inference/evidence.ts';
import { cylinderMark, cylinderRest, marksAny } from '../../../../core/inference/found.ts';
import type { CylinderFindingName } from '../../../../core/knowledge/findings.ts';
import type { Cause } from '../../../../core/knowledge/types.ts';
import type { CylinderCheck } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { cause } from './small-knowledge.ts';

const found = (check: Omit<CylinderCheck, 'cylinder'>): readonly Observation<CylinderFindingName>[] =>
  evidenceOf(sheetOf({ cylinderChecks: [{ cylinder: 1, ...check }] })).cylinders[0]!.seen;
const line = (finding: 'spark' | 'borescope', is: string, strength: 'usually' | 'sometimes'): Cause['shows'][number] =>
  ({ finding, is, strength, because: 'made up for a test', source: 'common practice' }) as Cause['shows'][number];
/** The chance that a cause marks what was found, and that it would be reported as it was. */
function marked(one: Cause, check: Omit<CylinderCheck, 'cylinder'>): [mark: number, report: number] {
  const { mark, report } = cylinderMark(one, found(check)[0]!);
  return [mark, report];
}

describe('what a cause leaves on a cylinder', () => {
  const coil = cause('coil', { part: 'coil', shows: [line('spark', 'weak', 'usually'), line('spark', 'none', 'sometimes'), line('borescope', 'deposits', 'usually')] });

  it('is marked with the sum of its strengths on that finding, and reported as seen with those that say so', () => {
    // Strengths: usually 0.7, sometimes 0.2.
    const [mark, report] = marked(coil, { spark: 'weak' });
    expect(mark).toBeCloseTo(0.9, 12);
    expect(report).toBeCloseTo(0.7, 12);
    expect(marked(coil, { spark: 'none' })[1]).toBeCloseTo(0.2, 12);
    expect(marked(coil, { spark: 'strong' })[1]).toBe(0);
    expect(marked(coil, { injector: 'works' })).toEqual([0, 0]);
  });

  it('goes with the part that carries it, in 9 of 10 swaps (expert estimate)', () => {
    const swap = (part: 'coil' | 'plug', followed: boolean): CylinderCheck['swaps'] => [{ part, to: 2, followed }];
    expect(marked(coil, { swaps: swap('coil', true) })[1]).toBeCloseTo(0.9, 12);
    expect(marked(coil, { swaps: swap('coil', false) })[1]).toBeCloseTo(0.07, 12);
    expect(marked(coil, { swaps: swap('plug', false) })[1]).toBeCloseTo(0.94, 12);
    expect(marked(coil, { swaps: swap('plug', true) })[1]).toBeCloseTo(0.03, 12);
    expect(marked(coil, { swaps: swap('plug', true) })[0]).toBeCloseTo(0.97, 12);
    expect(marked(cause('rings', {}), { swaps: swap('coil', false) })[1]).toBeCloseTo(0.94, 12);
  });

  it('is gone with a known-good part in its place', () => {
    const put = (part: 'coil' | 'plug', cured: boolean): CylinderCheck['substitutions'] => [{ part, cured }];
    expect(marked(coil, { substitutions: put('coil', true) })[1]).toBeCloseTo(0.9, 12);
    expect(marked(coil, { substitutions: put('coil', false) })[1]).toBeCloseTo(0.07, 12);
    expect(marked(coil, { substitutions: put('plug', false) })[1]).toBeCloseTo(0.94, 12);
    expect(marked(coil, { substitutions: put('plug', true) })[1]).toBeCloseTo(0.03, 12);
  });

  it('is nothing on a swap where it does no harm', () => {
    expect(marked(cause('first-run', { kind: 'harmless', harmless: true }), { swaps: [{ part: 'coil', to: 2, followed: true }] })).toEqual([0, 0]);
  });
});

describe('a cylinder with nothing wrong', () => {
  it('shows a value with its share among all values of the finding', () => {
    // Shares of the spark on a sound cylinder: 70 strong, 26 present, 3 weak, 1 none.
    expect(cylinderRest(found({ spark: 'weak' })[0]!)).toBeCloseTo(0.03, 12);
    expect(cylinderRest(found({ spark: 'strong' })[0]!)).toBeCloseTo(0.7, 12);
  });
});

describe('whether a cause bears on what was found', () => {
  it('is so where it marks any of it', () => {
    const [checked, unchecked] = evidenceOf(sheetOf({ cylinderChecks: [{ cylinder: 1, borescope: 'clean', spark: 'weak' }] })).cylinders;
    const weak = cause('coil', { shows: [line('spark', 'weak', 'usually')] });
    expect([marksAny(weak, checked!), marksAny(weak, unchecked!), marksAny(cause('rings', {}), checked!)]).toEqual([true, false, false]);
  });
});
