/** Breakdown of gas between electrodes. Gaps in mm, density against air of 20 °C and 101.325 kPa, answers in kV unless said. */

/**
 * Uniform field in air: 24.22·(density·gap) + 6.08·root(density·gap), gap in cm. Range: density times gap 0.01 to 20 cm.
 * Source: Naidu and Kamaraju, High Voltage Engineering, example 2.1. Grade: published.
 */
export function uniformFieldVoltage(density: number, gap: number): number {
  const centimetres = (density * gap) / 10;
  return 24.22 * centimetres + 6.08 * Math.sqrt(centimetres);
}

/** Gas constants of Townsend's law: A in 1/(cm Torr), B in V/(cm Torr), and the yield of electrons at the cathode. */
export type TownsendGas = { readonly a: number; readonly b: number; readonly yield: number };
/** Air. Source: Wadhwa, High Voltage Engineering, example 1.4. Grade: published. */
const TOWNSEND_AIR: TownsendGas = { a: 12, b: 365, yield: 0.02 };

/**
 * Paschen's law, V, for teaching; at engine density it is too high by a tenth or more.
 * @param torrCentimetres pressure times gap; above the pole of the formula
 */
export const paschenVoltage = (torrCentimetres: number, { a, b, yield: y }: TownsendGas = TOWNSEND_AIR): number =>
  (b * torrCentimetres) / (Math.log(a * torrCentimetres) - Math.log(Math.log(1 + 1 / y)));

/** Where Paschen's curve is lowest: pressure times gap in Torr cm, and V. Source: zero of the derivative. */
export function paschenMinimum({ a, b, yield: y }: TownsendGas = TOWNSEND_AIR): { readonly torrCentimetres: number; readonly volts: number } {
  const loss = Math.log(1 + 1 / y);
  return { torrCentimetres: (Math.E * loss) / a, volts: (Math.E * b * loss) / a };
}

/**
 * Correlation fitted on engines: 4.3 + 136·p/T + 324·p·d/T. Source: Pashley, Stone and Roberts, SAE 2000-01-0245. Grade: memory, could not be opened.
 * @param pressure Pa @param kelvin gas at the plug @param gap mm
 */
export function engineCorrelationVoltage(pressure: number, kelvin: number, gap: number): number {
  const barPerKelvin = pressure / 1e5 / kelvin;
  return 4.3 + 136 * barPerKelvin + 324 * barPerKelvin * gap;
}
