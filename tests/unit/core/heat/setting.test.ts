import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceAbove, hottestInside, ladderOf, priceOf, LOADS, STEPS, type Rung } from '../../../../core/heat/ladder.ts';
import { answerOf } from '../../../../core/heat/spark-answer.ts';
import { dutyOf, fastest, heatEngine, lambdaReached, usualSetting, type Setting } from '../../../../core/heat/setting.ts';
import { PRIOR } from '../../../../core/thermal/belief.ts';
import { TOO_HOT } from '../../../../core/thermal/limits.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';

const car: Engine = { use: 'road', cylinders: 4 };
const carburetted: Engine = { ...car, mixture: { kind: 'carburettor' } };

const setting = fc.record({
  load: fc.double({ min: 0.35, max: 1, noNaN: true }), rpm: fc.integer({ min: 600, max: 8000 }), lambda: fc.double({ min: 0.7, max: 1.3, noNaN: true }),
  advance: fc.integer({ min: 0, max: 45 }), boost: fc.integer({ min: 0, max: 150 }), inlet: fc.integer({ min: -20, max: 80 }),
  coolant: fc.integer({ min: 20, max: 200 }), altitude: fc.integer({ min: 0, max: 4000 }), heatStep: fc.integer({ min: -2, max: 2 }),
  gap: fc.double({ min: 0.3, max: 1.5, noNaN: true }), coil: fc.integer({ min: 10, max: 45 }), fuel: fc.constantFrom('petrol' as const, 'E10' as const, 'avgas' as const),
});

describe('a setting of the sliders', () => {
  it('always gets an answer: no place of a slider is dead', () => {
    fc.assert(fc.property(setting, fc.constantFrom(car, { ...car, cycle: 'two-stroke' as const }), (one: Setting, engine: Engine) => {
      expect(answerOf(engine, one, PRIOR).ok).toBe(true);
      expect(ladderOf(engine, one, PRIOR).flatMap(({ bands }) => bands)).not.toContain(undefined);
    }), { numRuns: 60 });
  });

  it('means the air outside at full load without boost: 101.3 kPa at the sea, 79.5 kPa at 2000 m (US Standard Atmosphere 1976)', () => {
    const manifold = (altitude: number): number => dutyOf(car, { ...usualSetting(car), altitude }).manifold;
    expect(manifold(0)).toBeCloseTo(101.325, 3);
    expect(manifold(2000)).toBeCloseTo(79.5, 1);
  });

  it('richens a carburettor at height and leans it on E10, and leaves injection alone', () => {
    const usual = usualSetting(car);
    expect(lambdaReached(carburetted, { ...usual, altitude: 1000 }) / usual.lambda).toBeCloseTo(1 / 1.05, 2);
    expect(lambdaReached(carburetted, { ...usual, fuel: 'E10' }) / usual.lambda).toBeCloseTo(1.04, 2);
    expect(lambdaReached(car, { ...usual, altitude: 1000, fuel: 'E10' })).toBe(usual.lambda);
  });

  it('says what it assumed of an engine and nothing when all is known', () => {
    expect(heatEngine(car).assumed).toEqual(['bore', 'stroke', 'compressionRatio']);
    expect(heatEngine({ ...car, boreMm: 80, strokeMm: 70, compressionRatio: 9 }).assumed).toEqual([]);
    expect(fastest(heatEngine({ ...car, strokeMm: 110 }).engine)).toBe(6000);
  });
});

describe('the ladder', () => {
  it('rises with the heat value at every load', () => {
    const rungs = ladderOf(car, usualSetting(car), PRIOR);
    expect(rungs.map(({ step }) => step)).toEqual(STEPS);
    LOADS.forEach((_, i) => {
      const middles = rungs.map(({ bands }) => bands[i]!.middle);
      expect(middles).toEqual([...middles].sort((a, b) => a - b));
    });
  });

  const band = (middle: number, half = 0) => ({ low: middle - half, middle, high: middle + half, basis: 'predicted', notes: [] });
  const rung = (step: number, light: number, full: number): Rung =>
    ({ step, bands: LOADS.map((_, i) => band(light + (i / (LOADS.length - 1)) * (full - light), 50)) }) as unknown as Rung;

  it('prices a heat value by the load from which it cleans itself, read between the loads computed', () => {
    expect(priceOf(rung(0, 400, 800)).cleansFrom).toBeCloseTo(0.35 + (50 / 400) * 0.65, 10);
    expect(priceOf(rung(0, 500, 800)).cleansFrom).toBe(LOADS[0]);
    expect(priceOf(rung(0, 300, 440)).cleansFrom).toBeUndefined();
  });

  it('gives even chances to a tip whose band stands on a limit, and few to one a spread below (standard normal table: 5 % at 1.645 deviations)', () => {
    expect(chanceAbove(band(850, 60), TOO_HOT)).toBeCloseTo(0.5, 6);
    expect(chanceAbove(band(850 - Math.hypot(60, 35), 60), TOO_HOT)).toBeCloseTo(0.05, 3);
  });

  it('names the hottest heat value that is likely not too hot at full load, and none when all are', () => {
    expect(hottestInside([rung(-1, 400, 700), rung(0, 450, 780), rung(1, 500, 900)])?.step).toBe(0);
    expect(hottestInside([rung(-1, 600, 980), rung(0, 650, 1050)])).toBeUndefined();
  });
});
