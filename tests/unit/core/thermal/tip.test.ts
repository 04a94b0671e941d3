import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawAt, PRIOR } from '../../../../core/thermal/belief.ts';
import { cycleMeans, ignite } from '../../../../core/thermal/cycle.ts';
import { driveSeconds, prepareDrive, timeInWindow } from '../../../../core/thermal/drive.ts';
import { headTemperature, plugTemperatures } from '../../../../core/thermal/plug-network.ts';
import { gasAtPlug, partBand, slopesAt, tipBand, type Duty } from '../../../../core/thermal/tip.ts';
import { numbersOf, UNCERTAIN_NAMES, type Uncertain } from '../../../../core/thermal/uncertain.ts';
import { celsiusToKelvin } from '../../../../core/units.ts';
import type { Celsius } from '../../../../shared/quantities.ts';
import { normalDraws } from '../../../fixtures/draws.ts';
import { duty, EIGHT_ENGINES, gas, plug, REFERENCE } from '../../../fixtures/heat-engines.ts';

const running = fc.record({
  rpm: fc.integer({ min: 1000, max: 6500 }), manifold: fc.integer({ min: 40, max: 180 }), lambda: fc.double({ min: 0.75, max: 1.25, noNaN: true }),
  advance: fc.integer({ min: 5, max: 35 }), inlet: fc.integer({ min: -10, max: 60 }), coolant: fc.integer({ min: 60, max: 110 }),
});
const engines = fc.constantFrom(REFERENCE, ...EIGHT_ENGINES.map(({ engine }) => engine));
const tip = (engine: typeof REFERENCE, point: Duty, heatStep = 0): number => tipBand(gas(engine, point), plug(heatStep)).middle;

describe('the tip', () => {
  it('is hotter with every step towards hotter, more load, more advance, more speed and a hotter coolant, in any engine', () => {
    fc.assert(fc.property(engines, running, (engine, one) => {
      const here = tip(engine, duty(one));
      expect(tip(engine, duty(one), 1)).toBeGreaterThan(here);
      expect(tip(engine, duty(one), -1)).toBeLessThan(here);
      expect(tip(engine, duty({ ...one, manifold: one.manifold + 10 }))).toBeGreaterThan(here);
      expect(tip(engine, duty({ ...one, advance: one.advance + 5 }))).toBeGreaterThan(here);
      expect(tip(engine, duty({ ...one, rpm: one.rpm * 1.1 }))).toBeGreaterThan(here);
      expect(tip(engine, duty({ ...one, coolant: one.coolant + 10 }))).toBeGreaterThan(here);
    }), { numRuns: 60 });
  });

  it.each(EIGHT_ENGINES)('is hottest near the slightly rich side of lambda 1: $name', ({ engine, point }) => {
    const lambdas = Array.from({ length: 46 }, (_, i) => 0.75 + i * 0.01);
    const hottest = lambdas.reduce((best, lambda) => (tip(engine, { ...point, lambda }) > tip(engine, { ...point, lambda: best }) ? lambda : best));
    expect(hottest).toBeGreaterThan(0.88);
    expect(hottest).toBeLessThanOrEqual(1);
  });

  it('lies between head and gas, and the loose plug is hotter', () => {
    fc.assert(fc.property(engines, running, (engine, one) => {
      const felt = gas(engine, duty(one));
      const nose = celsiusToKelvin(tipBand(felt, plug()).middle);
      expect(nose).toBeGreaterThan(headTemperature(felt.asItStands, felt.coolantKelvin, 1));
      expect(nose).toBeLessThan(felt.asItStands.unmixedGas);
      expect(tipBand(felt, plug(0, 0.2)).middle).toBeGreaterThan(tipBand(felt, plug()).middle);
    }), { numRuns: 60 });
  });

  it('widens its band outside the tried range and says why, and refuses what no engine does', () => {
    const [usual, odd] = [tipBand(gas(REFERENCE, duty({ lambda: 1.4 })), plug()), tipBand(gas(REFERENCE, duty({ lambda: 1.41 })), plug())];
    expect(usual.notes).toEqual([]);
    expect(odd.notes).toEqual([{ kind: 'outside', of: 'lambda', value: 1.41, least: 0.65, most: 1.4 }]);
    expect(odd.high - odd.low).toBeGreaterThan(1.4 * (usual.high - usual.low));
    expect(gasAtPlug(REFERENCE, duty({ rpm: 0, lambda: 3 }))).toEqual({
      ok: false, error: [{ kind: 'outside', of: 'speed', value: 0, least: 100, most: 20_000 }, { kind: 'outside', of: 'lambda', value: 3, least: 0.5, most: 1.8 }],
    });
  });

  it.each([
    ['full load', duty()], ['cruise', duty({ rpm: 2500, manifold: 45, lambda: 1, advance: 34 })], ['idle', duty({ rpm: 800, manifold: 32, lambda: 1, advance: 12 })],
  ])('has a band that holds nine of ten draws of the uncertain numbers through the full model: %s', (_, point) => {
    const { low, high } = tipBand(gas(REFERENCE, point), plug());
    const next = normalDraws(7);
    const work = { ...point, coolantKelvin: celsiusToKelvin(point.coolant) };
    const ignition = ignite(REFERENCE, work);
    const tips = Array.from({ length: 1000 }, () => {
      const numbers = numbersOf(Object.fromEntries(UNCERTAIN_NAMES.map((name) => [name, next()])) as Uncertain);
      const means = cycleMeans(REFERENCE, work, ignition, numbers.burn);
      return plugTemperatures(means, headTemperature(means, work.coolantKelvin, numbers.head), plug(), numbers).nose - 273.15 + 15 * next();
    });
    const share = tips.filter((one) => one >= low && one <= high).length / tips.length;
    expect(share).toBeGreaterThan(0.87);
    expect(share).toBeLessThan(0.94);
  });
});

