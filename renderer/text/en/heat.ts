import type { Input, Note } from '../../../core/band.ts';
import type { Lacking } from '../../../core/heat/recorded-running.ts';
import type { LimitSource } from '../../../core/thermal/limits.ts';
import { drive } from './heat-drive.ts';
import { chance } from './heat-model.ts';
import { air, spark, torque, wear } from './heat-parts.ts';

const steps = (count: number): string => `${Math.abs(count)} step${Math.abs(count) === 1 ? '' : 's'} ${count > 0 ? 'hotter' : 'colder'}`;
const times = (seconds: number): string => {
  if (seconds < 90) return `${seconds.toFixed(0)} s`;
  if (seconds < 5400) return `${(seconds / 60).toFixed(0)} min`;
  return seconds < 36_000 ? `${(seconds / 3600).toFixed(0)} h` : 'over 10 h';
};
const stepOf = (step: number): string => (step === 0 ? 'The heat value asked for' : steps(step).replace('1 step', 'One step').replace('2 steps', 'Two steps'));

const sliders = {
  load: 'Load', rpm: 'Speed', lambda: 'Lambda', advance: 'Advance', boost: 'Boost', inlet: 'Intake temperature', coolant: 'Coolant', altitude: 'Altitude',
  heatStep: 'Heat value', gap: 'Gap', coil: 'Coil without load',
};
/** How far to trust what a slider does. */
const grades = {
  load: 'fair trend', rpm: 'fair trend', lambda: 'fair trend', advance: 'rule of thumb', boost: 'fair trend', inlet: 'weak', coolant: 'fair trend',
  altitude: 'firm for air', heatStep: 'assumed size', gap: 'slope unsure', coil: 'your guess', fuel: 'firm for the flame',
};

const inputs: Readonly<Record<Input, string>> = {
  'compression ratio': 'compression ratio', speed: 'speed', 'manifold pressure': 'manifold pressure', 'exhaust pressure': 'exhaust pressure',
  'intake temperature': 'intake temperature', lambda: 'lambda', advance: 'advance', 'coolant temperature': 'coolant', gap: 'gap', 'gas density': 'density of the gas',
  'wear of the edges': 'wear of the edges',
};

const lacking: Readonly<Record<Lacking, string>> = {
  bore: 'bore', stroke: 'stroke', 'compression ratio': 'compression ratio', 'heat value': 'the heat value the engine maker asks for',
  'fitted heat value': 'how many steps the fitted plugs lie from it', 'one heat value': 'one heat value for the whole set', duty: 'a steady duty', speed: 'the engine’s speed',
};

const sourcesOfLimits: Readonly<Record<LimitSource, string>> = {
  'workshop press': 'workshop press', glossary: 'a consumer glossary', 'tuned road engines': 'an engine builder, tuned road engines', motorcycles: 'a club article, motorcycles',
  'two-strokes': 'trade press, two-strokes', 'aviation service': 'aviation service, leaded fuel', 'older textbooks': 'older textbooks, from memory',
};

const running = (speed: string, load: string, lambda: string, advance: string): string => `${speed}, ${load} load, lambda ${lambda}, ${advance} advance`;

const parts = {
  ladder: 'Heat value', 'what-if': 'What if', drive: 'A drive from cold', spark: 'Voltage and gap', wear: 'Gap wear', air: 'Air and fuel', torque: 'Tightening',
  told: 'What the tips told',
};

