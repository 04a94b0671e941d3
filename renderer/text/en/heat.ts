import type { Band } from '../../../core/band.ts';

const steps = (count: number): string => `${Math.abs(count)} step${Math.abs(count) === 1 ? '' : 's'} ${count > 0 ? 'hotter' : 'colder'}`;
const times = (seconds: number): string => {
  if (seconds < 90) return `${seconds.toFixed(0)} s`;
  if (seconds < 5400) return `${(seconds / 60).toFixed(0)} min`;
  return seconds < 36_000 ? `${(seconds / 3600).toFixed(0)} h` : 'over 10 h';
};

const sliders = {
  load: 'Load', rpm: 'Speed', lambda: 'Lambda', advance: 'Advance', boost: 'Boost', inlet: 'Intake temperature', coolant: 'Coolant', altitude: 'Altitude',
  heatStep: 'Heat value', gap: 'Gap', coil: 'Coil without load',
};
/** How far to trust what a slider does. */
const grades = {
  load: 'fair trend', rpm: 'fair trend', lambda: 'fair trend', advance: 'rule of thumb', boost: 'fair trend', inlet: 'weak', coolant: 'fair trend',
  altitude: 'firm for air', heatStep: 'assumed size', gap: 'slope unsure', coil: 'your guess',
};
const prices = {
  inside: 'stays inside the window', 'soot at light load': 'gathers soot at light load', 'too hot at full load': 'too hot at full load',
  'soot and heat': 'soot at light load, too hot at full load', 'pre-ignition at full load': 'may light the charge by itself at full load',
};

const columns = { seconds: 'seconds', rpm: 'speed', load: 'load', lambda: 'lambda' };

export const heat = {
  titleOf: (engine: string): string => `Heat and spark · ${engine}`,
  setting: 'Running',
  sliders, grades, prices,
  fuel: 'Fuel',
  reset: 'Back to the usual',
  assumed: (names: readonly string[]): string => `Assumed, because the engine’s page does not say: ${names.join(', ')}.`,
  assumedNames: {
    bore: (value: string): string => `bore ${value}`, stroke: (value: string): string => `stroke ${value}`, compressionRatio: (value: string): string => `compression ratio ${value}`,
  },
  reached: (lambda: string): string => `The carburettor is set for sea level and its own fuel: lambda ${lambda} reaches the cylinder.`,
  ladder: 'Tip temperature over load',
  ladderSaid: 'Tip temperature over load for five heat values, with the self-cleaning limit, the limit of heat and the pre-ignition limit; the table below says the same',
  load: 'load',
  steps: (step: number): string => (step === 0 ? 'as fitted' : steps(step)),
  limits: { cleaning: 'self-cleaning from here', hot: 'too hot', ignition: 'pre-ignition' },
  table: { step: 'Heat value', light: 'at light load', full: 'at full load', price: 'Price, by the middle of the band' },
  band: (middle: string, low: string, high: string): string => `${middle} (${low} to ${high})`,
  now: 'At this running',
  tip: 'Insulator tip',
  ground: 'Ground electrode',
  demand: 'Voltage asked',
  widest: 'Widest gap that fires',
  widestRange: (surely: string, likely: string): string => `${surely} surely, ${likely} likely`,
  none: 'none',
  orMore: (value: string): string => `${value} or more`,
  reaches: (from: string, to: string): string => `The band reaches from “${from}” to “${to}”.`,
  burnOff: 'Dry soot falls to a third in',
  times,
  basis: { predicted: 'predicted by the model alone', calibrated: 'corrected by this engine’s tips', measured: 'measured' },
  places: { cold: 'gathers soot', window: 'cleans itself', hot: 'too hot', alarm: 'may light the charge by itself' },
  compare: 'Keep to compare',
  drop: 'Stop comparing',
  kept: 'kept',
  likeness: 'How a tip might look after long running like this; an illustration.',
  readings: 'What the tips showed',
  readingsHelp: 'Set the running, then say what the tip showed after it. The model is corrected and its band gets narrower. Kept until this page is left.',
  showed: {
    'soot kept': 'Dry soot stayed', 'self-cleaned': 'Cleaned itself', 'not blistered': 'Glaze sound', blistered: 'Glaze blistered', melted: 'Electrode melted',
    'known good': 'Right at its hardest running', thermocouple: 'Thermocouple',
  },
  take: 'Take this value',
  forget: 'Forget these readings',
  arithmetic: (before: string, says: string, after: string): string => `${before} before; the reading says ${says}; ${after} after.`,
  says: { value: (value: string, spread: string): string => `${value} ± ${spread}`, above: (limit: string): string => `above about ${limit}`, below: (limit: string): string => `below about ${limit}` },
  drive: {
    title: 'A drive from cold',
    help: 'What a leg does not say is as set beside: advance, boost, coolant, heat value. Between repeats the engine cools down fully.',
    usual: 'Usual drives',
    names: { 'short trips in frost': 'short trips in frost', commute: 'commute', 'long road': 'long road' },
    problems: {
      noLine: 'No line yet.',
      tooMany: (lines: number, most: number): string => `${lines} lines; at most ${most} are taken.`,
      tooLong: (seconds: number, most: number): string => `The drive lasts ${seconds} s; at most ${most} s are taken.`,
      cells: (line: number, cells: number): string => `Line ${line}: ${cells} values; four are wanted: seconds, speed, load in %, lambda.`,
      value: (line: number, column: keyof typeof columns, cell: string, least: number, most: number): string =>
        `Line ${line}: ${columns[column]} ${cell}; ${column === 'seconds' ? 'whole numbers from ' : ''}${least} to ${most} are allowed.`,
    },
    legs: 'Legs, a line each: seconds, speed in r/min, load in %, lambda',
    start: 'Air and engine at the start',
    chart: 'Tip temperature over the drive, with its band; the table below says how long it was in the window',
    window: 'cleans itself',
    parts: { below: 'Below self-cleaning', inside: 'In the window', above: 'Above it' },
    after: (repeats: number): string => `Insulation after ${repeats} ${repeats === 1 ? 'drive' : 'drives'}`,
    fouls: (repeats: Band<number> | undefined): string => (repeats === undefined ? 'Twenty such drives leave the insulation good.'
      : `The insulation falls below 10 MΩ after ${repeats.middle} such drives (${Math.max(1, Math.round(repeats.low))} to ${repeats.high}).`),
    caution: 'Dry soot only. Do not rank neighbouring heat values by it.',
  },
  unknowns: 'What this model cannot know',
  unknown: [
    'How hot your tip is: absolute values are good to about ±125 °C. Read differences and trends.',
    'How far your maker’s heat steps lie apart: one size is assumed for all.',
    'What plug is fitted: until the tips say otherwise it is taken as the plug the model was made with.',
    'Idle and cruise rest on an assumed rule; no measured value was found for either.',
    'Knock and pre-ignition are not computed. A value in the window is no permission; signs of detonation on the plug override it.',
    'Voltage is good to ±25 %, soot times to a factor of three; oil, lead and wet fuel are not computed.',
  ],
  first: 'The engine maker’s data come first. Never more than one heat step a trial.',
  aircraft: 'Aircraft: only plugs of the approved list, fitted by or under a licensed person. Nothing on this page permits another.',
  wider: 'Outside the tried range, so the band is wider:',
  refused: 'Not computed:',
};
