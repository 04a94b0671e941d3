import { describe, expect, it } from 'vitest';
import type { Conclusion, Judged } from '../../../../core/inference/conclude.ts';
import { firstLook, plugLook } from '../../../../core/inference/first-look.ts';
import type { Stop } from '../../../../core/inference/stop-rules.ts';
import type { StopRule } from '../../../../core/knowledge/types.ts';
import type { Risk, Verdict } from '../../../../shared/vocabulary/verdicts.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

const rule: StopRule = { id: 'melted', words: 'Stop.', anyOf: [[{ plug: 'deposit', is: ['metal spray'] }]], because: 'made up for a test', source: 'common practice' };
const judged = (beliefs: Partial<Record<Verdict, number>>, cylinder = 1): Judged => ({
  plug: { key: `${cylinder}`, place: { cylinder, position: 'only' }, reading: { cylinder }, seen: [] },
  judgement: {
    verdict: 'worn', also: ['glazing'], belief: 0.7, thermal: { tooCold: 0.1, inWindow: 0.7, tooHot: 0.2 }, beliefs: new Map(Object.entries(beliefs) as [Verdict, number][]),
  },
});
const riskOf = (beliefs: Partial<Record<Verdict, number>>): Risk => plugLook(judged(beliefs), { stops: [] }).preIgnitionRisk;

describe('what is decided of a plug', () => {
  it('is its judgement as it stands, with the risk', () => {
    expect(plugLook(judged({}, 3), { stops: [] })).toEqual({
      cylinder: 3, position: 'only', verdict: 'worn', also: ['glazing'], belief: 0.7, thermal: { tooCold: 0.1, inWindow: 0.7, tooHot: 0.2 }, preIgnitionRisk: 'low',
    });
  });

  it('is told of every plug that was read, to four places, with the stops', () => {
    const kb = knowledge([condition('soot', { shows: [shows('deposit', 'dry soot', 'usually')] })], [cause('rich', { makes: [makes('soot', 'often')] })]);
    const sheet = sheetOf({ plugs: [{ cylinder: 1, tip: { deposit: 'dry soot' } }, { cylinder: 3, tip: { deposit: 'metal spray' } }] });
    const { plugs, stop } = firstLook(sheet, { knowledge: { ...kb, stopRules: [rule] } });
    expect(plugs.map(({ cylinder, verdict, preIgnitionRisk }) => [cylinder, verdict, preIgnitionRisk])).toEqual([[1, 'dry carbon fouling', 'low'], [3, 'normal', 'stop']]);
    for (const { belief } of plugs) expect(belief).toBe(Math.round(1e4 * belief) / 1e4);
    expect(stop).toEqual([{ rule: 'melted', cylinder: 3, why: 'Cylinder 3: Stop.' }]);
  });
});

describe('the risk of pre-ignition', () => {
  // Expert estimate: the plug is a hot spot where it glows, knocks or melts; deposits, cracks and threads in the chamber may become one.
  it('is high over one half, raised over a fifth, of heat, detonation and pre-ignition together', () => {
    expect(['too hot', 'detonation damage', 'pre-ignition damage'].map((verdict) => riskOf({ [verdict]: 0.51 }))).toEqual(['high', 'high', 'high']);
    expect(riskOf({ 'too hot': 0.2, 'detonation damage': 0.2, 'pre-ignition damage': 0.11 })).toBe('high');
    expect([riskOf({ 'too hot': 0.5 }), riskOf({ 'too hot': 0.21 }), riskOf({ 'too hot': 0.2 })]).toEqual(['raised', 'raised', 'low']);
  });

  it('is raised over two fifths of ash, a damaged insulator, a wrong reach and glazing together', () => {
    expect(['ash deposits', 'insulator damage', 'wrong reach', 'glazing'].map((verdict) => riskOf({ [verdict]: 0.41 }))).toEqual(['raised', 'raised', 'raised', 'raised']);
    expect(riskOf({ 'ash deposits': 0.11, 'insulator damage': 0.1, 'wrong reach': 0.1, glazing: 0.1 })).toBe('raised');
    expect([riskOf({ glazing: 0.4 }), riskOf({ worn: 1 })]).toEqual(['low', 'low']);
  });

  it('is a stop on the very plugs of a stop', () => {
    const [one, other] = [judged({}, 1), judged({}, 2)];
    const stops: Stop[] = [{ rule, cylinder: 1, plugs: [one.plug] }];
    expect([one, other].map((plug) => plugLook(plug, { stops }).preIgnitionRisk)).toEqual(['stop', 'low']);
  });

  it('is the graver of the two where lines of a workshop take part', () => {
    const guard = (cylinder: number): Conclusion => ({ judged: [judged({ 'too hot': 0.9 }, cylinder)] } as Partial<Conclusion> as Conclusion);
    expect(plugLook(judged({}), { stops: [], guard: guard(1) }).preIgnitionRisk).toBe('high');
    expect(plugLook(judged({}), { stops: [], guard: guard(2) }).preIgnitionRisk).toBe('low');
    expect(plugLook(judged({ glazing: 0.9 }), { stops: [], guard: { ...guard(1), judged: [judged({})] } }).preIgnitionRisk).toBe('raised');
  });
});
