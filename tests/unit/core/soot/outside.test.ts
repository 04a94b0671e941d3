import { describe, expect, it } from 'vitest';
import { ACTIVATION_ENERGY, burnOffSeconds, hotSootRate } from '../../../../core/soot/burn-off.ts';
import { roundsUntilFouled } from '../../../../core/soot/cold-starts.ts';
import { CLEAN, evenSoot, GOOD_INSULATION, shuntResistance, sootAfter, sootAtSteady, sootSecondMore, toAFactorOfThree, sootYield } from '../../../../core/soot/nose-soot.ts';
import { driveSeconds, prepareDrive, type Phase } from '../../../../core/thermal/drive.ts';
import type { Celsius, Megohm } from '../../../../shared/quantities.ts';
import { checkAgainstOutside, inputsOf } from '../../../fixtures/check-values.ts';
import { FROST, FROSTY_TRIPS } from '../../../fixtures/cold-trips.ts';
import { duty, plug, REFERENCE } from '../../../fixtures/heat-engines.ts';

function rounds(heatStep: number): number {
  const result = roundsUntilFouled({ engine: REFERENCE, seat: plug(heatStep), trips: FROSTY_TRIPS, start: FROST as Celsius });
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

function after(phases: readonly Phase[], start: number, shunt: number, heatStep = 0): number {
  const drive = prepareDrive(REFERENCE, phases, start as Celsius);
  if (!drive.ok) throw new Error(JSON.stringify(drive.error));
  return shuntResistance(sootAfter(driveSeconds(drive.value, REFERENCE, plug(heatStep)), evenSoot(shunt as Megohm)));
}

const FOULED = 4.6;
const road: Phase = { seconds: 600, duty: duty({ rpm: 2800, manifold: 50, advance: 32, lambda: 1, inlet: 20 }) };
const richIdle: Phase = { seconds: 1200, duty: duty({ rpm: 850, manifold: 34, advance: 10, lambda: 0.8, inlet: 20 }) };

function burnRatio(id: string) {
  return (): number => {
    const [cool, hot] = inputsOf(id).tempC as unknown as readonly [number, number];
    return burnOffSeconds(cool + 273.15, 0.1) / burnOffSeconds(hot + 273.15, 0.1);
  };
}

describe('soot against the outside', () => {
  checkAgainstOutside('C', {
    C01: () => ACTIVATION_ENERGY / 1000,
    C02: () => Math.log10(hotSootRate(inputsOf('C02').tempK!, inputsOf('C02').pO2atm!)),
    C03: burnRatio('C03'), C04: burnRatio('C04'),
    C05: () => sootYield(0.62) / sootYield(1),
    C06: () => GOOD_INSULATION,
    C07: () => rounds(0),
    C08: () => rounds(0) - rounds(-1),
    C09: () => after([road], 85, FOULED),
    C10: () => after([richIdle], 85, FOULED),
    C11: () => burnOffSeconds(inputsOf('C11').tempC! + 273.15, inputsOf('C11').pO2atm!),
  });
});

describe('soot on the nose', () => {
  it('gives 10 MΩ at an index of one all over, and ten thousand when clean', () => {
    expect(shuntResistance([1, 1, 1])).toBeCloseTo(10, 1);
    expect(shuntResistance(CLEAN)).toBeCloseTo(1e4, 0);
    expect(shuntResistance(evenSoot(4.6 as Megohm))).toBeCloseTo(4.6, 9);
  });

  it('drains nothing while one band stays clean: the bands lie in series', () => {
    expect(shuntResistance([0, 2, 2])).toBeGreaterThan(9000);
  });

  it('gathers in cold rich trips no slower on a colder plug', () => {
    expect([-2, -1, 0, 1, 2].map(rounds)).toEqual([-2, -1, 0, 1, 2].map(rounds).sort((a, b) => a - b));
  });

  it('goes in a long hard drive, and faster on a hotter plug', () => {
    const hard: Phase = { seconds: 60, duty: duty() };
    expect(after([hard], 85, FOULED)).toBeGreaterThan(100);
    const town: Phase = { seconds: 600, duty: duty({ rpm: 1800, manifold: 40, advance: 30, lambda: 1, inlet: 20 }) };
    expect(after([town], 85, FOULED, 1)).toBeGreaterThan(after([town], 85, FOULED, 0));
  });

  it('has times good to a factor of three', () => {
    expect(toAFactorOfThree(60)).toEqual({ low: 20, middle: 60, high: 180, basis: 'predicted', notes: [] });
  });

  it('refuses trips that no engine can make', () => {
    const trips = [[{ seconds: 5, duty: duty({ lambda: 0.2 }) }]];
    expect(roundsUntilFouled({ engine: REFERENCE, seat: plug(), trips, start: 0 as Celsius })).toEqual({ ok: false, error: [{ kind: 'outside', of: 'lambda', value: 0.2, least: 0.5, most: 1.8 }] });
  });
});

describe('steady running', () => {
  it('comes to the same soot by the formula as by the second', () => {
    const second = { at: 0, plug: { nose: 650, shell: 420, centre: 0, ground: 0 }, head: 0, coolant: 0, oxygen: 0.1, fuelFlow: 1e-4, lambda: 0.75 };
    let soot = CLEAN;
    for (let i = 0; i < 1800; i += 1) soot = sootSecondMore(soot, second);
    sootAtSteady(second, 1800).forEach((value, i) => expect(value / (soot[i] ?? NaN)).toBeCloseTo(1, 2));
  });

  it('leaves a hot nose at lambda 1 clean and fouls a cold one in a rich mixture', () => {
    const at = (nose: number, lambda: number): number =>
      shuntResistance(sootAtSteady({ plug: { nose, shell: 400 }, oxygen: 0.1, fuelFlow: 1e-4, lambda }, 3600));
    expect(at(900, 1)).toBeGreaterThan(1000);
    expect(at(520, 0.7)).toBeLessThan(at(900, 1) / 100);
  });
});
