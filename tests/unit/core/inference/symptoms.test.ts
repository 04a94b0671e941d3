import { describe, expect, it } from 'vitest';
import { dampingFor, MOST_SYMPTOMS, signedSubsets } from '../../../../core/inference/symptoms.ts';
import { HEALTHY_SYMPTOM } from '../../../../core/knowledge/findings.ts';
import type { SymptomTag } from '../../../../shared/vocabulary/conditions.ts';
import { cause, condition, knowledge } from './small-knowledge.ts';

/** Chance that of independent symptoms the first ones are felt and the rest are not, each quiet with its own chance. */
const direct = (present: readonly SymptomTag[], absent: readonly SymptomTag[], quiet: (s: SymptomTag) => number): number =>
  present.reduce((p, s) => p * (1 - (1 - HEALTHY_SYMPTOM) * quiet(s)), 1) * absent.reduce((p, s) => p * (1 - HEALTHY_SYMPTOM) * quiet(s), 1);

describe('several symptoms felt', () => {
  it('are a sum with alternating signs over those taken as absent (Heckerman 1989), equal to the product taken directly', () => {
    const quiets: Partial<Record<SymptomTag, number>> = { misfire: 0.3, 'oil use': 0.55, surging: 0.8, vibration: 0.45 };
    const quiet = (s: SymptomTag): number => quiets[s]!;
    const [present, absent] = [['misfire', 'oil use', 'surging'], ['vibration']] as [SymptomTag[], SymptomTag[]];
    for (const [felt, not] of [[present, absent], [present, []], [[], absent], [[], []]] as const) {
      const sum = signedSubsets(felt, not).reduce((all, { coefficient, taken }) => all + coefficient * taken.reduce((p, s) => p * quiet(s), 1), 0);
      expect(sum).toBeCloseTo(direct(felt, not, quiet), 12);
    }
  });

  it('count up to the most that are counted, the first ones', () => {
    const five: SymptomTag[] = ['misfire', 'oil use', 'surging', 'vibration', 'flooded'];
    const sets = signedSubsets(five, []);
    expect(MOST_SYMPTOMS).toBe(4);
    expect(sets).toHaveLength(16);
    expect(new Set(sets.flatMap(({ taken }) => taken))).toEqual(new Set(five.slice(0, 4)));
  });
});

describe('what conditions and causes leave unfelt', () => {
  const grounds = { because: 'made up for a test', source: 'common practice' } as const;
  const kb = knowledge(
    [condition('soot', { gives: [{ symptom: 'misfire', strength: 'usually', ...grounds }, { symptom: 'surging', strength: 'often', ...grounds }] }), condition('worn', {})],
    [cause('rich', { gives: [{ symptom: 'surging', strength: 'sometimes', ...grounds }] }), cause('weak', {})],
  );

  it('is the product of the chances that each of the symptoms is not given', () => {
    // usually 0.7, often 0.45, sometimes 0.2.
    const both = dampingFor(kb, ['misfire', 'surging']);
    expect(both.conditions[0]).toBeCloseTo(0.3 * 0.55, 12);
    expect(both.conditions[1]).toBe(1);
    expect([both.causes.get('rich'), both.causes.get('weak')]).toEqual([0.8, 1]);
    expect(dampingFor(kb, ['misfire']).conditions[0]).toBeCloseTo(0.3, 12);
    expect([...dampingFor(kb, []).conditions]).toEqual([1, 1]);
  });

  it('is worked out once for the same symptoms, and goes by a key of its own', () => {
    expect(dampingFor(kb, ['misfire'])).toBe(dampingFor(kb, ['misfire']));
    expect(dampingFor(kb, ['misfire', 'surging']).key).not.toBe(dampingFor(kb, ['misfire']).key);
    const other = knowledge([condition('soot', {})], []);
    expect(dampingFor(other, ['misfire']).conditions[0]).toBe(1);
  });
});
