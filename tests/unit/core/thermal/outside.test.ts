import { describe } from 'vitest';
import { heatCapacityRatio } from '../../../../core/thermal/combustion.ts';
import { driveSeconds, prepareDrive } from '../../../../core/thermal/drive.ts';
import { PRE_IGNITION, SELF_CLEANING } from '../../../../core/thermal/limits.ts';
import { headTemperature } from '../../../../core/thermal/plug-network.ts';
import { partBand, tipBand } from '../../../../core/thermal/tip.ts';
import type { Celsius } from '../../../../shared/quantities.ts';
import { checkAgainstOutside, inputsOf } from '../../../fixtures/check-values.ts';
import { cylinder, duty, gas, plug, REFERENCE } from '../../../fixtures/heat-engines.ts';

const tip = (more: Parameters<typeof duty>[0] = {}, seat = plug(), engine = REFERENCE): number => tipBand(gas(engine, duty(more)), seat).middle;
const exhaust = (advance: number): number => gas(REFERENCE, duty({ advance })).asItStands.exhaustKelvin;

/** The value of a list at which something is largest. */
const largestAt = (values: readonly number[], of: (value: number) => number): number =>
  values.reduce((best, value) => (of(value) > of(best) ? value : best));
const steps = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

/** W/m² into a wall 60 K above the coolant. */
function wallFlux(more: Parameters<typeof duty>[0]): number {
  const { asItStands: { coefficient, wallGas }, coolantKelvin } = gas(REFERENCE, duty(more));
  return coefficient * (wallGas - coolantKelvin - 60);
}

/** Seconds until the nose has gone 63 % of the way from a warm soak to full load. */
function timeConstant(): number {
  const drive = prepareDrive(REFERENCE, [{ seconds: 600, duty: duty() }], 90 as Celsius);
  if (!drive.ok) throw new Error(JSON.stringify(drive.error));
  const noses = driveSeconds(drive.value, REFERENCE, plug()).map(({ plug: { nose } }) => nose);
  const start = 90 + 273.15;
  return noses.findIndex((nose) => nose >= start + 0.632 * (noses.at(-1)! - start)) + 1;
}

/** bar, at which the centre electrode of a plug one step hotter reaches 950 °C in the rating engine at its hottest mixture. */
function ratedPressure(): number {
  const engine = { cylinder: cylinder(66.7, 82.6, 165, 5.6), strokes: 4 } as const;
  const at = (manifold: number) => (lambda: number) => gas(engine, duty({ rpm: 2700, advance: 30, coolant: 107, inlet: 107, lambda, manifold, exhaust: 101 }));
  for (let manifold = 60; manifold <= 400; manifold += 10) {
    const lambda = largestAt(steps(0.85, 1.05, 0.05), (one) => partBand(at(manifold)(one), plug(1), 'centre').middle);
    const felt = at(manifold)(lambda);
    if (partBand(felt, plug(1), 'centre').middle >= 950) return felt.asItStands.imep / 1e5;
  }
  return NaN;
}

describe('tip temperature against the outside', () => {
  checkAgainstOutside('B', {
    B01: () => (tip({}, plug(1)) - tip({}, plug(-1))) / 2,
    B02: () => (tip({ advance: 38 }) - tip({ advance: 18 })) / 2,
    B03: () => tip(),
    B04: () => tip({ rpm: 800, manifold: 32, inlet: 36.85, lambda: 1, advance: 12 }),
    B05: () => largestAt(steps(0.7, 1.2, 0.01), (lambda) => tip({ lambda })),
    B06: () => 1 / largestAt(steps(0.8, 1.2, 0.01), (lambda) => wallFlux({ lambda, rpm: 3000, advance: 22 })),
    B07: () => Math.log2(wallFlux({ rpm: 5000, lambda: 0.9, advance: 22 }) / wallFlux({ rpm: 2500, lambda: 0.9, advance: 22 })),
    B08: () => inputsOf('B08').cKPa! * 100 ** 0.8,
    B09: () => heatCapacityRatio(inputsOf('B09').tempK!),
    B10: () => tip({ advance: 22 }, plug(), { ...REFERENCE, strokes: 2 }) - tip({ advance: 22 }),
    B11: () => (exhaust(18) > exhaust(28) ? tip() - tip({ advance: 18 }) : NaN),
    B12: () => tip({}, plug(0, 0.15)) - tip(),
    B13: () => partBand(gas(REFERENCE, duty()), plug(), 'ground').middle - tip(),
    B14: timeConstant,
    B15: ratedPressure,
    B16: () => PRE_IGNITION.middle,
    B17: () => SELF_CLEANING.middle,
    B18: () => { const { asItStands, coolantKelvin } = gas(REFERENCE, duty()); return headTemperature(asItStands, coolantKelvin, 1) - 273.15; },
  });
});
