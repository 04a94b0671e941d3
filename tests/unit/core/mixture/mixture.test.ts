import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airDensity, airPressure, airTemperature, densityAltitude, pressureAltitude, standardDensity } from '../../../../core/mixture/atmosphere.ts';
import { jetDiameterFactor, lambdaOnOtherAir, lambdaOnOtherFuel } from '../../../../core/mixture/carburettor.ts';
import { flameTemperature, undissociatedFlameTemperature } from '../../../../core/mixture/flame.ts';
import { ethanolBlend, FUELS, stoichiometricRatio, type Fuel } from '../../../../core/mixture/fuels.ts';
import { enthalpy, entropy, heatCapacity, SPECIES } from '../../../../core/mixture/gas-species.ts';
import type { Metre } from '../../../../shared/quantities.ts';

const ratios: readonly (readonly [Fuel, number, number])[] = [
  [FUELS.petrol, 14.6, 0.05], [FUELS.E10, 14.0, 0.1], [FUELS.E85, 9.8, 0.1], [FUELS.methanol, 6.47, 0.05], [FUELS.LPG, 15.7, 0.1], [FUELS.avgas, 14.8, 0.1],
];

describe('fuels', () => {
  it.each(ratios)('needs the usual air: $name (training tables of alternative fuels)', (fuel, usual, close) => {
    expect(Math.abs(stoichiometricRatio(fuel) - usual)).toBeLessThanOrEqual(close);
  });

  it('mixes by mass: half of each by volume at 745 and 789 kg/m3 needs the mean of the two ratios weighted by those', () => {
    const byHand = (745 * stoichiometricRatio(FUELS.petrol) + 789 * stoichiometricRatio(FUELS.ethanol)) / (745 + 789);
    const blend = ethanolBlend(0.5);
    expect(blend.ok && stoichiometricRatio(blend.value)).toBeCloseTo(byHand, 9);
  });

  it('is petrol without ethanol and ethanol without petrol', () => {
    const ratio = (share: number): number => { const blend = ethanolBlend(share); return blend.ok ? stoichiometricRatio(blend.value) : NaN; };
    expect(ratio(0)).toBeCloseTo(stoichiometricRatio(FUELS.petrol), 9);
    expect(ratio(1)).toBeCloseTo(stoichiometricRatio(FUELS.ethanol), 9);
  });

  it('refuses a share that is none', () => {
    expect(ethanolBlend(85)).toEqual({ ok: false, error: 'A share of ethanol lies between 0 and 1; 85 does not.' });
  });
});

describe('a plain carburettor', () => {
  it('richens by about 5 % per 1000 m of height (US Standard Atmosphere 1976 and the root law)', () => {
    const richer = (metres: number): number => 1 / lambdaOnOtherAir(1, standardDensity(metres as Metre) / standardDensity(0 as Metre)) - 1;
    expect(richer(1000)).toBeCloseTo(0.05, 2);
    expect(richer(3000)).toBeCloseTo(0.161, 2);
  });

  it('leans by about 4 % on E10 (calculated in training tables, 3.5 to 4 %)', () => {
    const lambda = lambdaOnOtherFuel(1, FUELS.petrol, FUELS.E10);
    expect(lambda).toBeGreaterThan(1.034);
    expect(lambda).toBeLessThan(1.043);
  });

  it('holds its lambda when the area of the jet follows the root of density', () => {
    fc.assert(fc.property(fc.double({ min: 0.4, max: 1.3, noNaN: true }), (density) => {
      const richerByJet = 1 / jetDiameterFactor(density) ** 2;
      expect(lambdaOnOtherAir(1, density) * richerByJet).toBeCloseTo(1, 12);
    }));
  });
});

describe('the atmosphere', () => {
  it('gives a height back from its pressure and from its density', () => {
    fc.assert(fc.property(fc.double({ min: -400, max: 10_900, noNaN: true }), (height) => {
      const at = height as Metre;
      expect(pressureAltitude(airPressure(at))).toBeCloseTo(height, 5);
      expect(densityAltitude(airPressure(at), airTemperature(at))).toBeCloseTo(height, 5);
      expect(airDensity(airPressure(at), airTemperature(at))).toBe(standardDensity(at));
    }));
  });

  it('is isothermal above 11 km: 12 045 Pa at 15 km (US Standard Atmosphere 1976, geopotential height, from memory)', () => {
    expect(airTemperature(15_000 as Metre)).toBeCloseTo(216.65, 6);
    expect(Math.abs(airPressure(15_000 as Metre) - 12_045)).toBeLessThan(20);
  });
});

describe('the gas data', () => {
  const all = Object.values(SPECIES);
  it('join at 1000 K: heat capacity, enthalpy and entropy of both ranges agree', () => {
    for (const species of all) {
      for (const [property, close] of [[heatCapacity, 0.01], [enthalpy, 0.01], [entropy, 0.01]] as const) {
        expect(Math.abs(property(species, 999.999) - property(species, 1000.001))).toBeLessThan(close);
      }
    }
  });

  it('hold the heats of formation of the handbook at 25 °C, kJ/mol (JANAF tables, from memory)', () => {
    const known = { CO2: -393.5, H2O: -241.8, CO: -110.5, OH: 37.3, H: 218.0, O: 249.2, NO: 90.3, N2: 0, O2: 0, H2: 0 };
    for (const [name, kilojoules] of Object.entries(known)) {
      const species = SPECIES[name as keyof typeof SPECIES];
      expect(Math.abs((enthalpy(species, 298.15) * 8.314462 * 298.15) / 1000 - kilojoules)).toBeLessThan(2.2);
    }
  });
});

describe('the flame', () => {
  const charge = fc.record({
    lambda: fc.double({ min: 0.6, max: 1.6, noNaN: true }), temperature: fc.double({ min: 280, max: 1000, noNaN: true }),
    pressure: fc.double({ min: 5e4, max: 8e6, noNaN: true }), residual: fc.double({ min: 0, max: 0.25, noNaN: true }),
    fuel: fc.constantFrom(...Object.values(FUELS)),
  });

  it('comes to equilibrium, cooler than without dissociation, hotter under pressure', () => {
    fc.assert(fc.property(charge, (one) => {
      const kelvin = flameTemperature(one);
      if (one.lambda >= 1) expect(kelvin).toBeLessThan(undissociatedFlameTemperature(one)); // rich, the split of CO and H2 without dissociation is a guess
      expect(kelvin).toBeGreaterThan(one.temperature + 600);
      expect(flameTemperature({ ...one, pressure: 2 * one.pressure })).toBeGreaterThan(kelvin - 0.01);
    }), { numRuns: 300 });
  });

  it('is cooler with burnt gas in the charge and hotter from a hot charge', () => {
    fc.assert(fc.property(charge, (one) => {
      expect(flameTemperature({ ...one, residual: one.residual + 0.05 })).toBeLessThan(flameTemperature(one));
      expect(flameTemperature({ ...one, temperature: one.temperature + 50 })).toBeGreaterThan(flameTemperature(one));
    }), { numRuns: 200 });
  });
});
