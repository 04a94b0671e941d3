import type { Celsius, Kilopascal } from '../../shared/quantities.ts';
import { celsiusToKelvin } from '../units.ts';
import { volumeAt, type Cylinder } from './cylinder.ts';

export type Strokes = 2 | 4;

/** How the engine runs, as far as its charge goes. */
export type Running = {
  /** Speed of the crank, 1/min. */
  readonly rpm: number;
  readonly manifold: Kilopascal;
  readonly exhaust: Kilopascal;
  readonly inlet: Celsius;
};

export type GasState = { readonly pressure: number /* Pa */; readonly temperature: number /* K */ };

/** The charge when the intake is effectively shut. */
export type Trapped = GasState & {
  /** Mass share of burnt gas from the cycle before. */
  readonly residual: number;
  /** kg, residual included. */
  readonly mass: number;
  /** m³ */
  readonly volume: number;
};

/** Specific gas constant of the charge, J/(kg K): air's. */
export const CHARGE_GAS_CONSTANT = 287;
/** Crank angle at which the intake is effectively shut; not the figure of the cam card. Grade: fitted to about 10 bar IMEP at full throttle. */
export const INTAKE_SHUT = -152;
const BURNT_GAS_KELVIN = 1000;
/** Grade: guess. A two-stroke's own share depends on its scavenging. */
const TWO_STROKE_RESIDUAL = 0.22;
const RESIDUAL_FACTOR = 0.75; // fitted
/** Ratio of heat capacities in place of an adiabatic one: wall loss included. Source: Heywood, 1.3 +- 0.05. Grade: memory. */
const POLYTROPIC = 1.3;

/** Warming of the charge on its way in, K: little time at high speed. Grade: fitted. */
const warming = (rpm: number): number => 8 + 22 * Math.min(1, 900 / rpm + 0.3);

/** State and mass of the charge at effective intake closing. Algebra of the ideal cycle with fitted factors. */
export function trappedCharge(cylinder: Cylinder, strokes: Strokes, { rpm, manifold, exhaust, inlet }: Running): Trapped {
  const fresh = celsiusToKelvin(inlet) + warming(rpm);
  const residual = strokes === 2 ? TWO_STROKE_RESIDUAL
    : 1 / (1 + RESIDUAL_FACTOR * cylinder.compressionRatio * (manifold / exhaust) * (BURNT_GAS_KELVIN / fresh));
  const temperature = (1 - residual) * fresh + residual * BURNT_GAS_KELVIN;
  const pressure = manifold * 1000;
  const volume = volumeAt(cylinder, INTAKE_SHUT);
  return { pressure, temperature, residual, volume, mass: (pressure * volume) / (CHARGE_GAS_CONSTANT * temperature) };
}

/** Gas pressed from one volume into another, p·Vⁿ constant. */
export function compressed({ pressure, temperature }: GasState, volumeRatio: number, n: number = POLYTROPIC): GasState {
  return { pressure: pressure * volumeRatio ** n, temperature: temperature * volumeRatio ** (n - 1) };
}

/** The charge at a crank angle before anything burns. */
export const chargeAt = (cylinder: Cylinder, trapped: Trapped, crankDegrees: number): GasState =>
  compressed(trapped, trapped.volume / volumeAt(cylinder, crankDegrees));

/** Density against air of 20 °C and 101.325 kPa. */
export const relativeDensity = ({ pressure, temperature }: GasState): number => (pressure / 101_325) * (293.15 / temperature);
