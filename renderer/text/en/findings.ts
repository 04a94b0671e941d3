import type { BeliefGrade, EvidenceGrade } from '../../../core/domain/grades.ts';
import type { Findings } from '../../../shared/formats/findings.v1.ts';
import type { Position } from '../../../shared/vocabulary/engine.ts';
import type { Risk, Verdict } from '../../../shared/vocabulary/verdicts.ts';
import { heatModel } from './heat-model.ts';

const verdicts: Record<Verdict, string> = {
  normal: 'Normal', 'too cold': 'Too cold', 'too hot': 'Too hot', 'dry carbon fouling': 'Dry carbon fouling', 'oil fouling': 'Oil fouling', 'fuel wet': 'Fuel wet',
  'lead fouling': 'Lead fouling', 'ash deposits': 'Ash deposits', glazing: 'Glazing', 'additive deposits': 'Additive deposits', 'coolant entry': 'Coolant entry',
  'detonation damage': 'Detonation damage', 'pre-ignition damage': 'Pre-ignition damage', worn: 'Worn', bridged: 'Bridged', 'not sealing': 'Not sealing',
  'not firing': 'Not firing', 'reversed polarity': 'Reversed polarity', 'wrong reach': 'Wrong reach', 'insulator damage': 'Insulator damage',
  'ignition leakage': 'Ignition leakage', 'mechanical damage': 'Mechanical damage', undetermined: 'Undetermined',
};
const positions: Record<Position, string> = {
  only: '', upper: 'upper', lower: 'lower', intake: 'intake', exhaust: 'exhaust', front: 'front', rear: 'rear', unknown: 'position not noted',
};
const beliefs: Record<BeliefGrade, string> = {
  'virtually certain': 'virtually certain', 'very likely': 'very likely', likely: 'likely', 'about as likely as not': 'about as likely as not', unlikely: 'unlikely',
  'very unlikely': 'very unlikely', 'exceptionally unlikely': 'exceptionally unlikely',
};
const weights: Record<EvidenceGrade, { readonly for: string; readonly against: string }> = {
  weak: { for: 'a little for it', against: 'a little against it' },
  positive: { for: 'for it', against: 'against it' },
  strong: { for: 'strongly for it', against: 'strongly against it' },
  'very strong': { for: 'very strongly for it', against: 'very strongly against it' },
};
const risks: Record<Risk, string> = { low: 'Low', raised: 'Raised', high: 'High', stop: 'Stop' };
const heatWords: Record<Findings['heat']['words'], string> = { 'one step colder': 'One step colder', stay: 'Stay', 'one step hotter': 'One step hotter' };
const heatWhen: Record<Findings['heat']['when'], string> = { now: 'At the next fitting.', 'after what comes first': 'Only after what comes first.' };

const place = (cylinder: number, position: Position): string => (position === 'only' ? `Cylinder ${cylinder}` : `Cylinder ${cylinder} ${positions[position]}`);
const cylinders = (numbers: readonly number[]): string => (numbers.length === 1 ? `cylinder ${numbers[0]}` : `cylinders ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`);

export const findings = {
  verdicts, positions, beliefs, weights, risks, heatWords, heatWhen, place, cylinders,
  title: 'Findings',
  expert: 'The percentages come from graded expert knowledge, not from counted failures. They rank what to look at; they do not replace looking.',
  print: 'Print',
  working: 'Working it out anew…',
  failed: 'These findings could not be brought up to date',
  waiting: 'Working out the findings…',
  empty: 'Nothing to judge yet',
  emptyAbout: 'Take a plug from the tray and say what you see on its tip. One part is enough to begin; every further part sharpens the answer.',
  toPlugs: 'To the plugs',
  quiet: 'These look normal',
  believed: 'Belief',
  strip: 'All plugs',
  stripName: (where: string, verdict: string, belief = ''): string => `${where}: ${[verdict, belief].filter(Boolean).join(', ')}`,
  notRead: 'Not read',
  stop: 'Stop',
  stopAbout: 'Do not run the engine until this is cleared.',
  plan: 'In this order',
  noPlan: 'Nothing has to be done.',
  noPlanYet: 'Nothing to do follows from what is noted so far.',
  because: 'Because:',
  heat: 'Heat value of the plug',
  heatModel,
  heatFirst: 'What comes first',
  heatWhy: 'Why',
  heatCautions: 'Take care',
  heatScale: { colder: 'colder', stay: 'stay', hotter: 'hotter' },
  makerFirst: 'The engine maker\u2019s data come first, always.',
  engine: 'The engine as a whole',
  engineCauses: 'Causes that no single plug tells of',
  oneOf: (numbers: readonly number[]): string => `one of ${cylinders(numbers)}`,
  plugs: 'Plug by plug',
  also: 'Also',
  thermal: 'Tip temperature',
  thermals: { tooCold: 'too cold', inWindow: 'in its window', tooHot: 'too hot' },
  preIgnition: 'Risk of pre-ignition',
  causes: 'Likely causes',
  scope: { plug: 'this plug', cylinder: 'this cylinder', group: (numbers: readonly number[]): string => `shared by ${cylinders(numbers)}`, engine: 'the whole engine' },
  balance: (cause: string): string => `What speaks for and against: ${cause}`,
  forIt: 'For',
  againstIt: 'Against',
  noFacts: 'No observation alone moves it: others say the same, or none bears on it.',
  odds: (factor: string, up: boolean): string => (up ? `odds × ${factor}` : `odds ÷ ${factor}`),
  oddsHint: 'Each line tells by how much the observation alone raises or lowers the odds of this cause.',
  sourcesOf: 'Sources:',
  lookUp: 'look it up',
  lookUpLine: (words: string): string => `Look it up: ${words}`,
  lookUpCause: 'All that is known of this cause',
  spoke: 'Which lines spoke here',
  nextChecks: 'Next checks',
  tellsMost: 'Tells most for its effort',
  minutes: (minutes: string): string => `about ${minutes} min`,
  tells: { much: 'tells much', some: 'tells something', little: 'tells little' },
  writeDown: 'Write down the result',
  writeDownOf: (check: string, cylinder: number | undefined): string => `Write down the result: ${check}${cylinder === undefined ? '' : `, cylinder ${cylinder}`}`,
  doubts: 'Doubts and gaps',
  cautions: 'Cautions',
  noCautions: 'Hot parts, ignition voltage and fuel vapour are always present on an engine: work as the engine maker says.',
  sourceList: 'Sources used here',
  madeWith: (version: string, own: number): string =>
    `Worked out with knowledge version ${version}${own === 0 ? '' : ` and ${own === 1 ? 'one line' : `${own} lines`} of your own`}.`,
  ofEngine: (...known: readonly (string | undefined)[]): string => known.filter(Boolean).join(', '),
  sources: {
    commonPractice: 'common practice, no source',
    fromMemory: 'from memory',
    own: 'your own word',
    all: 'All that rests on it',
    open: (id: string): string => `Source ${id}`,
    read: (how: string): string => `Read: ${how}.`,
    close: 'Close',
  },
};
