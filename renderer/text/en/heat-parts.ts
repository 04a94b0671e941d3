import type { GapNote } from '../../../core/wear/gap-growth.ts';

const lengthIn = (value: string, unit: '1000 km' | 'h'): string => (unit === 'h' ? `${value} h` : value);

const gapNotes: Readonly<Record<GapNote, string>> = {
  'no reading': 'No gap with its running length was noted: nothing to forecast from.',
  'one reading': 'One reading gives no rate; the range of the metal is used.',
  'two readings': 'Two points give no interval; the range of the metal is used.',
  'three readings': 'Three readings give a very wide interval.',
  'one running length': 'All readings were taken at one running length; the range of the metal is used.',
  'no late bound': 'The late bound does not exist: the record does not show that the gap grows that far.',
  'no default': 'No usual rate is known here: by the hour there is none, and the metal may not have been noted.',
};

export const spark = {
  title: 'Voltage and gap',
  about: 'What the gap asks for, and what the ignition can give with the nose as it is.',
  insulation: 'Insulation of the nose', wear: 'Wear of the edges', polarity: 'Centre electrode', polarities: { negative: 'negative', positive: 'positive' },
  wearShown: (share: string): string => `${share} rounded`,
  grades: { insulation: 'factor 3', wear: 'guess', coil: 'your guess', gap: 'slope unsure' },
  chart: 'Voltage asked over the gap: the model with its band, the engine correlation, and what the ignition can give; the table says the values at the set gap',
  lines: { model: 'asked, model with its band', correlation: 'engine correlation', available: 'what the coil can give', gap: 'set gap' },
  asked: 'Asked, model', correlation: 'Asked, engine correlation', available: 'Coil can give', left: 'Left over', density: 'Gas at the spark', misfires: 'Sparks that fail',
  densityShown: (times: string): string => `${times} times the density of room air`,
  share: (middle: string, low: string, high: string): string => `${middle} (${low} to ${high})`,
  under: 'under 0.1 %',
  advice: (given: string, surely: string, likely: string): string => `With ${given} from the coil a gap up to ${surely} fires surely at this running, up to ${likely} likely.`,
  adviceNone: 'At this running not even the smallest gap tried fires surely.',
  maker: (gap: string): string => `The engine maker asks for ${gap}; that comes first.`,
  noMaker: 'The engine’s page does not say which gap the maker asks for; that comes first.',
  danger: 'Ignition voltage can kill, also with the engine stopped. Not for people with a pacemaker.',
  twoWays: 'The two ways of reckoning are one band: the correlation has half the slope with the gap.',
};

export const wear = {
  title: 'Gap wear',
  about: 'Growth of the gap from the readings of this set, and when it reaches the limit.',
  limit: 'Limit of the gap',
  limitGrade: 'as in car manuals',
  set: 'Set of plugs',
  setName: (until: string, count: number): string => `up to ${until}, ${count} ${count === 1 ? 'reading' : 'readings'}`,
  undated: 'no date',
  none: 'No kept reading notes a gap together with the kilometres or hours on the plugs. Note both at the next reading.',
  metal: 'Metal of the electrodes',
  metals: { nickel: 'nickel', platinum: 'platinum', iridium: 'iridium' },
  assumedMetal: 'not noted; chosen here',
  chart: 'Gap over the running length: readings, line, 95 % interval of one more reading or the usual rates of the metal, and the limit; the text says the values',
  limitLine: 'limit',
  from: { record: 'from the readings of this set', default: 'usual rate of the metal, not of this set' },
  forecast: (likely: string, early: string, late: string): string => `The limit is reached at about ${likely}; between ${early} and ${late}.`,
  over: 'The gap has reached the limit.',
  notBounded: 'no bound',
  never: 'never, by this record',
  lengthIn,
  notes: gapNotes,
  readings: 'Readings',
  at: 'on these plugs', gap: 'mean gap',
};

export const air = {
  title: 'Air and fuel',
  about: 'The standard atmosphere, what it does to a plain carburettor, and what another fuel does.',
  altitude: 'Altitude', temperature: 'Air temperature', set: 'Lambda as set', blend: 'Ethanol in petrol, by volume', fuel: 'Run on', was: 'Carburettor set for',
  grades: { altitude: 'firm', temperature: 'firm', set: 'yours', blend: 'firm' },
  rows: {
    pressure: 'Pressure of the air', standard: 'Standard temperature', density: 'Density against sea level', densityAltitude: 'Density altitude',
    lambda: 'Lambda on this air', both: 'Lambda on this air and fuel', jet: 'Main jet to hold lambda, diameter', blendRatio: 'Stoichiometric ratio of the blend',
  },
  times: (factor: string): string => `× ${factor}`,
  ratio: (value: string): string => `${value} : 1`,
  fuels: 'Stoichiometric ratio by mass',
  rule: 'A plain jet meters by the square root of the density of the air: at height the mixture gets richer. Injection corrects itself.',
  leaner: 'Leaner than it was set: watch for heat and knock before anything else.',
  law: 'Changes of mixture may be regulated where you live.',
};

export const torque = {
  title: 'Tightening',
  about: 'What a torque does to the seat. A loose plug runs hotter, an overtightened one breaks or stretches.',
  joint: 'Thread and seat',
  joints: {
    'M10 gasket': 'M10 × 1, gasket', 'M12 gasket': 'M12 × 1.25, gasket', 'M14 gasket': 'M14 × 1.25, gasket', 'M18 gasket': 'M18 × 1.5, gasket',
    'M14 cone': 'M14 × 1.25, conical seat', 'M18 cone': 'M18 × 1.5, conical seat',
  },
  fromPage: 'as on the engine’s page', noPage: 'The engine’s page does not name a thread that is known here; choose one.',
  value: 'Torque', grade: 'the maker’s figure',
  load: 'Clamp load', loadShown: (middle: string, low: string, high: string): string => `${middle} (${low} to ${high})`,
  dry: 'as if dry and clean', range: 'from rough threads to oiled ones',
  oiled: 'Torque that gives the same load on an oiled thread',
  extra: 'Load on an oiled thread at the same torque',
  times: (factor: string): string => `× ${factor}`,
  turn: 'A turn moves the plug in by',
  turns: { 'gasket new': 'new gasket, half a turn', 'gasket used': 'used gasket, a twelfth of a turn', cone: 'conical seat, a sixteenth of a turn' },
  first: 'The engine maker’s torque comes first. Threads clean and dry unless the maker says otherwise; cold engine; start by hand.',
};
