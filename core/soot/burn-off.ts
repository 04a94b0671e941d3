import { GAS_CONSTANT } from '../mixture/gas-species.ts';

/**
 * J/mol. Published range 110 to 116 kJ/mol for engine soot with metals in it, 162 +- 3 for flame soot: Kim, Fletcher and Zachariah, Environ. Sci. Technol. 39
 * (2005) 4021. The lower end was chosen, because flame soot would need hours at 500 °C, against all practice.
 */
export const ACTIVATION_ENERGY = 115_000;
const REFERENCE_KELVIN = 723.15; // 450 °C
const REFERENCE_SECONDS = 1500; // fitted
const REFERENCE_OXYGEN = 0.1; // atm

/** Seconds in which dry soot falls to a third (1/e). Good to a factor of 3 at best. @param kelvin surface @param oxygen partial pressure, atm, above 0 */
export const burnOffSeconds = (kelvin: number, oxygen: number): number =>
  REFERENCE_SECONDS * Math.exp((ACTIVATION_ENERGY / GAS_CONSTANT) * (1 / kelvin - 1 / REFERENCE_KELVIN)) * (REFERENCE_OXYGEN / oxygen);

/**
 * Soot burning in oxygen, g/(cm² s), for comparison above 1000 K only. Source: Nagle and Strickland-Constable (1962), constants as published.
 * @param oxygen partial pressure, atm
 */
export function hotSootRate(kelvin: number, oxygen: number): number {
  const kA = 20 * Math.exp(-15_098 / kelvin);
  const kB = 4.46e-3 * Math.exp(-7650 / kelvin);
  const kT = 1.51e5 * Math.exp(-48_817 / kelvin);
  const kZ = 21.3 * Math.exp(2063 / kelvin);
  const x = 1 / (1 + kT / (kB * oxygen));
  return 12 * ((kA * oxygen * x) / (1 + kZ * oxygen) + kB * oxygen * (1 - x));
}
