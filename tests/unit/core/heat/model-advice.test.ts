import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heatAdvice, type HeatGrounds } from '../../../../core/heat/advice.ts';
import { modelAdvice } from '../../../../core/heat/model-advice.ts';
import { heatModel } from '../../../../shared/formats/heat-model.v1.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { DUTIES } from '../../../../shared/vocabulary/conditions.ts';
import type { Verdict } from '../../../../shared/vocabulary/verdicts.ts';

const engine: Engine = { use: 'road', cylinders: 2, boreMm: 80, strokeMm: 80, compressionRatio: 9, cycle: 'four-stroke', fitment: { heat: { scale: 'Ostrin', value: '6' } } };
const PULL = { duty: 'full load', stop: 'clean cut', warm: true, speedRpm: 5000, lambda: 0.88, advanceDeg: 26 } as const;

const sheetOf = (step: number, conditions: ReadingSheet['conditions'] = PULL, more: Partial<Engine> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { ...engine, ...more }, conditions,
  plugs: [1, 2].map((cylinder) => ({ cylinder, fitted: { heatStepsFromSpecified: step } })),
});

type Looks = 'sooty' | 'overheated' | 'normal';
const VERDICT: Readonly<Record<Looks, Verdict>> = { sooty: 'dry carbon fouling', overheated: 'too hot', normal: 'normal' };

/** Grounds on which the tips alone ask for a step: hotter when sooty, colder when overheated. */
const groundsOf = (sheet: ReadingSheet, looks: Looks, more: Partial<HeatGrounds> = {}): HeatGrounds => ({
  sheet, stopped: false, bars: [], barring: undefined, rivals: [],
  plugs: [1, 2].map((cylinder) => ({
    where: `cylinder ${cylinder}`, verdict: VERDICT[looks], read: true, beliefs: new Map([[VERDICT[looks], 0.9]]),
    thermal: { tooCold: looks === 'sooty' ? 0.9 : 0.02, tooHot: looks === 'overheated' ? 0.9 : 0.02 },
  })),
  plugTooCold: looks === 'sooty' ? 0.8 : 0.01, plugTooHot: looks === 'overheated' ? 0.8 : 0.01, ...more,
});

describe('tips and model together', () => {
  it('go one step hotter only when the model does not speak against it: soot on a plug two steps too cold', () => {
    const cold = heatAdvice(groundsOf(sheetOf(-2, { ...PULL, duty: 'steady cruise', speedRpm: 2500, lambda: 1, advanceDeg: 30 }), 'sooty'));
    expect(cold).toMatchObject({ step: 1, model: { tipsStep: 1 } });
    expect(cold.model?.standing).not.toBe('disagrees');
  });

  it('stay where the tips ask for hotter and the model holds the plug warm enough, and say so', () => {
    const advice = heatAdvice(groundsOf(sheetOf(0), 'sooty'));
    expect(advice).toMatchObject({ step: 0, words: 'stay', when: 'now', first: [], model: { tipsStep: 1, standing: 'disagrees' } });
    expect(advice.why[0]).toMatch(/The tips ask for one step hotter, the model speaks against it.*stay/);
  });

  it('stay where the tips look too hot and the model holds the plug cool: something else heats it', () => {
    const advice = heatAdvice(groundsOf(sheetOf(0, { ...PULL, speedRpm: 2000, advanceDeg: 10 }), 'overheated'));
    expect(advice).toMatchObject({ step: 0, model: { tipsStep: -1, standing: 'disagrees' } });
  });

  it('go colder where both find the plug too hot: a hotter plug than asked for at full load', () => {
    expect(heatAdvice(groundsOf(sheetOf(2), 'overheated'))).toMatchObject({ step: -1, model: { says: 'colder', standing: 'agrees' } });
  });

  it('say what the record lacks, and leave the tips alone to decide', () => {
    const advice = heatAdvice(groundsOf({ ...sheetOf(-1), engine: { use: 'road', cylinders: 2 } }, 'sooty'));
    expect(advice).toMatchObject({ step: 1, model: { says: 'not computed', standing: 'silent' } });
    expect(advice.model?.missing).toContain('bore');
  });

  it('let signs of knock, oil or damage override the model', () => {
    const { model } = heatAdvice(groundsOf(sheetOf(0), 'normal', { stopped: true }));
    expect(model).toMatchObject({ says: 'overridden', standing: 'silent' });
    expect(model?.words.join(' ')).not.toMatch(/suits/);
  });
});

const anySheet = fc.record({
  step: fc.integer({ min: -3, max: 3 }), duty: fc.constantFrom(...DUTIES), rpm: fc.integer({ min: 600, max: 9000 }),
  lambda: fc.double({ min: 0.6, max: 1.4, noNaN: true }),
  advance: fc.integer({ min: 0, max: 45 }), use: fc.constantFrom('road', 'aircraft', 'competition', 'marine'), boosted: fc.boolean(), two: fc.boolean(),
}).map(({ step, duty, rpm, lambda, advance, use, boosted, two }) => sheetOf(step, { duty, speedRpm: rpm, lambda, advanceDeg: advance, stop: 'clean cut' }, {
  use, aspiration: boosted ? 'boosted' : 'natural', cycle: two ? 'two-stroke' : 'four-stroke',
}));

describe('whatever the engine and however it ran', () => {
  it('the model never adds a step: the advice is what the tips ask for, or stay', () => {
    fc.assert(fc.property(anySheet, fc.constantFrom<Looks>('sooty', 'overheated', 'normal'), (sheet, looks) => {
      const { step, model } = heatAdvice(groundsOf(sheet, looks));
      expect([0, model?.tipsStep]).toContain(step);
      if (looks === 'normal') expect(step).toBe(0);
    }), { numRuns: 150 });
  });

  it('its part fits the format, never speaks for hotter in an aircraft, and is the same every time', () => {
    fc.assert(fc.property(anySheet, fc.constantFrom(-1 as const, 0 as const, 1 as const), (sheet, step) => {
      const part = modelAdvice(sheet, step, false);
      expect(heatModel.safeParse(part).success).toBe(true);
      if (sheet.engine.use === 'aircraft') expect(part.says).not.toBe('hotter');
      expect(modelAdvice(sheet, step, false)).toEqual(part);
    }), { numRuns: 100 });
  });
});
