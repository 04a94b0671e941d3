import { describe, expect, it } from 'vitest';
import type { PlugBelief } from '../../../../core/inference/plug-belief.ts';
import { judge } from '../../../../core/inference/verdict.ts';
import type { Condition } from '../../../../core/knowledge/types.ts';
import { VERDICTS } from '../../../../shared/vocabulary/verdicts.ts';
import { condition } from './small-knowledge.ts';

const SOOT = condition('soot', { verdict: 'dry carbon fouling', thermal: 'cold' });
const FLUFF = condition('fluff', { verdict: 'dry carbon fouling' });
const OIL = condition('oil', { verdict: 'oil fouling' });
const BURNT = condition('burnt', { verdict: 'too hot', thermal: 'hot' });
const WORN = condition('worn', { verdict: 'worn' });
const AGED = condition('aged', { verdict: 'worn' });
const FUEL = condition('fuel', { verdict: 'fuel wet' });
const TAN = condition('tan', { verdict: 'normal' });
const ALL: readonly Condition[] = [TAN, OIL, SOOT, FLUFF, BURNT, WORN, AGED, FUEL];

type Set = readonly [belief: number, ...held: readonly Condition[]];
/** Belief in sets of at most two conditions; what is left over is in none. */
function beliefIn(...sets: readonly Set[]): PlugBelief {
  const n = ALL.length;
  const [single, pair] = [new Float64Array(n), new Float64Array(n * n)];
  for (const [belief, ...held] of sets) {
    const [i, j] = held.map((one) => ALL.indexOf(one)).sort((a, b) => a - b);
    if (j === undefined) single[i!] = belief;
    else pair[i! * n + j] = belief;
  }
  return { none: Math.max(0, 1 - sets.reduce((sum, [belief]) => sum + belief, 0)), single, pair };
}
const judged = (...sets: readonly Set[]) => judge(beliefIn(...sets), ALL, true);

describe('the belief in a judgement', () => {
  const beliefs = () => judged([0.2, SOOT], [0.1, TAN], [0.25, SOOT, OIL], [0.15, SOOT, FLUFF], [0.05, OIL, TAN]).beliefs;

  it('is that of every set that holds a condition so called, each set once', () => {
    expect(beliefs().get('dry carbon fouling')).toBeCloseTo(0.2 + 0.25 + 0.15, 12);
    expect(beliefs().get('oil fouling')).toBeCloseTo(0.25 + 0.05, 12);
    expect(beliefs().get('worn')).toBe(0);
  });

  it('is normal where nothing but harmless states hold', () => {
    expect(beliefs().get('normal')).toBeCloseTo(0.25 + 0.1, 12);
  });

  it('is kept for every verdict but the one that there is none', () => {
    expect([...beliefs().keys()].sort()).toEqual(VERDICTS.filter((verdict) => verdict !== 'undetermined').sort());
  });

  it('is never above 1, however the last digits fall', () => {
    expect(judged([0.7, SOOT], [0.7, FLUFF]).belief).toBe(1);
  });
});

