import type {
  Celsius, Fahrenheit, Inch, Kelvin, Kilometre, Kilopascal, Mile, Millimetre, NewtonMetre, PoundFoot, Psi,
} from '../shared/quantities.ts';

/*
 * Conversions by exact definitions: the international inch, foot and mile (1959), the avoirdupois pound and standard gravity, as given in
 * NIST Special Publication 811, appendix B. No rounding here; a number is rounded where it is shown.
 */

const METRES_PER_FOOT = 0.3048;
const NEWTONS_PER_POUND_FORCE = 4.4482216152605;

/** What one of the customary unit is in the unit of the sheet. */
export const PER_UNIT = {
  inch: 25.4, // mm
  foot: METRES_PER_FOOT, // m
  mile: 1.609344, // km
  psi: NEWTONS_PER_POUND_FORCE / 0.0254 ** 2 / 1000, // kPa
  poundFoot: NEWTONS_PER_POUND_FORCE * METRES_PER_FOOT, // N·m
  poundForce: NEWTONS_PER_POUND_FORCE / 1000, // kN
  fahrenheit: 1 / 1.8, // K of difference
} as const;
/** Where the Fahrenheit scale stands at 0 °C. */
export const FAHRENHEIT_AT_0_C = 32;
const ZERO_CELSIUS_IN_KELVIN = 273.15;

export const mmToInch = (length: Millimetre): Inch => (length / PER_UNIT.inch) as Inch;
export const inchToMm = (length: Inch): Millimetre => (length * PER_UNIT.inch) as Millimetre;

export const kmToMile = (distance: Kilometre): Mile => (distance / PER_UNIT.mile) as Mile;
export const mileToKm = (distance: Mile): Kilometre => (distance * PER_UNIT.mile) as Kilometre;

export const kPaToPsi = (pressure: Kilopascal): Psi => (pressure / PER_UNIT.psi) as Psi;
export const psiToKPa = (pressure: Psi): Kilopascal => (pressure * PER_UNIT.psi) as Kilopascal;

export const nmToLbFt = (torque: NewtonMetre): PoundFoot => (torque / PER_UNIT.poundFoot) as PoundFoot;
export const lbFtToNm = (torque: PoundFoot): NewtonMetre => (torque * PER_UNIT.poundFoot) as NewtonMetre;

/** A temperature on another scale; not for differences, which have no offset. */
export const celsiusToKelvin = (temperature: Celsius): Kelvin => (temperature + ZERO_CELSIUS_IN_KELVIN) as Kelvin;
export const kelvinToCelsius = (temperature: Kelvin): Celsius => (temperature - ZERO_CELSIUS_IN_KELVIN) as Celsius;
export const celsiusToFahrenheit = (temperature: Celsius): Fahrenheit => (temperature / PER_UNIT.fahrenheit + FAHRENHEIT_AT_0_C) as Fahrenheit;
export const fahrenheitToCelsius = (temperature: Fahrenheit): Celsius => ((temperature - FAHRENHEIT_AT_0_C) * PER_UNIT.fahrenheit) as Celsius;