export const heat = {
  titleOf: (engine: string): string => `Heat and spark · ${engine}`,
  rail: 'Parts of heat and spark',
  parts,
  setting: 'Running',
  settingHelp: 'Move one thing and watch the tip. The word beside each says how far to trust what it does.',
  asSet: (words: string): string => `At ${words}.`,
  running,
  change: 'Change the running',
  sliders, grades,
  fuel: 'Fuel',
  fuelNames: { petrol: 'petrol', E10: 'E10', E85: 'E85', ethanol: 'ethanol', methanol: 'methanol', LPG: 'LPG', methane: 'methane', avgas: 'avgas' },
  reset: 'Back to the usual',
  assumed: (names: readonly string[]): string => `Assumed, because the engine’s page does not say: ${names.join(', ')}.`,
  assumedNames: {
    bore: (value: string): string => `bore ${value}`, stroke: (value: string): string => `stroke ${value}`, compressionRatio: (value: string): string => `compression ratio ${value}`,
  },
  reached: (lambda: string): string => `The carburettor is set for sea level and its own fuel: lambda ${lambda} reaches the cylinder.`,
  ladder: 'Tip temperature over load',
  ladderSaid: 'Tip temperature over load for five heat values, with the self-cleaning limit, the limit of heat and the pre-ignition limit as bands, and the recorded running; the table below says the same',
  load: 'load',
  steps: (step: number): string => (step === 0 ? 'as asked for' : steps(step)),
  limits: { cleaning: 'self-cleaning from here', hot: 'too hot', ignition: 'pre-ignition' },
  question: 'Which heat value keeps this engine inside the window, and at what price?',
  verdict: (step: number, tooHot: string): string => `${stepOf(step)} stays inside the window at full load (chance of too hot ${tooHot}).`,
  verdictNone: 'Even two steps colder may be too hot at full load. Look for another cause of heat first.',
  cost: (load: string | undefined, colder: number): string => {
    const from = load === undefined ? 'at no load does it clean itself' : `it cleans itself only from ${load} load upwards`;
    return `The price: ${from}${colder < 0 ? ', and it fouls sooner on short trips than the one asked for' : ''}.`;
  },
  costFree: 'It cleans itself over the whole range of load shown.',
  notAdvice: 'This is the model alone, not advice: the tips have the last word, never more than one step a trial, and the engine maker’s data come first.',
  hotterNever: (step: number): string => `By the model ${steps(step)} would still be inside, but the model alone never speaks for a hotter plug.`,
  mark: (date: string, duty: string): string => `${date}: ${duty}`,
  marks: 'Recorded running',
  noMarks: 'No kept reading says enough about its running to be marked here.',
  conflicts: 'Where sources disagree about the limits',
  conflictHeads: { of: 'Source', cleaning: 'cleans itself from', hot: 'suffers from', ignition: 'lights the charge from' },
  conflictUsed: 'Used here, with its spread',
  range: (from: string, to: string): string => `${from} to ${to}`,
  sourcesOfLimits,
  table: { step: 'Heat value', light: 'at light load', full: 'at full load', hot: 'too hot at full load', cleans: 'cleans itself from' },
  never: 'at no load',
  chance,
  band: (middle: string, low: string, high: string): string => `${middle} (${low} to ${high})`,
  now: 'At this running',
  tip: 'Insulator tip',
  ground: 'Ground electrode',
  demand: 'Voltage asked',
  reserve: 'Voltage left over',
  widest: 'Widest gap that fires',
  widestRange: (surely: string, likely: string): string => `${surely} surely, ${likely} likely`,
  none: 'none',
  orMore: (value: string): string => `${value} or more`,
  reaches: (from: string, to: string): string => `The band reaches from “${from}” to “${to}”.`,
  burnOff: 'Dry soot falls to a third in',
  afterAnHour: 'Insulation after an hour of this',
  staysClean: 'stays clean',
  times,
  basis: { predicted: 'predicted by the model alone', specified: 'predicted, set by the heat value asked for', calibrated: 'corrected by this engine’s tips', measured: 'measured' },
  places: { cold: 'gathers soot', window: 'cleans itself', hot: 'too hot', alarm: 'may light the charge by itself' },
  compare: 'Put aside to compare',
  drop: 'Stop comparing',
  take: 'Take this value',
  back: 'Go back to it',
  aside: 'put aside',
  differs: 'What differs',
  likeness: 'How a tip might look after long running like this; an illustration.',
  notes: {
    title: 'Notes', label: 'A note about this running', hint: 'Kept with the engine, with the running as it is set and what the model said.', keep: 'Keep the note', none: 'No note yet.',
    said: (running_: string, tip: string, demand: string): string => `${running_}: tip ${tip}; ${demand} asked.`, use: 'Set this running', remove: 'Remove', removed: 'Note removed.',
  },
  told: {
    title: 'What the tips told',
    about: 'Every line corrects the model in turn; its band gets narrower. Kept readings come in by themselves. What you add here stays with the engine.',
    now: (band: string): string => `At the running that is set the tip now stands at ${band}; the model alone says`,
    narrower: (share: string): string => `The band is ${share} as wide as that of the model alone.`,
    from: { specified: 'From the engine’s page', entry: 'Entered by hand' },
    fromReading: (date: string): string => `Reading of ${date}`,
    undated: 'Reading without a date',
    add: 'Add what a tip showed, or a value',
    addHelp: 'It is taken to hold for the running that is set.',
    signs: {
      'soot kept': 'Dry soot stayed', 'self-cleaned': 'Cleaned itself', 'not blistered': 'Glaze sound', blistered: 'Glaze blistered', melted: 'Electrode melted',
      'known good': 'Right at its hardest running', specified: 'Asked for by the maker', thermocouple: 'Thermocouple in the plug', exhaust: 'Exhaust-gas temperature',
    },
    exhaustHelp: 'An exhaust temperature hardly narrows the band: it tells of the burn, and little of the nose.',
    remove: 'Remove',
    removed: 'Entry removed.',
    arithmetic: (before: string, says: string, after: string): string => `${before} before; the reading says ${says}; ${after} after.`,
    odd: 'The model had hardly expected this: look again at the running and at the tip.',
    says: {
      value: (value: string, spread: string): string => `${value} ± ${spread}`, exhaust: (value: string, spread: string): string => `${value} ± ${spread} in the exhaust`,
      above: (limit: string): string => `above about ${limit}`, below: (limit: string): string => `below about ${limit}`,
    },
    unused: 'Readings from which nothing could be learned',
    lacks: (date: string, names: readonly string[]): string => `${date} lacks ${names.join(', ')}.`,
    none: 'Nothing yet: the model stands alone.',
  },
  lacking,
  note: ({ kind, of }: Note, value: string, least: string, most: string): string =>
    (kind === 'assumed' ? `${inputs[of]} was not recorded, ${value} is assumed.` : `${inputs[of]} ${value} lies outside ${least} to ${most}.`),
  wider: 'The band is wider:',
  refused: 'Not computed:',
  drive, spark, wear, air, torque,
  unknowns: 'What this model cannot know',
  /** @param degrees a difference of temperature given in K, in the units the person set */
  unknown: (degrees: (kelvin: number) => string): Readonly<Record<keyof typeof parts, readonly string[]>> => ({
    ladder: [
      `How hot your tip is: absolute values are good to about ±${degrees(125)}. Read differences and trends.`,
      'How far your maker’s heat steps lie apart: one size is assumed for all.',
      'Which plug is really fitted: the heat value asked for is taken to be about right at full load, and only when the engine’s page names it.',
      'Knock and pre-ignition are not computed. A value in the window is no permission; signs of detonation on the plug override it.',
    ],
    'what-if': [
      `How hot your tip is: absolute values are good to about ±${degrees(125)}. Read differences and trends.`,
      'Idle and cruise rest on an assumed rule; no measured value was found for either.',
      'What your engine does when one thing is moved: it would move others with it. Here all else stays.',
      'Knock and pre-ignition are not computed. Voltage is good to ±25 %, soot times to a factor of three.',
    ],
    drive: [
      'How much soot your engine makes when cold: yield and mixture of the drive are fitted or guessed, times are good to a factor of three.',
      'Oil, lead, ash and wet fuel on the nose: only dry soot is computed.',
      'Which of two neighbouring heat values fouls later: the spread is too small. Do not rank them by it.',
    ],
    spark: [
      'What your coil has in reserve, unless it was measured.',
      'The voltage to better than ±25 %: two ways of reckoning differ by twice in their slope with the gap.',
      'Surface gaps, pre-chambers, several ground electrodes, bridged gaps.',
    ],
    wear: ['How the edges round: voltage rises while the gap hardly moves, so the gap alone understates early wear.', 'Rates by the metal are trade figures or guesses.'],
    air: ['Carburettors that compensate, idle circuits, injection: the rule is for a plain jet.', 'The weather: the air is dry and standard unless you say otherwise.'],
    torque: ['The friction in your hands: a torque gives a range of clamp load, never one number.', 'The load of an angle: gaskets crush differently.'],
    told: [`What no number explains: ${degrees(15)} from one running to the next are always left.`, 'Whether a tip was read rightly, and whether the running was as recorded.'],
  }),
  first: 'The engine maker’s data come first.',
  oneStep: 'Never more than one heat step a trial.',
  aircraft: 'Aircraft: only plugs of the approved list, fitted by or under a licensed person. Nothing on this page permits another.',
  road: 'No full-load reading on public roads: a dynamometer or a closed course.',
};
