import { describe } from 'vitest';
import { airDensity, airPressure, airTemperature, densityAltitude, pressureAltitude, standardDensity } from '../../../../core/mixture/atmosphere.ts';
import { lambdaOnOtherAir } from '../../../../core/mixture/carburettor.ts';
import { flameTemperature, undissociatedFlameTemperature, type Charge } from '../../../../core/mixture/flame.ts';
import { atomsOfMassShares, FUELS, stoichiometricRatio, type Fuel } from '../../../../core/mixture/fuels.ts';
import type { Atoms } from '../../../../core/mixture/gas-species.ts';
import type { Metre } from '../../../../shared/quantities.ts';
import { checkAgainstOutside, inputsOf } from '../../../fixtures/check-values.ts';

const density = (id: string) => (): number => standardDensity(inputsOf(id).altitudeM as Metre);
/** Lower heating value of liquid octane 44.43 MJ/kg: Moran and Shapiro, table A-25. */
const OCTANE: Fuel = { name: 'liquid octane', atoms: [8, 18, 0, 0], heatingValue: 44.43e6 };
const cold = (fuel: Fuel, lambda = 1): Charge => ({ fuel, lambda, temperature: 298.15, pressure: 101_325 });
const ratio = (atoms: Atoms): number => stoichiometricRatio({ atoms });

function carburettor(id: string) {
  return (): number => {
    const { afrSeaLevel, p1bar, T1K, p2bar, T2K } = inputsOf(id);
    return lambdaOnOtherAir(afrSeaLevel!, airDensity(p2bar!, T2K!) / airDensity(p1bar!, T1K!));
  };
}

function richnessOfHottestFlame(): number {
  const all = Array.from({ length: 61 }, (_, i) => 0.8 + i * 0.01).map((phi) => ({ phi, kelvin: flameTemperature(cold(FUELS.petrol, 1 / phi)) }));
  return all.reduce((best, one) => (one.kelvin > best.kelvin ? one : best)).phi;
}

describe('air, fuel and flame against the outside', () => {
  checkAgainstOutside('F', {
    F01: density('F01'), F02: density('F02'), F03: density('F03'), F04: density('F04'), F05: density('F05'),
    F06: () => airPressure(inputsOf('F06').altitudeM as Metre),
    F07: () => airTemperature(inputsOf('F07').altitudeM as Metre),
    F08: () => densityAltitude(inputsOf('F08').pressurePa!, inputsOf('F08').tempK!),
    F09: () => pressureAltitude(inputsOf('F09').pressurePa!),
    F10: carburettor('F10'), F11: carburettor('F11'),
    F12: () => ratio(OCTANE.atoms),
    F13: () => inputsOf('F13').lambda! * ratio(OCTANE.atoms),
    F14: () => stoichiometricRatio(FUELS.ethanol),
    F15: () => stoichiometricRatio(FUELS.methane),
    F16: () => stoichiometricRatio({ atoms: atomsOfMassShares(inputsOf('F16').C!, inputsOf('F16').H!) }, inputsOf('F16').o2MassFractionAir),
    F17: () => undissociatedFlameTemperature(cold(OCTANE)),
    F18: () => undissociatedFlameTemperature(cold(OCTANE, 4)),
    F19: () => flameTemperature(cold(FUELS.methane)),
    F20: () => flameTemperature(cold(FUELS.LPG)),
    F21: richnessOfHottestFlame,
    F22: () => flameTemperature(cold(FUELS.petrol)) - 273.15,
  });
});