describe('a drive', () => {
  const prepared = (point: Duty, seconds: number) => {
    const drive = prepareDrive(REFERENCE, [{ seconds, duty: point }], 20 as Celsius);
    if (!drive.ok) throw new Error(JSON.stringify(drive.error));
    return drive.value;
  };

  it('ends where the steady state lies when it lasts long enough, to 0.2 K', () => {
    fc.assert(fc.property(running, (one) => {
      const point = duty(one);
      const last = driveSeconds(prepared(point, 3600), REFERENCE, plug()).at(-1)!;
      expect(Math.abs(last.plug.nose - celsiusToKelvin(tip(REFERENCE, point) as Celsius))).toBeLessThan(0.2);
      expect(Math.abs(last.plug.ground - celsiusToKelvin(partBand(gas(REFERENCE, point), plug(), 'ground').middle))).toBeLessThan(0.2);
    }), { numRuns: 15 });
  });

  it('counts every second once, and draws for the ends of the band lie around it', () => {
    const drive = prepared(duty(), 300);
    const draw = (deviations: number): Uncertain => drawAt(PRIOR, slopesAt(gas(REFERENCE, duty()), plug(), 'nose'), deviations);
    const [cold, middle, hot] = [-1.645, 0, 1.645].map((deviations) => driveSeconds(drive, REFERENCE, plug(), draw(deviations)));
    const { below, inside, above } = timeInWindow(middle!, 450, 850);
    expect(below + inside + above).toBe(300);
    expect(cold!.at(-1)!.plug.nose).toBeLessThan(middle!.at(-1)!.plug.nose);
    expect(hot!.at(-1)!.plug.nose).toBeGreaterThan(middle!.at(-1)!.plug.nose);
    expect(timeInWindow(hot!, 450, 850).below).toBeLessThan(timeInWindow(cold!, 450, 850).below);
  });

  it('refuses half seconds, a week on the road and impossible cold', () => {
    expect(prepareDrive(REFERENCE, [{ seconds: 0.5, duty: duty() }], 20 as Celsius)).toEqual({ ok: false, error: [{ kind: 'not whole seconds', phase: 1, seconds: 0.5 }] });
    expect(prepareDrive(REFERENCE, [{ seconds: 700_000, duty: duty() }], -80 as Celsius)).toEqual({
      ok: false, error: [{ kind: 'drive too long', seconds: 700_000, most: 86_400 }, { kind: 'start too cold', celsius: -80, least: -60 }],
    });
    expect(prepareDrive(REFERENCE, [{ seconds: 5, duty: duty({ advance: 90 }) }], 20 as Celsius).ok).toBe(false);
  });
});
