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

export const forbids = ({ plugs }: ReadingSheet): boolean =>
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

/** What is advised of one sheet, and each thing done there that must never be done. */
export type Guarded = { readonly step: -1 | 0 | 1; readonly breaches: readonly string[] };

const isShare = (p: number): boolean => p >= 0 && p <= 1;

/** Holds one sheet against what the program must never do. */
export function guarded(sheet: ReadingSheet): Guarded {
  const { heat, stops, judged } = conclude(sheet, KNOWLEDGE);
  const barred = stops.length > 0 || forbids(sheet) || sheet.engine.use === 'aircraft';
  const beliefs = judged.flatMap(({ judgement }) => [...judgement.beliefs.values()]);
  const thermal = judged.map(({ judgement: { thermal: t } }) => t.tooCold + t.inWindow + t.tooHot);
  const rules: readonly (readonly [words: string, kept: boolean])[] = [
    ['more than one step of heat value', [-1, 0, 1].includes(heat.step)],
    ['a hotter plug against a sign that bars it', !(barred && heat.step === 1)],
    ['a step without what must come first', heat.step === 0 || heat.first.length >= 5],
    ['a belief outside 0 to 1', beliefs.every(isShare)],
    ['too cold, in its window and too hot do not sum to 1', thermal.every((sum) => Math.abs(sum - 1) < 1e-9)],
  ];
  return { step: heat.step, breaches: rules.filter(([, kept]) => !kept).map(([words]) => words) };
}
