import type { Metre } from '../../shared/quantities.ts';

/** Standard atmosphere. Source: US Standard Atmosphere 1976 / ISO 2533. Grade: published. Range: -5000 m to 20 000 m. */
const SEA_LEVEL = { kelvin: 288.15, pascal: 101_325 };
const LAPSE = 0.0065; // K/m
const TROPOPAUSE = 11_000; // m
const AIR_GAS_CONSTANT = 287.053; // J/(kg K)
const GRAVITY = 9.80665; // m/s²
const PRESSURE_EXPONENT = GRAVITY / (LAPSE * AIR_GAS_CONSTANT);

/** K */
export const airTemperature = (altitude: Metre): number => SEA_LEVEL.kelvin - LAPSE * Math.min(altitude, TROPOPAUSE);

/** Pa */
export function airPressure(altitude: Metre): number {
  const kelvin = airTemperature(altitude);
  const atFoot = SEA_LEVEL.pascal * (kelvin / SEA_LEVEL.kelvin) ** PRESSURE_EXPONENT;
  return altitude <= TROPOPAUSE ? atFoot : atFoot * Math.exp((-GRAVITY * (altitude - TROPOPAUSE)) / (AIR_GAS_CONSTANT * kelvin));
}

/** Density of dry air, kg/m³. @param pressure Pa @param kelvin K */
export const airDensity = (pressure: number, kelvin: number): number => pressure / (AIR_GAS_CONSTANT * kelvin);

export const standardDensity = (altitude: Metre): number => airDensity(airPressure(altitude), airTemperature(altitude));

/** Altitude at which the standard atmosphere has a pressure, m; below the tropopause. @param pressure Pa, above 22 632 */
export const pressureAltitude = (pressure: number): Metre =>
  ((SEA_LEVEL.kelvin / LAPSE) * (1 - (pressure / SEA_LEVEL.pascal) ** (1 / PRESSURE_EXPONENT))) as Metre;

/** Altitude at which the standard atmosphere has the density of this air, m; below the tropopause. @param pressure Pa */
export function densityAltitude(pressure: number, kelvin: number): Metre {
  const ratio = airDensity(pressure, kelvin) / airDensity(SEA_LEVEL.pascal, SEA_LEVEL.kelvin);
  return ((SEA_LEVEL.kelvin / LAPSE) * (1 - ratio ** (1 / (PRESSURE_EXPONENT - 1)))) as Metre;
}
