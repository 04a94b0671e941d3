import type { Change, CureOutcome, SYMPTOM_CHANGES } from '../../../shared/vocabulary/follow-up.ts';

const changes: Record<Change, string> = {
  cured: 'Cured', better: 'Better', unchanged: 'Unchanged', worse: 'Worse', new: 'New fault', 'cannot be told': 'Cannot be told',
};
const outcomes: Record<CureOutcome, string> = {
  'borne out': 'Borne out', 'partly borne out': 'Partly borne out', 'not borne out': 'Not borne out', 'cannot be told': 'Cannot be told yet', 'not done': 'Not done',
};
const symptoms: Record<(typeof SYMPTOM_CHANGES)[number], string> = { gone: 'gone', 'still there': 'still there', new: 'new', 'cannot be told': 'not noted now' };

export const followUp = {
  changes, outcomes, symptoms,
  since: (reading: string): string => `Since the reading of ${reading}`,
  sinceBefore: 'Since the reading before',
  compareWith: 'Compare with the reading of',
  compareNone: 'no other reading',
  about: 'Tick what was put right between the two. The findings then tell what became of it, and a cure that changed nothing speaks against its cause.',
  cures: 'Put right since',
  noCures: 'That reading called for nothing.',
  addTitle: 'Something else was put right',
  addCause: 'Which fault',
  addNone: 'choose',
  addWhere: 'On',
  addEverywhere: 'all cylinders',
  addCylinder: (n: string): string => `cylinder ${n}`,
  add: 'Add',
  kinds: {
    mixture: 'Mixture', ignition: 'Ignition', 'heat value': 'Heat value of the plug', temperature: 'Heat and cooling', oil: 'Oil', fuel: 'Fuel', deposit: 'Deposits', coolant: 'Coolant',
    detonation: 'Detonation', 'pre-ignition': 'Pre-ignition', mechanical: 'Mechanical', fitting: 'Fitting of the plug', use: 'Use', age: 'Age', harmless: 'Harmless',
  },
  plugsTitle: 'The plugs themselves',
  plugsNew: 'Renewed',
  plugsCleaned: 'Cleaned',
  plugsHint: 'Plugs put back as they were still carry what was there before the work, so a cure then counts for half.',
  tried: (what: string): string => `Tried before that reading, and it had changed nothing: ${what}.`,
  working: 'Working out what that reading called for…',
  noteDone: 'Note what was put right',
  plugs: 'The plugs',
  felt: 'What was felt',
  cureList: 'The cures',
  belief: (before: string, now: string): string => `belief ${before} then, ${now} now`,
  more: 'More about the comparison',
  moreSummary: (limits: number): string => (limits === 0 ? '' : limits === 1 ? 'one thing limits it' : `${limits} things limit it`),
  doubts: 'What limits the comparison',
  titleOf: (engine: string): string => `Plugs over the years: ${engine}`,
  timeline: 'The plugs from reading to reading',
  timelineAbout: 'Each picture is drawn from what was noted. The second word beside it tells what became of the plug since the reading before.',
  timelineEmpty: 'Two kept readings are needed before there is anything to compare. Keep a reading, run the engine, and read the plugs again.',
  onlyFaulty: 'Only plugs that were ever at fault',
  allPlugs: 'All plugs',
  noneFaulty: 'No plug of this engine was ever at fault.',
  hidden: (count: string): string => `${count} plugs were never at fault and are not shown.`,
  undated: 'undated',
  notRead: 'not read',
  plug: 'Plug',
  putRight: 'Put right',
  loading: 'Fetching the readings…',
};