describe('the judgement on a plug', () => {
  it('is the likeliest verdict, by the likeliest of the conditions that are so called', () => {
    expect(judged([0.3, SOOT], [0.25, FLUFF], [0.15, FLUFF, OIL])).toMatchObject({ verdict: 'dry carbon fouling', condition: 'fluff', also: [] });
    expect(judged([0.3, SOOT], [0.25, FLUFF], [0.15, FLUFF, OIL]).belief).toBeCloseTo(0.7, 12);
    expect(judged([0.35, SOOT], [0.35, FLUFF])).toMatchObject({ condition: 'fluff' });
    expect(judged([0.35, WORN], [0.35, AGED])).toMatchObject({ condition: 'aged' });
    expect(judged([0.3, SOOT, WORN], [0.2, FLUFF, WORN], [0.4, AGED])).toMatchObject({ verdict: 'worn', condition: 'worn' });
    expect(judged([0.3, FLUFF], [0.4, OIL, SOOT])).toMatchObject({ verdict: 'dry carbon fouling', condition: 'soot' });
  });

  it('names no condition where it is normal', () => {
    expect(judged([0.1, SOOT], [0.2, TAN])).toMatchObject({ verdict: 'normal', also: [] });
    expect(judged([0.1, SOOT])).not.toHaveProperty('condition');
    expect(judged([0.36, SOOT])).toMatchObject({ verdict: 'normal', also: [] });
  });

  it('is not given below 0.4', () => {
    expect(judged([0.39, OIL], [0.31, SOOT]).verdict).toBe('undetermined');
    expect(judged([0.39, OIL], [0.31, SOOT])).toMatchObject({ also: [], belief: 0.39 });
    expect(judged([0.4, OIL], [0.3, SOOT]).verdict).toBe('oil fouling');
  });

  it('is not given where normal stands within 0.08 of all faults together', () => {
    expect(judged([0.2, OIL], [0.27, SOOT]).verdict).toBe('undetermined');
    expect(judged([0.2, OIL], [0.25, SOOT]).verdict).toBe('normal');
  });

  it('is not given where two faults under a half stand within 0.08 of each other; above it both may hold', () => {
    expect(judged([0.45, OIL], [0.4, SOOT]).verdict).toBe('undetermined');
    expect(judged([0.45, OIL], [0.35, SOOT]).verdict).toBe('oil fouling');
    expect(judged([0.57, OIL, SOOT], [0.01, OIL]).verdict).toBe('oil fouling');
    expect(judged([0.57, OIL, SOOT])).toMatchObject({ verdict: 'undetermined' });
  });

  it('is first by name of two equally likely ones', () => {
    expect(judged([0.7, SOOT, OIL])).toMatchObject({ verdict: 'dry carbon fouling', also: ['oil fouling'] });
    expect(judged([0.7, FUEL, OIL])).toMatchObject({ verdict: 'fuel wet', also: ['oil fouling'] });
  });

  it('is not given where nothing was seen, whatever is believed', () => {
    expect(judge(beliefIn([0.1, SOOT]), ALL, false)).toMatchObject({ verdict: 'undetermined', also: [], belief: 0 });
  });
});

describe('a second judgement', () => {
  it('is named from 0.35 on, two at most, the likelier first, never normal', () => {
    expect(judged([0.6, SOOT], [0.34, OIL])).toMatchObject({ also: [] });
    expect(judged([0.35, SOOT, WORN], [0.5, SOOT])).toMatchObject({ verdict: 'dry carbon fouling', also: ['worn'] });
    expect(judged([0.4, SOOT, WORN], [0.3, SOOT, OIL], [0.05, OIL, WORN], [0.2, BURNT, SOOT])).toMatchObject({ also: ['worn', 'oil fouling'] });
    expect(judged([0.9, SOOT], [0.5, OIL], [0.4, BURNT], [0.45, WORN])).toMatchObject({ verdict: 'dry carbon fouling', also: ['oil fouling', 'worn'] });
    expect(judged([0.6, SOOT])).toMatchObject({ verdict: 'dry carbon fouling', also: [] });
  });
});

describe('the temperature of a tip', () => {
  it('is too cold or too hot as far as a condition that makes it so is believed; of both at once it is too hot', () => {
    const { thermal } = judged([0.2, SOOT], [0.1, BURNT], [0.05, SOOT, BURNT], [0.15, OIL, SOOT], [0.08, SOOT, WORN], [0.22, OIL]);
    expect(thermal.tooCold).toBeCloseTo(0.2 + 0.15 + 0.08, 12);
    expect(thermal.tooHot).toBeCloseTo(0.1 + 0.05, 12);
    expect(thermal.inWindow).toBeCloseTo(0.42, 12);
  });

  it('is never in its window with a chance below 0', () => {
    expect(judged([0.6, SOOT], [0.5, BURNT]).thermal.inWindow).toBe(0);
  });
});
