import { expect } from 'vitest';
import { conclude } from '../../../../core/inference/conclude.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';

/** Signs that bar a hotter plug, read straight off the sheet, not off beliefs. Source: product rule; the appearances after S16, S14, W6, W10. */
export const FORBIDDING: Readonly<Record<string, readonly string[]>> = {
  deposit: ['wet oil', 'metal spray', 'water'],
  specks: ['grey metallic'],
  centreElectrode: ['melted', 'missing', 'blistered'],
  groundElectrode: ['melted', 'broken off'],
  noseDamage: ['cracked', 'chipped', 'broken away'],
  noseSurface: ['blistered'],
  contact: ['closed by piston', 'debris marks'],
};

const forbids = ({ plugs }: ReadingSheet): boolean =>
  plugs.some(({ tip = {} }) => Object.entries(tip).some(([facet, value]) => typeof value === 'string' && (FORBIDDING[facet] ?? []).includes(value)));

/** A whole sooty set of plugs colder than specified: the one picture that may lead to a hotter plug. */
export const sooty: ReadingSheet = {
  format: 'corenose.reading-sheet',
  version: 1,
  engine: { use: 'road', cylinders: 4, cycle: 'four-stroke' },
  conditions: { fuel: 'petrol', duty: 'mixed', warm: true, lambda: 1, stop: 'clean cut' },
  plugs: [1, 2, 3, 4].map((cylinder) => ({
    cylinder,
    fitted: { heatStepsFromSpecified: -2 },
    tip: { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', sootRing: 'wide', heatLine: 'near the end' },
  })),
};

/** Expects of one sheet what must hold of every sheet. @returns the heat step advised */
export function expectGuarded(sheet: ReadingSheet): -1 | 0 | 1 {
  const { heat, stops, judged } = conclude(sheet, KNOWLEDGE);
  expect([-1, 0, 1]).toContain(heat.step);
  if (stops.length > 0 || forbids(sheet) || sheet.engine.use === 'aircraft') expect(heat.step).not.toBe(1);
  if (heat.step !== 0) expect(heat.first.length).toBeGreaterThanOrEqual(5);
  for (const { judgement } of judged) {
    const { thermal, beliefs } = judgement;
    expect(thermal.tooCold + thermal.inWindow + thermal.tooHot).toBeCloseTo(1, 9);
    for (const p of beliefs.values()) {
      expect(p).toBeGreaterThanOrEqual(0);
      expect(p).toBeLessThanOrEqual(1);
    }
  }
  return heat.step;
}
