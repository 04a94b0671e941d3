import type { Engine } from '../../shared/formats/engine.ts';
import type { Celsius, Megohm } from '../../shared/quantities.ts';
import { ok, type Result } from '../../shared/result.ts';
import { NINETY_PERCENT, type Band } from '../band.ts';
import { once } from '../once.ts';
import { CLEAN, GOOD_INSULATION, shuntResistance, sootSecondMore, toAFactorOfThree, type NoseSoot } from '../soot/nose-soot.ts';
import { drawAt, type Belief } from '../thermal/belief.ts';
import { driveSeconds, prepareDrive, timeInWindow, type DriveProblem, type DriveSecond, type Phase, type TimeInWindow } from '../thermal/drive.ts';
import type { Leg } from '../thermal/drive-log.ts';
import { SELF_CLEANING, TOO_HOT } from '../thermal/limits.ts';
import { slopesAt, type Duty } from '../thermal/tip.ts';
import { dutyOf, heatEngine, type Setting } from './setting.ts';

/** A drive to be computed. What a leg does not say is as in the setting; `start`: °C of the whole engine and of the air. */
export type DriveQuestion = {
  readonly engine: Engine; readonly setting: Setting; readonly legs: readonly Leg[]; readonly start: number; readonly belief: Belief;
};

/** Cold starts of the same drive that are computed, each after a full cool-down. */
export const REPEATS = 20;
const MOST_POINTS = 300;
/** A mixture this rich or richer leaves soot. Grade: fitted, as the yield of soot is. */
const RICH = 0.9;

export type DriveAnswer = {
  /** Length of the drive, s. */
  readonly seconds: number;
  /** Tip over the drive at the low end, the middle and the high end of the model's band, °C at s from the start; at most some hundreds of points. */
  readonly course: readonly { readonly at: number; readonly low: number; readonly middle: number; readonly high: number }[];
  readonly windows: { readonly low: TimeInWindow; readonly middle: TimeInWindow; readonly high: TimeInWindow };
  /** Share of the drive in which the tip is below self-cleaning while the mixture is rich, 0 to 1: soot comes and nothing takes it. */
  readonly sooting: number;
  /** Insulation over all repeats, one point for each stretch of driving. `drives` counts drives done, with parts. */
  readonly fouling: readonly { readonly drives: number; readonly insulation: Megohm }[];
  /** Insulation after each repeat, from a clean nose. */
  readonly insulation: readonly Megohm[];
  /** Repeats until the insulation is no longer good; undefined: it stays good. */
  readonly foulsAfter: Band<number> | undefined;
};

const celsius = ({ plug }: DriveSecond): number => plug.nose - 273.15;

function courseOf(low: readonly DriveSecond[], middle: readonly DriveSecond[], high: readonly DriveSecond[]): DriveAnswer['course'] {
  const every = Math.max(1, Math.floor(middle.length / MOST_POINTS));
  return middle.flatMap((second, i) => {
    const [cold, hot] = [low[i], high[i]];
    if (i % every !== 0 || cold === undefined || hot === undefined) return [];
    return [{ at: second.at, low: celsius(cold), middle: celsius(second), high: celsius(hot) }];
  });
}

/** Soot of the drive over and over, with a full cool-down between. */
function foulingOf(seconds: readonly DriveSecond[]): Pick<DriveAnswer, 'fouling' | 'insulation'> {
  const every = Math.max(1, Math.floor((seconds.length * REPEATS) / MOST_POINTS));
  const fouling: { drives: number; insulation: Megohm }[] = [{ drives: 0, insulation: shuntResistance(CLEAN) }];
  const insulation: Megohm[] = [];
  let soot: NoseSoot = CLEAN;
  let done = 0;
  for (let repeat = 0; repeat < REPEATS; repeat += 1) {
    for (const second of seconds) {
      soot = sootSecondMore(soot, second);
      done += 1;
      if (done % every === 0) fouling.push({ drives: done / seconds.length, insulation: shuntResistance(soot) });
    }
    insulation.push(shuntResistance(soot));
  }
  return { fouling, insulation };
}

/** Legs that run alike share one duty, so that its cycle is computed once. */
function phasesOf({ engine, setting, legs, start }: DriveQuestion): readonly Phase[] {
  const known = new Map<string, Duty>();
  return legs.map(({ seconds, rpm, load, lambda }) =>
    ({ seconds, duty: once(known, `${rpm} ${load} ${lambda}`, () => dutyOf(engine, { ...setting, rpm, load, lambda, inlet: start })) }));
}

/** A drive from cold and its repeats. Errors as of `prepareDrive`. */
export function driveAnswer(question: DriveQuestion): Result<DriveAnswer, readonly DriveProblem[]> {
  const { engine, setting, start, belief } = question;
  const shape = heatEngine(engine).engine;
  const drive = prepareDrive(shape, phasesOf(question), start as Celsius);
  if (!drive.ok) return drive;
  const seat = { heatStep: setting.heatStep, seat: 1 };
  const hardest = drive.value.gases.reduce((best, gas) => (gas.asItStands.coefficient > best.asItStands.coefficient ? gas : best));
  const slopes = slopesAt(hardest, seat, 'nose');
  const at = (deviations: number): readonly DriveSecond[] => driveSeconds(drive.value, shape, seat, drawAt(belief, slopes, deviations));
  const [low, middle, high] = [at(-NINETY_PERCENT), at(0), at(NINETY_PERCENT)];
  const window = (seconds: readonly DriveSecond[]): TimeInWindow => timeInWindow(seconds, SELF_CLEANING.middle, TOO_HOT.middle);
  const { fouling, insulation } = foulingOf(middle);
  const fouled = insulation.findIndex((value) => value < GOOD_INSULATION);
  return ok({
    seconds: middle.length, course: courseOf(low, middle, high), fouling, insulation,
    windows: { low: window(low), middle: window(middle), high: window(high) },
    sooting: middle.filter((second) => second.lambda < RICH && celsius(second) < SELF_CLEANING.middle).length / middle.length,
    foulsAfter: fouled < 0 ? undefined : toAFactorOfThree(fouled + 1),
  });
}
