import { chargeAt, CHARGE_GAS_CONSTANT, INTAKE_SHUT, trappedCharge, type GasState, type Running, type Strokes, type Trapped } from '../charge/trapped-charge.ts';
import { pistonSpeed, sweptVolume, volumeAt, wallArea, type Cylinder } from '../charge/cylinder.ts';
import { flameTemperature } from '../mixture/flame.ts';
import { stoichiometricRatio, type Fuel } from '../mixture/fuels.ts';
import { burnDegrees, burntShare, combustionEfficiency, heatCapacityRatio } from './combustion.ts';
import { wallCoefficient } from './wall.ts';

export type Work = Running & {
  readonly fuel: Fuel;
  readonly lambda: number;
  /** Degrees before firing top dead centre. */
  readonly advance: number;
  /** K */
  readonly coolantKelvin: number;
};

/** What burns, known before the burn is computed; the flame is the costly part. */
export type Ignition = { readonly trapped: Trapped; readonly spark: GasState; readonly flame: number; readonly fuelMass: number };

/** Means over the cycle that the plug and the walls feel. */
export type CycleMeans = {
  /** W/(m² K) */
  readonly coefficient: number;
  /** Gas at the walls, weighted by the coefficient, K. */
  readonly wallGas: number;
  /** Gas at the plug if it did not mix with the rest, and how far full mixing would pull it down, K. */
  readonly unmixedGas: number;
  readonly mixingPull: number;
  /** Partial pressure of oxygen at the plug, atm. */
  readonly oxygen: number;
  /** Gross indicated mean effective pressure, Pa. */
  readonly imep: number;
  /** Exhaust after blow-down, K. */
  readonly exhaustKelvin: number;
  /** Heat of the fuel, W for one cylinder, and its flow, kg/s. */
  readonly fuelPower: number;
  readonly fuelFlow: number;
};

export type Engine = { readonly cylinder: Cylinder; readonly strokes: Strokes };

const STEP = 2; // degrees of crank
/** Exhaust opening, degrees after top dead centre. Grade: typical. */
const EXHAUST_OPENS = { 2: 100, 4: 130 };
const BLOW_DOWN = 18; // degrees, fitted
const BURNT_EXPANSION = (1.24 - 1) / 1.24;
const OXYGEN_IN_AIR = 0.2095;
const ATMOSPHERE = 101_325; // Pa
/** The walls stand this far above the coolant while the gas is computed, K. */
const WALL_ABOVE_COOLANT = 60;

type Moment = { readonly degrees: number; readonly volume: number; readonly pressure: number; readonly kelvin: number; readonly burnt: number };

/** Everything up to the spark, and the flame it lights. */
export function ignite({ cylinder, strokes }: Engine, work: Work): Ignition {
  const trapped = trappedCharge(cylinder, strokes, work);
  const spark = chargeAt(cylinder, trapped, -work.advance);
  const { fuel, lambda } = work;
  const flame = flameTemperature({ fuel, lambda, temperature: spark.temperature, pressure: spark.pressure, residual: trapped.residual });
  return { trapped, spark, flame, fuelMass: ((1 - trapped.residual) * trapped.mass) / (1 + lambda * stoichiometricRatio(fuel)) };
}

type Expansion = { readonly engine: Engine; readonly work: Work; readonly ignition: Ignition; readonly burnScale: number };

/** Compression, burn and expansion: V·dp + g·p·dV = (g - 1)(dQ - dQwall), centred steps. */
function closedPart({ engine: { cylinder, strokes }, work, ignition: { trapped, fuelMass }, burnScale }: Expansion): Moment[] {
  const { advance, lambda, rpm, fuel, coolantKelvin } = work;
  const duration = burnScale * burnDegrees({ lambda, rpm, residual: trapped.residual, trappedKelvin: trapped.temperature, strokes });
  const heat = combustionEfficiency(lambda) * fuelMass * fuel.heatingValue;
  const speed = pistonSpeed(cylinder, rpm);
  const moments: Moment[] = [];
  for (let degrees = INTAKE_SHUT; degrees < -advance; degrees += STEP) {
    const { pressure, temperature } = chargeAt(cylinder, trapped, degrees);
    moments.push({ degrees, volume: volumeAt(cylinder, degrees), pressure, kelvin: temperature, burnt: 0 });
  }
  const first = chargeAt(cylinder, trapped, -advance);
  let now: Moment = { degrees: -advance, volume: volumeAt(cylinder, -advance), pressure: first.pressure, kelvin: first.temperature, burnt: 0 };
  while (now.degrees < EXHAUST_OPENS[strokes]) {
    moments.push(now);
    const degrees = now.degrees + STEP;
    const volume = volumeAt(cylinder, degrees);
    const burnt = burntShare((degrees + advance) / duration);
    const wall = wallCoefficient(now.volume, now.pressure, now.kelvin, speed) * wallArea(cylinder, now.degrees)
      * (now.kelvin - coolantKelvin - WALL_ABOVE_COOLANT) * (STEP / (6 * rpm));
    const gamma = heatCapacityRatio(now.kelvin);
    const [mid, change] = [(volume + now.volume) / 2, volume - now.volume];
    const gained = (gamma - 1) * (heat * (burnt - now.burnt) - wall);
    const pressure = Math.max(1000, (now.pressure * (mid - (gamma * change) / 2) + gained) / (mid + (gamma * change) / 2));
    now = { degrees, volume, pressure, burnt, kelvin: (pressure * volume) / (trapped.mass * CHARGE_GAS_CONSTANT) };
  }
  return [...moments, now];
}

