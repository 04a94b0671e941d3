import { describe } from 'vitest';
import { compressionRatio, pistonTravel } from '../../../../core/charge/cylinder.ts';
import { chargeAt, compressed, trappedCharge, type GasState } from '../../../../core/charge/trapped-charge.ts';
import { paschenMinimum, paschenVoltage, uniformFieldVoltage } from '../../../../core/spark/breakdown.ts';
import { firingDemand, type Gap } from '../../../../core/spark/demand.ts';
import type { Celsius, Kelvin, Kilopascal, Millimetre } from '../../../../shared/quantities.ts';
import { checkAgainstOutside, inputsOf } from '../../../fixtures/check-values.ts';
import { cylinder } from '../../../fixtures/heat-engines.ts';

function demand(gap: Gap): number {
  const result = firingDemand(gap);
  return result.ok ? result.value.middle : NaN;
}

/** Bore, stroke and rod of the reference engine: the rows give none, and they hardly matter. */
function inEngine(id: string) {
  return (): number => {
    const { gapMm, cr, rpm, mapKPa, inletK, advanceDeg, lambda, electrodeK } = inputsOf(id);
    const shape = cylinder(86, 86, 143, cr!);
    const running = { rpm: rpm!, manifold: mapKPa as Kilopascal, exhaust: 103 as Kilopascal, inlet: (inletK! - 273.15) as Celsius };
    const gas = chargeAt(shape, trappedCharge(shape, 4, running), -advanceDeg!);
    return demand({ gap: gapMm as Millimetre, gas, electrode: electrodeK as Kelvin, lambda: lambda!, polarity: 'negative', wear: 0 });
  };
}

const townsend = (id: string): { a: number; b: number; yield: number } => ({ a: inputsOf(id).A!, b: inputsOf(id).B!, yield: inputsOf(id).gamma! });
const strength = (id: string) => (): number => uniformFieldVoltage(inputsOf(id).relDensity!, 10 * inputsOf(id).gapCm!) / inputsOf(id).gapCm!;
const spheres = (id: string) => (): number => uniformFieldVoltage(1, 10 * inputsOf(id).gapCm!);
function squeezed(id: string): GasState {
  const { p1, p1atm, T1K, ratio, n } = inputsOf(id);
  return compressed({ pressure: p1 ?? p1atm ?? 1, temperature: T1K ?? 300 }, ratio!, typeof n === 'number' ? n : undefined);
}
const pressure = (id: string) => (): number => squeezed(id).pressure;
const temperature = (id: string) => (): number => squeezed(id).temperature;

describe('spark and charge against the outside', () => {
  checkAgainstOutside('A', {
    A01: strength('A01'), A02: strength('A02'),
    A03: () => paschenVoltage(inputsOf('A03').pTorr! * inputsOf('A03').gapCm!, townsend('A03')),
    A04: () => paschenMinimum(townsend('A04')).torrCentimetres,
    A05: () => paschenMinimum(townsend('A05')).volts,
    A06: () => paschenMinimum().volts,
    A07: () => uniformFieldVoltage((inputsOf('A07').pressureKPa! / 101.325) * (293.15 / (inputsOf('A07').tempC! + 273.15)), 10 * inputsOf('A07').gapCm!),
    A08: spheres('A08'), A09: spheres('A09'), A10: spheres('A10'),
    A11: () => uniformFieldVoltage(1, inputsOf('A11').gapMm!),
    A12: () => demand({
      gap: inputsOf('A12').gapMm as Millimetre, gas: { pressure: 101_325, temperature: inputsOf('A12').tempK! }, electrode: inputsOf('A12').tempK as Kelvin,
      lambda: 0.9, polarity: 'negative', wear: 0,
    }),
    A13: inEngine('A13'), A14: inEngine('A14'), A15: inEngine('A15'),
    A16: () => compressionRatio((Math.PI / 4) * inputsOf('A16').boreCm! ** 2 * inputsOf('A16').strokeCm!, inputsOf('A16').clearanceCm3!),
    A17: pressure('A17'), A18: temperature('A18'), A19: temperature('A19'), A20: pressure('A20'), A21: pressure('A21'), A22: temperature('A22'),
    A23: temperature('A23'), A24: pressure('A24'), A25: temperature('A25'), A26: pressure('A26'),
    A27: () => pistonTravel(inputsOf('A27').crankDeg!, inputsOf('A27').rodToCrank!),
    A28: () => (pistonTravel(inputsOf('A28').crankDeg!, (2 * inputsOf('A28').rodMm!) / inputsOf('A28').strokeMm!) * inputsOf('A28').strokeMm!) / 2,
  });
});
