import type { Celsius, Kelvin } from '../../shared/quantities.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import type { Outside } from '../band.ts';
import { sweptVolume } from '../charge/cylinder.ts';
import { celsiusToKelvin, kelvinToCelsius } from '../units.ts';
import type { CycleMeans, Engine } from './cycle.ts';
import { headTemperature, plugTemperatures, type PlugSeat, type PlugTemperatures } from './plug-network.ts';
import { gasAtPlug, meansOf, type Duty, type GasAtPlug } from './tip.ts';
import { AS_IT_STANDS, numbersOf, type Uncertain } from './uncertain.ts';

/** A stretch of running at one duty; its coolant temperature is what the thermostat holds. */
export type Phase = { readonly seconds: number; readonly duty: Duty };

/** One second of the drive. Temperatures in K. */
export type DriveSecond = {
  /** From the start, s. */
  readonly at: number;
  readonly plug: PlugTemperatures;
  readonly head: number;
  readonly coolant: number;
  /** Oxygen at the plug, atm; fuel of one cylinder, kg/s; lambda. */
  readonly oxygen: number;
  readonly fuelFlow: number;
  readonly lambda: number;
};

const HEAD_SECONDS = 25; // time constant, fitted
const COOLANT_CAPACITY = 24e6; // J/K per m³ of displacement, fitted
const COOLANT_SHARE = 0.28; // of the fuel's power, fitted
/** A whole day; longer is surely a mistake. */
const LONGEST_DRIVE = 86_400;
const SOAK_FROM: Celsius = -60 as Celsius;

type State = { readonly plug: PlugTemperatures; readonly head: number; readonly coolant: number };
type Run = { readonly engine: Engine; readonly seat: PlugSeat; readonly draw: Uncertain };

/** One second of implicit Euler: coolant, then head, then plug. */
function secondLater(state: State, means: CycleMeans, thermostat: number, { engine, seat, draw }: Run): State {
  const numbers = numbersOf(draw);
  const warming = (COOLANT_SHARE * means.fuelPower) / (COOLANT_CAPACITY * sweptVolume(engine.cylinder));
  const coolant = state.coolant < thermostat ? Math.min(thermostat, state.coolant + warming) : thermostat;
  const head = (state.head + headTemperature(means, coolant, numbers.head) / HEAD_SECONDS) / (1 + 1 / HEAD_SECONDS);
  return { coolant, head, plug: plugTemperatures(means, head, seat, numbers, { temperatures: state.plug, seconds: 1 }) };
}

/** Why a drive is not computed. Seconds and °C. */
export type DriveProblem =
  | Outside
  | { readonly kind: 'not whole seconds'; readonly phase: number; readonly seconds: number }
  | { readonly kind: 'drive too long'; readonly seconds: number; readonly most: number }
  | { readonly kind: 'start too cold'; readonly celsius: number; readonly least: number };

function problemsOf(phases: readonly Phase[], start: Celsius): readonly DriveProblem[] {
  const seconds = phases.reduce((sum, phase) => sum + phase.seconds, 0);
  return [
    ...phases.flatMap((phase, i): readonly DriveProblem[] =>
      (Number.isInteger(phase.seconds) && phase.seconds > 0 ? [] : [{ kind: 'not whole seconds', phase: i + 1, seconds: phase.seconds }])),
    ...(seconds > LONGEST_DRIVE ? [{ kind: 'drive too long', seconds, most: LONGEST_DRIVE } as const] : []),
    ...(start < SOAK_FROM ? [{ kind: 'start too cold', celsius: start, least: SOAK_FROM } as const] : []),
  ];
}

export type Drive = { readonly phases: readonly Phase[]; readonly gases: readonly GasAtPlug[]; readonly start: Celsius };

/** The costly part of a drive, once for every plug and every draw. @param start temperature of the whole engine at the start */
export function prepareDrive(engine: Engine, phases: readonly Phase[], start: Celsius): Result<Drive, readonly DriveProblem[]> {
  const problems = problemsOf(phases, start);
  if (problems.length > 0) return err(problems);
  const known = new Map<Duty, GasAtPlug>();
  for (const { duty } of phases) {
    if (known.has(duty)) continue;
    const gas = gasAtPlug(engine, duty);
    if (!gas.ok) return gas;
    known.set(duty, gas.value);
  }
  return ok({ phases, start, gases: phases.flatMap(({ duty }) => known.get(duty) ?? []) });
}

/**
 * Second by second, from a soak at one temperature. The gas of a phase is computed once, with the warm coolant of its duty; heat stored in nose,
 * electrodes, head and coolant is followed. Tends to the steady state of `tipBand`.
 */
export function driveSeconds({ phases, gases, start }: Drive, engine: Engine, seat: PlugSeat, draw: Uncertain = AS_IT_STANDS): readonly DriveSecond[] {
  const cold = celsiusToKelvin(start);
  let state: State = { coolant: cold, head: cold, plug: { nose: cold, centre: cold, ground: cold, shell: cold } };
  let at = 0;
  const run = { engine, seat, draw };
  return phases.flatMap(({ seconds, duty }, i) => {
    const gas = gases[i];
    if (gas === undefined) return [];
    const means = meansOf(gas, draw.burn);
    return Array.from({ length: seconds }, () => {
      state = secondLater(state, means, gas.coolantKelvin, run);
      at += 1;
      return { at, ...state, oxygen: means.oxygen, fuelFlow: means.fuelFlow, lambda: duty.lambda };
    });
  });
}

export type TimeInWindow = { readonly below: number; readonly inside: number; readonly above: number };

/** Seconds that the tip spent below, in and above a window of °C. */
export function timeInWindow(seconds: readonly DriveSecond[], from: number, to: number): TimeInWindow {
  const tips = seconds.map(({ plug }) => kelvinToCelsius(plug.nose as Kelvin));
  const below = tips.filter((t) => t < from).length;
  const above = tips.filter((t) => t > to).length;
  return { below, above, inside: tips.length - below - above };
}
