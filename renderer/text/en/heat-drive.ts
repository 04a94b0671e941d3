import type { Band } from '../../../core/band.ts';

const columns = { time: 'time', seconds: 'seconds', rpm: 'speed', load: 'load', lambda: 'lambda' };
const part = (share: number): string => (share > 0.95 ? 'all' : share < 0.05 ? 'hardly any' : `${Math.round(100 * share)} %`);

/** Words of a drive from cold. */
export const drive = {
  title: 'A drive from cold',
  help: 'Between repeats the engine cools down fully.',
  asSet: (step: string, advance: string, coolant: string): string => `Heat value ${step}, ${advance} advance, coolant up to ${coolant}.`,
  usual: 'Usual drives',
  names: { 'short trips in frost': 'short trips in frost', commute: 'commute', 'long road': 'long road' },
  problems: {
    noLine: 'No line yet.',
    oneSample: 'A log needs two samples at least, a second apart.',
    tooMany: (lines: number, most: number): string => `${lines} lines; at most ${most} are taken.`,
    tooLong: (seconds: number, most: number): string => `The drive lasts ${seconds} s; at most ${most} s are taken.`,
    cells: (line: number, cells: number, first: 'time' | 'seconds'): string => `Line ${line}: ${cells} values; four are wanted: ${first === 'time' ? 'time in s' : 'seconds'}, speed, load in %, lambda.`,
    back: (line: number, time: number, before: number): string => `Line ${line}: time ${time} s does not come after ${before} s; times must rise.`,
    value: (line: number, column: keyof typeof columns, cell: string, least: number, most: number, whole: boolean): string =>
      `Line ${line}: ${columns[column]} ${cell}; ${whole ? 'whole numbers from ' : ''}${least} to ${most} are allowed.`,
    more: (count: number): string => `And ${count} more lines.`,
    phase: (leg: number, seconds: number): string => `Leg ${leg} lasts ${seconds} s; whole seconds above 0 are allowed.`,
    cold: (start: string, least: string): string => `The engine starts at ${start}; ${least} is the least.`,
  },
  columns: { seconds: 'Seconds', rpm: 'r/min', load: 'Load, %', lambda: 'Lambda' },
  cell: (column: string, number: number): string => `${column}, leg ${number}`,
  addLeg: 'Add a leg',
  removeLeg: (number: number): string => `Remove leg ${number}`,
  legs: 'Legs of the drive',
  import: 'Import a log (CSV)',
  importHelp: 'Time in s, engine speed in r/min, load in %, lambda; a line each, with or without a heading.',
  imported: (name: string, seconds: string, legs: number): string => `${name}: ${seconds} in ${legs} ${legs === 1 ? 'stretch' : 'stretches'} of like running.`,
  importFailed: (name: string): string => `${name} cannot be read:`,
  dropLog: 'Back to the legs',
  tooLarge: 'The file is larger than 4 MB.',
  start: 'Air and engine at the start',
  startGrade: 'weak',
  chart: 'Tip temperature over the drive, with its band; the table says how long it was in the window',
  fouling: 'Insulation over twenty cold starts',
  foulingSaid: 'Insulation of the nose over twenty such drives from cold, from clean, on a scale by tens; the table says the values',
  good: 'good from here',
  drives: (count: number): string => `${count} ${count === 1 ? 'drive' : 'drives'}`,
  window: 'cleans itself',
  parts: { below: 'Below self-cleaning', inside: 'In the window', above: 'Above it' },
  after: (repeats: number): string => `Insulation after ${repeats} ${repeats === 1 ? 'drive' : 'drives'}`,
  fouls: (repeats: Band<number> | undefined): string => (repeats === undefined ? 'Twenty such drives leave the insulation good.'
    : `The insulation falls below 10 MΩ after ${repeats.middle} such drives (${Math.max(1, Math.round(repeats.low))} to ${Math.round(repeats.high)}).`),
  why: (sooting: number, cleaning: number): string => `For ${part(sooting)} of the drive the mixture is rich and the tip too cold to burn soot off; for ${part(cleaning)} of it the tip cleans itself.`,
  lesson: {
    fouls: 'That is why short trips foul a good plug: each cold start lays soot down, and the trip ends before the tip is hot enough to burn it off. One long drive cleans; a hotter plug would only hide it.',
    slowly: 'Soot gathers slowly here and little of it is burnt off: in time such drives foul the plug as well. A longer, harder drive cleans it.',
    clean: 'The tip stays hot long enough to burn off what the cold start laid down.',
  },
  caution: 'Dry soot only. Do not rank neighbouring heat values by it.',
  computing: 'Computing …',
};
