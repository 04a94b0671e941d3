import { err, ok, type Result } from '../../shared/result.ts';

/** A stretch of a drive: seconds, speed in r/min, load and lambda; load is the share of the air the engine could take, 0 to 1. */
export type Leg = { readonly seconds: number; readonly rpm: number; readonly load: number; readonly lambda: number };

type Column = { readonly name: 'time' | keyof Leg; readonly least: number; readonly most: number; readonly whole?: true };
const REST: readonly Column[] = [{ name: 'rpm', least: 300, most: 16_000 }, { name: 'load', least: 20, most: 100 }, { name: 'lambda', least: 0.5, most: 1.8 }];
const LEG_COLUMNS: readonly Column[] = [{ name: 'seconds', least: 1, most: 3600, whole: true }, ...REST];
/** 4 h; longer than any drive from cold that matters. */
const LONGEST = 4 * 3600;
const LOG_COLUMNS: readonly Column[] = [{ name: 'time', least: 0, most: 1e9 }, ...REST];
const MOST_LEGS = 200;
const MOST_SAMPLES = 20_000;

/** What is wrong with legs or a log. `line` counts from 1 in the text as it was given. */
export type LegProblem =
  | { readonly kind: 'no line' }
  | { readonly kind: 'one sample' }
  | { readonly kind: 'too many lines'; readonly lines: number; readonly most: number }
  | { readonly kind: 'too long'; readonly seconds: number; readonly most: number }
  | { readonly kind: 'cells'; readonly line: number; readonly cells: number; readonly first: 'time' | 'seconds' }
  | { readonly kind: 'time back'; readonly line: number; readonly time: number; readonly before: number }
  | { readonly kind: 'value'; readonly line: number; readonly column: Column['name']; readonly cell: string; readonly least: number; readonly most: number; readonly whole: boolean };

type Line = { readonly text: string; readonly number: number };
type Values = { readonly line: number; readonly values: readonly number[] };

const linesOf = (text: string): readonly Line[] =>
  text.replace(/^\uFEFF/, '').split(/\r?\n/).map((line, i) => ({ text: line.trim(), number: i + 1 })).filter((line) => line.text !== '');

/** Semicolons or tabs part the values where there are any, and a comma is then a decimal comma; else commas part them. */
function cellsOf(text: string): readonly string[] {
  const cells = /[;\t]/.test(text) ? text.split(/[;\t]/).map((cell) => cell.replace(',', '.')) : text.split(',');
  return cells.map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
}

function valuesOf({ text, number }: Line, columns: readonly Column[]): Result<Values, readonly LegProblem[]> {
  const cells = cellsOf(text);
  if (cells.length !== columns.length || cells.includes('')) return err([{ kind: 'cells', line: number, cells: cells.length, first: columns === LOG_COLUMNS ? 'time' : 'seconds' }]);
  const problems = columns.flatMap(({ name, least, most, whole = false }, i): readonly LegProblem[] => {
    const value = Number(cells[i]);
    const fits = value >= least && value <= most && (!whole || Number.isInteger(value));
    return fits ? [] : [{ kind: 'value', line: number, column: name, cell: cells[i] ?? '', least, most, whole }];
  });
  return problems.length > 0 ? err(problems) : ok({ line: number, values: cells.map(Number) });
}

function allValues(lines: readonly Line[], columns: readonly Column[], most: number): Result<readonly Values[], readonly LegProblem[]> {
  if (lines.length === 0) return err([{ kind: 'no line' }]);
  if (lines.length > most) return err([{ kind: 'too many lines', lines: lines.length, most }]);
  const read = lines.map((line) => valuesOf(line, columns));
  const problems = read.flatMap((one) => (one.ok ? [] : one.error));
  return problems.length > 0 ? err(problems) : ok(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

const withinLength = (legs: readonly Leg[]): Result<readonly Leg[], readonly LegProblem[]> => {
  const seconds = legs.reduce((sum, leg) => sum + leg.seconds, 0);
  return seconds > LONGEST ? err([{ kind: 'too long', seconds, most: LONGEST }]) : ok(legs);
};

/** Legs as people write them, a line each: seconds, speed in r/min, load in per cent, lambda. Empty lines are passed over. */
export function legsOf(text: string): Result<readonly Leg[], readonly LegProblem[]> {
  const read = allValues(linesOf(text), LEG_COLUMNS, MOST_LEGS);
  if (!read.ok) return read;
  return withinLength(read.value.map(({ values: [seconds = 0, rpm = 0, load = 0, lambda = 0] }) => ({ seconds, rpm, load: load / 100, lambda })));
}

/** A first line without a single number is a heading. */
const isHeading = ({ text }: Line): boolean => cellsOf(text).every((cell) => Number.isNaN(Number(cell)));

/** Speed to 50 r/min, load to 2 %, lambda to 0.01: finer steps change no tip by a degree that could be seen. */
const coarse = ({ seconds, rpm, load, lambda }: Leg): Leg =>
  ({ seconds, rpm: 50 * Math.round(rpm / 50), load: Math.round(50 * load) / 50, lambda: Math.round(100 * lambda) / 100 });

const alike = (a: Leg, b: Leg): boolean => a.rpm === b.rpm && a.load === b.load && a.lambda === b.lambda;

/** Neighbours that run alike become one leg. */
const joined = (legs: readonly Leg[]): readonly Leg[] => legs.reduce<Leg[]>((done, leg) => {
  const last = done.at(-1);
  if (last !== undefined && alike(last, leg)) done[done.length - 1] = { ...last, seconds: last.seconds + leg.seconds };
  else done.push(leg);
  return done;
}, []);

function timesBack(samples: readonly Values[]): readonly LegProblem[] {
  return samples.flatMap(({ line, values: [time = 0] }, i): readonly LegProblem[] => {
    const before = samples[i - 1]?.values[0];
    return before === undefined || time > before ? [] : [{ kind: 'time back', line, time, before }];
  });
}

/**
 * A log as instruments write it: time in s, speed in r/min, load in per cent, lambda; a heading is passed over. A sample holds until the next one, the last
 * for a second. Samples within one second are taken by the second: the last of them counts.
 */
export function legsOfLog(text: string): Result<readonly Leg[], readonly LegProblem[]> {
  const [first, ...others] = linesOf(text);
  const lines = first === undefined ? [] : isHeading(first) ? others : [first, ...others];
  const read = allValues(lines, LOG_COLUMNS, MOST_SAMPLES);
  if (!read.ok) return read;
  const back = timesBack(read.value);
  if (back.length > 0) return err(back);
  const start = read.value[0]?.values[0] ?? 0;
  const bySecond = new Map(read.value.map(({ values: [time = 0, rpm = 0, load = 0, lambda = 0] }) =>
    [Math.round(time - start), { rpm, load: load / 100, lambda }]));
  const seconds = [...bySecond.keys()];
  if (seconds.length < 2) return err([{ kind: 'one sample' }]);
  const legs = [...bySecond.values()].map((leg, i) => coarse({ ...leg, seconds: (seconds[i + 1] ?? (seconds[i] ?? 0) + 1) - (seconds[i] ?? 0) }));
  return withinLength(joined(legs));
}
