import { NINETY_PERCENT, type Band } from '../../../core/band.ts';
import { CLEAN, GOOD_INSULATION, shuntResistance, sootAfter, toAFactorOfThree, type NoseSoot } from '../../../core/soot/nose-soot.ts';
import { drawAt, type Belief } from '../../../core/thermal/belief.ts';
import { driveSeconds, prepareDrive, timeInWindow, type DriveSecond, type TimeInWindow } from '../../../core/thermal/drive.ts';
import { SELF_CLEANING, TOO_HOT } from '../../../core/thermal/limits.ts';
import { slopesAt } from '../../../core/thermal/tip.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import type { Celsius, Megohm } from '../../../shared/quantities.ts';
import { err, ok, type Result } from '../../../shared/result.ts';
import { dutyOf, heatEngine, type Setting } from './setting.ts';

/** A stretch of a drive: seconds, speed in 1/min, load from 0 to 1, lambda. */
export type Leg = { readonly seconds: number; readonly rpm: number; readonly load: number; readonly lambda: number };

const COLUMNS = [
  { name: 'seconds', least: 1, most: 3600 }, { name: 'rpm', least: 300, most: 16_000 }, { name: 'load', least: 20, most: 100 },
  { name: 'lambda', least: 0.5, most: 1.8 },
] as const;
const MOST_LEGS = 200;
const LONGEST = 4 * 3600;

/** Legs as people write them, a line each: seconds, speed, load in per cent, lambda. */
export const DRIVES = {
  'short trips in frost': '10, 1200, 45, 0.6\n40, 2000, 50, 0.72\n90, 1100, 38, 0.7\n40, 2000, 50, 0.78\n20, 1500, 50, 0.72\n30, 1100, 38, 0.7',
  commute: '30, 1200, 40, 0.75\n180, 1800, 45, 0.9\n60, 900, 35, 0.95\n400, 2200, 50, 1\n60, 900, 35, 0.95\n300, 2500, 55, 1',
  'long road': '30, 1200, 40, 0.75\n240, 2000, 50, 0.95\n1200, 3000, 65, 1\n120, 3500, 100, 0.9\n600, 3000, 65, 1',
} as const;
export type DriveName = keyof typeof DRIVES;

export type LegProblem =
  | { readonly kind: 'no line' }
  | { readonly kind: 'too many lines'; readonly lines: number; readonly most: number }
  | { readonly kind: 'too long'; readonly seconds: number; readonly most: number }
  | { readonly kind: 'cells'; readonly line: number; readonly cells: number }
  | { readonly kind: 'value'; readonly line: number; readonly column: keyof Leg; readonly cell: string; readonly least: number; readonly most: number };

function legOf(line: string, number: number): Result<Leg, readonly LegProblem[]> {
  const cells = line.split(/[,;\t]/).map((cell) => cell.trim());
  const values = cells.map(Number);
  if (cells.length !== COLUMNS.length || cells.includes('')) return err([{ kind: 'cells', line: number, cells: cells.length }]);
  const problems = COLUMNS.flatMap(({ name, least, most }, i): readonly LegProblem[] => {
    const value = values[i] ?? NaN;
    const whole = i !== 0 || Number.isInteger(value);
    return value >= least && value <= most && whole ? [] : [{ kind: 'value', line: number, column: name, cell: cells[i] ?? '', least, most }];
  });
  const [seconds = 0, rpm = 0, load = 0, lambda = 0] = values;
  return problems.length > 0 ? err(problems) : ok({ seconds, rpm, load: load / 100, lambda });
}

/** Legs of a text, or what is wrong with which line. Empty lines are passed over; commas, semicolons or tabs part the values. */
export function legsOf(text: string): Result<readonly Leg[], readonly LegProblem[]> {
  const lines = text.split('\n').map((line, i) => [line, i + 1] as const).filter(([line]) => line.trim() !== '');
  if (lines.length === 0) return err([{ kind: 'no line' }]);
  if (lines.length > MOST_LEGS) return err([{ kind: 'too many lines', lines: lines.length, most: MOST_LEGS }]);
  const legs = lines.map(([line, number]) => legOf(line, number));
  const problems = legs.flatMap((leg) => (leg.ok ? [] : leg.error));
  if (problems.length > 0) return err(problems);
  const good = legs.flatMap((leg) => (leg.ok ? [leg.value] : []));
  const seconds = good.reduce((sum, leg) => sum + leg.seconds, 0);
  return seconds > LONGEST ? err([{ kind: 'too long', seconds, most: LONGEST }]) : ok(good);
}

export const REPEATS = 20;

export type DriveAnswer = {
  /** The drive at the low end, the middle and the high end of the model's band. */
  readonly low: readonly DriveSecond[];
  readonly middle: readonly DriveSecond[];
  readonly high: readonly DriveSecond[];
  readonly windows: { readonly low: TimeInWindow; readonly middle: TimeInWindow; readonly high: TimeInWindow };
  /** Insulation after each cold repeat of the drive, from a clean nose. */
  readonly insulation: readonly Megohm[];
  /** Repeats until the insulation is no longer good; undefined: it stays good. */
  readonly foulsAfter: Band<number> | undefined;
};

function repeated(seconds: readonly DriveSecond[]): readonly Megohm[] {
  let soot: NoseSoot = CLEAN;
  return Array.from({ length: REPEATS }, () => {
    soot = sootAfter(seconds, soot);
    return shuntResistance(soot);
  });
}

/** A drive from cold, everything that a leg does not say as set. @param start °C of the whole engine */
export function driveOf(engine: Engine, setting: Setting, legs: readonly Leg[], start: number, belief: Belief): Result<DriveAnswer, readonly string[]> {
  const shape = heatEngine(engine).engine;
  const phases = legs.map(({ seconds, ...leg }) => ({ seconds, duty: dutyOf(engine, { ...setting, ...leg, inlet: start }) }));
  const drive = prepareDrive(shape, phases, start as Celsius);
  if (!drive.ok) return drive;
  const seat = { heatStep: setting.heatStep, seat: 1 };
  const hardest = drive.value.gases.reduce((best, gas) => (gas.asItStands.coefficient > best.asItStands.coefficient ? gas : best));
  const slopes = slopesAt(hardest, seat, 'nose');
  const at = (deviations: number): readonly DriveSecond[] => driveSeconds(drive.value, shape, seat, drawAt(belief, slopes, deviations));
  const [low, middle, high] = [at(-NINETY_PERCENT), at(0), at(NINETY_PERCENT)];
  const window = (seconds: readonly DriveSecond[]): TimeInWindow => timeInWindow(seconds, SELF_CLEANING.middle, TOO_HOT.middle);
  const insulation = repeated(middle);
  const fouled = insulation.findIndex((value) => value < GOOD_INSULATION);
  return ok({
    low, middle, high, insulation,
    foulsAfter: fouled < 0 ? undefined : toAFactorOfThree(fouled + 1),
    windows: { low: window(low), middle: window(middle), high: window(high) },
  });
}
