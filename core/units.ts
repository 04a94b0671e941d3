import type {
  Celsius, Fahrenheit, Inch, Kelvin, Kilometre, Kilopascal, Mile, Millimetre, NewtonMetre, PoundFoot, Psi,
} from '../shared/quantities.ts';

/*
 * Conversions by exact definitions: the international inch, foot and mile (1959), the avoirdupois pound and standard gravity, as given in
 * NIST Special Publication 811, appendix B. No rounding here; a number is rounded where it is shown.
 */

const MM_PER_INCH = 25.4;
const KM_PER_MILE = 1.609344;
const METRES_PER_FOOT = 0.3048;
const NEWTONS_PER_POUND_FORCE = 4.4482216152605;
const N_M_PER_LB_FT = NEWTONS_PER_POUND_FORCE * METRES_PER_FOOT;
const KPA_PER_PSI = NEWTONS_PER_POUND_FORCE / (MM_PER_INCH / 1000) ** 2 / 1000;
const ZERO_CELSIUS_IN_KELVIN = 273.15;

export const mmToInch = (length: Millimetre): Inch => (length / MM_PER_INCH) as Inch;
export const inchToMm = (length: Inch): Millimetre => (length * MM_PER_INCH) as Millimetre;

export const kmToMile = (distance: Kilometre): Mile => (distance / KM_PER_MILE) as Mile;
export const mileToKm = (distance: Mile): Kilometre => (distance * KM_PER_MILE) as Kilometre;

export const kPaToPsi = (pressure: Kilopascal): Psi => (pressure / KPA_PER_PSI) as Psi;
export const psiToKPa = (pressure: Psi): Kilopascal => (pressure * KPA_PER_PSI) as Kilopascal;

export const nmToLbFt = (torque: NewtonMetre): PoundFoot => (torque / N_M_PER_LB_FT) as PoundFoot;
export const lbFtToNm = (torque: PoundFoot): NewtonMetre => (torque * N_M_PER_LB_FT) as NewtonMetre;

/** A temperature on another scale; not for differences, which have no offset. */
export const celsiusToKelvin = (temperature: Celsius): Kelvin => (temperature + ZERO_CELSIUS_IN_KELVIN) as Kelvin;
export const kelvinToCelsius = (temperature: Kelvin): Celsius => (temperature - ZERO_CELSIUS_IN_KELVIN) as Celsius;
export const celsiusToFahrenheit = (temperature: Celsius): Fahrenheit => (temperature * 1.8 + 32) as Fahrenheit;
export const fahrenheitToCelsius = (temperature: Fahrenheit): Celsius => ((temperature - 32) / 1.8) as Celsius;
