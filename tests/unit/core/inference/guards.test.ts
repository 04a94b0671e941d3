import { describe, expect, it } from 'vitest';
import { conclude } from '../../../../core/inference/conclude.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { FORBIDDING, sooty } from './guarded.ts';

const hotter = (sheet: ReadingSheet, extra: Partial<ReadingSheet> = {}): number => conclude({ ...sheet, ...extra }, KNOWLEDGE).heat.step;

const withSign = (facet: string, value: string): ReadingSheet['plugs'] =>
  sooty.plugs.map((plug, i) => (i === 2 ? { ...plug, tip: { ...plug.tip, [facet]: value } } : plug));

describe('a step toward hotter', () => {
  it('may be advised for a whole sooty set of plugs colder than specified', () => {
    expect(hotter(sooty)).toBe(1);
  });

  it.each(Object.entries(FORBIDDING).flatMap(([facet, values]) => values.map((value) => [facet, value] as const)))(
    'is taken back by one plug with %s %s',
    (facet, value) => {
      expect(hotter(sooty, { plugs: withSign(facet, value) })).not.toBe(1);
    },
  );

  it.each(['knock under load', 'blue smoke', 'oil use', 'overheating', 'run-on after switch-off', 'coolant loss'] as const)('is taken back by %s', (what) => {
    expect(hotter(sooty, { symptoms: [{ what }] })).not.toBe(1);
  });

  it('is taken back for an aircraft, for one normal plug in the set, and where it was taken already', () => {
    expect(hotter({ ...sooty, engine: { ...sooty.engine, use: 'aircraft' } })).not.toBe(1);
    expect(hotter(sooty, { plugs: sooty.plugs.map((plug, i) => (i === 0 ? { ...plug, tip: { overall: 'looks normal' } } : plug)) })).not.toBe(1);
    expect(hotter(sooty, { plugs: sooty.plugs.map((plug) => ({ ...plug, fitted: { heatStepsFromSpecified: 1 } })) })).not.toBe(1);
  });
});