/** Exhaust and intake: the gas blows down to the exhaust pressure, is pushed out, and fresh charge comes in. */
function openPart({ engine: { cylinder, strokes }, work, ignition: { trapped } }: Expansion, last: Moment): Moment[] {
  const exhaust = work.exhaust * 1000;
  const ends = INTAKE_SHUT + (strokes === 2 ? 360 : 720);
  const freshFrom = strokes === 2 ? 180 : 360;
  const moments: Moment[] = [];
  for (let degrees = last.degrees + STEP; degrees < ends; degrees += STEP) {
    const volume = volumeAt(cylinder, degrees);
    const pressure = exhaust + (last.pressure - exhaust) * Math.exp(-(degrees - last.degrees) / BLOW_DOWN);
    const gamma = heatCapacityRatio(last.kelvin);
    moments.push(degrees >= freshFrom
      ? { degrees, volume, pressure: trapped.pressure, kelvin: trapped.temperature, burnt: 0 }
      : { degrees, volume, pressure, kelvin: last.kelvin * (pressure / last.pressure) ** ((gamma - 1) / gamma), burnt: 1 });
  }
  return moments;
}

/** Gas at the plug, weighted by the coefficient, K; `mixing` from 0, not at all, to 1. */
export const plugGas = ({ unmixedGas, mixingPull }: CycleMeans, mixing: number): number => unmixedGas - mixing * mixingPull;

/** Share of oxygen at the plug, where the charge burns first. */
function oxygenShare(burning: boolean, { lambda }: Work, residual: number): number {
  const left = Math.max(0, 1 - 1 / lambda);
  return OXYGEN_IN_AIR * (burning ? left : 1 - residual + residual * left);
}

/**
 * One cycle of the engine, reduced to what plug and walls feel. The gas at the plug burns first and is then pressed together with the rest, so it is
 * hotter than the mean until it has mixed. Weighting by the coefficient is why advance and mixture matter so much.
 * @param burnScale how much longer the burn takes than the model says, 1 as it stands
 */
export function cycleMeans(engine: Engine, work: Work, ignition: Ignition, burnScale: number): CycleMeans {
  const given = { engine, work, ignition, burnScale };
  const closed = closedPart(given);
  const last = closed.at(-1);
  if (last === undefined) throw new Error('a cycle has moments');
  const open = openPart(given, last);
  const felt = feltOver([...closed, ...open], given);
  const fuelFlow = (ignition.fuelMass * work.rpm) / (engine.strokes === 2 ? 60 : 120);
  const gamma = heatCapacityRatio(last.kelvin);
  return {
    ...felt, fuelFlow, fuelPower: fuelFlow * work.fuel.heatingValue,
    exhaustKelvin: last.kelvin * ((work.exhaust * 1000) / last.pressure) ** ((gamma - 1) / gamma),
  };
}

function feltOver(moments: readonly Moment[], { engine, work, ignition }: Expansion): Omit<CycleMeans, 'fuelFlow' | 'fuelPower' | 'exhaustKelvin'> {
  const speed = pistonSpeed(engine.cylinder, work.rpm);
  const sums = { h: 0, kernel: 0, pull: 0, wall: 0, oxygen: 0, work: 0 };
  let before: Moment | undefined;
  for (const moment of moments) {
    const { degrees, volume, pressure, kelvin, burnt } = moment;
    const h = wallCoefficient(volume, pressure, kelvin, speed);
    const burning = burnt > 0;
    const kernel = burning ? ignition.flame * (pressure / ignition.spark.pressure) ** BURNT_EXPANSION : kelvin;
    sums.h += h;
    sums.wall += h * kelvin;
    sums.kernel += h * kernel;
    sums.pull += h * burnt * (kernel - kelvin);
    sums.oxygen += (pressure / ATMOSPHERE) * oxygenShare(burning, work, ignition.trapped.residual);
    if (before !== undefined && degrees <= 180) sums.work += ((pressure + before.pressure) / 2) * (volume - before.volume);
    before = moment;
  }
  const { h } = sums;
  const compressing = work.manifold * 1000 * (volumeAt(engine.cylinder, 180) - ignition.trapped.volume); // from bottom dead centre to intake closing
  return {
    coefficient: h / moments.length, wallGas: sums.wall / h, unmixedGas: sums.kernel / h, mixingPull: sums.pull / h,
    oxygen: sums.oxygen / moments.length, imep: (sums.work - compressing) / sweptVolume(engine.cylinder),
  };
}
