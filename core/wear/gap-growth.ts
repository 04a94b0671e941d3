import { intervalAt, leastSquares, type Interval, type Line } from '../statistics/line.ts';

/** A gap in mm after a running length in 1000 km or in hours, one unit a set. */
export type GapReading = { readonly at: number; readonly gap: number };

export type ElectrodeMetal = 'nickel' | 'platinum' | 'iridium';
export type Rate = { readonly low: number; readonly middle: number; readonly high: number };

/**
 * Growth where nobody measured, mm per 1000 km. Nickel: sources disagree, 0.003 to 0.0095 (US service press), 0.005 (utility-vehicle manual),
 * 0.010 to 0.015 (trade training text); the range takes in all. Platinum and iridium: guess.
 */
export const DEFAULT_GROWTH: Record<ElectrodeMetal, Rate> = {
  nickel: { low: 0.003, middle: 0.009, high: 0.015 },
  platinum: { low: 0.002, middle: 0.003, high: 0.004 },
  iridium: { low: 0.0015, middle: 0.002, high: 0.003 },
};

/** Repeatability of a wire gauge, mm. Grade: common practice. */
const GAUGE = 0.02;
const CONFIDENCE = 0.95;

/** Why a forecast is weaker than it looks. */
export type GapNote = 'no reading' | 'one reading' | 'two readings' | 'three readings' | 'one running length' | 'no late bound' | 'no default';

/** When the gap reaches the limit; a bound that does not exist is undefined: not bounded. */
export type GapForecast = {
  /** `record`: the line through the set's own readings. `default`: a rate for the metal, from the last reading on; no interval of its own. */
  readonly from: 'record' | 'default';
  readonly early: number | undefined;
  readonly likely: number | undefined;
  readonly late: number | undefined;
  readonly notes: readonly GapNote[];
};

const FARTHEST = 50; // times the running so far

/** First running length, in steps of a two-hundredth of the running so far, at which a curve reaches the limit. */
function crossing(limit: number, from: number, span: number, curve: (at: number) => number): number | undefined {
  const step = span / 200;
  for (let i = 0; i <= FARTHEST * 200; i += 1) if (curve(from + i * step) >= limit) return from + i * step;
  return undefined;
}

/** Where one more reading should lie, mm, 95 %; undefined for fewer than three readings, which leave nothing to judge by. */
export function gapInterval(readings: readonly GapReading[], at: number): Interval | undefined {
  const line = fit(readings);
  return line === undefined ? undefined : intervalAt(line, at, 'next', CONFIDENCE);
}

const fit = (readings: readonly GapReading[]): Line | undefined => leastSquares(readings.map(({ at, gap }) => ({ x: at, y: gap })), GAUGE);

function fromRecord(line: Line, readings: readonly GapReading[], limit: number): GapForecast {
  const lengths = readings.map(({ at }) => at);
  const last = Math.max(...lengths);
  const span = Math.max(last - Math.min(...lengths), last / 10);
  const at = (curve: (x: number) => number): number | undefined => crossing(limit, last, span, curve);
  const late = at((x) => intervalAt(line, x, 'next', CONFIDENCE).low);
  return {
    from: 'record', late,
    early: at((x) => intervalAt(line, x, 'next', CONFIDENCE).high),
    likely: at((x) => line.intercept + line.slope * x),
    notes: [
      ...(late === undefined ? ['no late bound' as const] : []),
      ...(line.count === 3 ? ['three readings' as const] : []),
    ],
  };
}

const FEW: readonly GapNote[] = ['no reading', 'one reading', 'two readings'];

/**
 * When a set's gap reaches its limit. Three readings or more: least squares and its prediction interval. Fewer: the default rate of the metal.
 * Gap alone understates early wear: edges round, and voltage rises, while the gap hardly moves.
 * @param limit mm @param metal undefined where no default rate is known: by the hour, or of an unknown metal
 */
export function gapForecast(readings: readonly GapReading[], limit: number, metal: ElectrodeMetal | undefined): GapForecast {
  const line = fit(readings);
  if (line !== undefined) return fromRecord(line, readings, limit);
  const last = [...readings].sort((a, b) => a.at - b.at).at(-1);
  const notes = [FEW[readings.length] ?? 'one running length', ...(metal === undefined ? ['no default' as const] : [])];
  if (last === undefined || metal === undefined) return { from: 'default', early: undefined, likely: undefined, late: undefined, notes };
  const { low, middle, high } = DEFAULT_GROWTH[metal];
  const reached = (rate: number): number => last.at + Math.max(0, limit - last.gap) / rate;
  return { from: 'default', early: reached(high), likely: reached(middle), late: reached(low), notes };
}
