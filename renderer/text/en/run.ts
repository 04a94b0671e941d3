import type { Effect, ReadingQuestion } from '../../../core/domain/reading-rules.ts';
import type { Standing } from '../../../core/domain/reading-validity.ts';
import type { Conditions } from '../../../shared/formats/reading-sheet.v1.ts';
import type { ConditionTag, Duty, Fuel, Stop, SymptomTag } from '../../../shared/vocabulary/conditions.ts';

const fuels: Record<Fuel, string> = {
  petrol: 'Petrol', E10: 'E10', E85: 'E85', ethanol: 'Ethanol', methanol: 'Methanol', 'leaded petrol': 'Leaded petrol', avgas: 'Avgas', LPG: 'LPG',
  'natural gas': 'Natural gas', 'two-stroke premix': 'Two-stroke premix',
};
const duties: Record<Duty, string> = {
  idle: 'Idle', 'short trips': 'Short trips', town: 'Town', 'light load': 'Light load', 'steady cruise': 'Steady cruise', 'full load': 'Full load', mixed: 'Mixed',
};
const stops: Record<Stop, string> = { 'clean cut': 'Clean cut at load', 'idled before stop': 'Idled, then stopped', 'driven home': 'Driven home' };

const symptoms: Record<SymptomTag, string> = {
  misfire: 'Misfire', 'misfire at idle': 'Misfire at idle', 'misfire under load': 'Misfire under load', 'misfire when cold': 'Misfire when cold',
  'misfire when hot': 'Misfire when hot', 'hard start': 'Hard to start', 'hard start cold': 'Hard to start cold', 'hard start hot': 'Hard to start hot',
  'rough running': 'Rough running', 'rough idle': 'Rough idle', hesitation: 'Hesitation', 'loss of power': 'Loss of power', surging: 'Surging',
  vibration: 'Vibration', 'rough running on one magneto': 'Rough on one magneto', 'knock under load': 'Knock under load',
  'run-on after switch-off': 'Runs on after switch-off', 'backfire intake': 'Backfire in the intake', 'backfire exhaust': 'Backfire in the exhaust',
  'blue smoke': 'Blue smoke', 'black smoke': 'Black smoke', 'white smoke': 'White smoke', 'oil use': 'Uses oil', 'coolant loss': 'Loses coolant',
  overheating: 'Overheats', 'high fuel use': 'High fuel use', 'fuel smell': 'Smell of fuel', 'no start': 'Does not start', flooded: 'Flooded',
};

const tags: Record<ConditionTag, string> = {
  'choke sticking': 'Choke sticking', 'air filter clogged': 'Air filter clogged', 'air filter missing': 'Air filter missing',
  'gap found too wide': 'Gap found too wide', 'gap found too narrow': 'Gap found too narrow', 'float level high': 'Float level high',
  'injector leaking': 'Injector leaking', 'vacuum leak found': 'Vacuum leak found', 'intake gasket doubtful': 'Intake gasket doubtful',
  'timing advanced from specification': 'Timing advanced from specification', 'timing retarded from specification': 'Timing retarded from specification',
  'timing unknown': 'Timing unknown', 'cooling fault found': 'Cooling fault found', 'low-octane fuel': 'Low-octane fuel',
  'new rings running in': 'New rings running in', 'valve guides worn': 'Valve guides worn', 'breather blocked': 'Breather blocked',
  'oil overfilled': 'Oil overfilled', 'wrong plug fitted': 'Wrong plug fitted', 'wrong reach fitted': 'Wrong reach fitted', 'plugs new': 'Plugs new',
  'plugs cleaned': 'Plugs cleaned', 'resistor lead added': 'Resistor lead added', 'weak coil suspected': 'Weak coil suspected', 'old leads': 'Old leads',
  'head gasket doubtful': 'Head gasket doubtful', 'heat riser stuck': 'Heat riser stuck', 'carburettor heat used': 'Carburettor heat used',
  'primer leaking': 'Primer leaking', 'fuel pressure low': 'Fuel pressure low', 'dirty fuel': 'Dirty fuel', 'lean running in cruise': 'Lean running in cruise',
  'long idling': 'Long idling', 'cold weather': 'Cold weather', 'stored long': 'Stored long', 'additive used': 'Additive used',
  'altitude changed': 'Altitude changed', 'jets changed': 'Jets changed', 'boost raised': 'Boost raised', 'heat step changed': 'Heat step changed',
};

const measures: Record<Exclude<keyof Conditions, 'fuel' | 'duty' | 'stop' | 'warm' | 'tags' | 'text'>, { readonly label: string; readonly hint?: string }> = {
  distanceKm: { label: 'Distance on these plugs' },
  hours: { label: 'Hours on these plugs' },
  ambientC: { label: 'Outside air' },
  altitudeM: { label: 'Altitude' },
  coolantC: { label: 'Coolant' },
  lambda: { label: 'Lambda, measured', hint: 'Below 1 is rich, above 1 is lean.' },
  egtC: { label: 'Exhaust gas' },
  boostKPa: { label: 'Boost', hint: 'Above ambient.' },
  advanceDeg: { label: 'Advance', hint: 'Degrees of crank before top dead centre.' },
  speedRpm: { label: 'Engine speed' },
};

const questions: Record<ReadingQuestion, string> = {
  'mixture and heat': 'Mixture and heat value', 'wear and oil': 'Wear and oil use', 'between cylinders': 'One cylinder against the others',
};
const standings: Record<Standing, string> = { good: 'Can be read', 'with care': 'With care', 'says little': 'Says little', 'cannot tell yet': 'Not known yet' };
const effects: Record<Effect, string> = {
  supports: 'Speaks for it', 'bear in mind': 'Bear in mind', 'not known': 'Missing', weakens: 'Weakens it', spoils: 'Spoils it',
};

export const run = {
  fuels, duties, stops, symptoms, tags, measures, questions, standings, effects,
  howItRan: 'How it ran',
  fuel: 'Fuel',
  duty: 'Running before the plugs were pulled',
  stop: 'How it was stopped',
  warm: 'Fully warm',
  warmChoices: { yes: 'Yes', no: 'No' },
  whileRunning: 'Measured while running',
  whileRunningHint: 'Only what you have. Nothing here is needed.',
  measuredSummary: (count: number): string => (count === 0 ? 'nothing noted' : `${count} noted`),
  noticed: 'What was noticed',
  noticedHint: 'Mark what was there, and what you looked for and did not find. What you leave open counts for nothing.',
  filter: 'Find a symptom or a circumstance',
  filterHint: 'Press / to come here. Type a part of a word; Enter marks the first one found, Escape shows all again.',
  found: (count: number): string => (count === 0 ? 'Nothing of that name. Write it into the notes.' : count === 1 ? '1 found' : `${count} found`),
  marked: (name: string): string => `Marked: ${name}`,
  symptomsTitle: 'Symptoms',
  there: 'There',
  notThere: 'Not there',
  whichCylinder: (symptom: string): string => `${symptom}: in which cylinder`,
  whole: 'Not tied to one',
  cylinder: (number: number): string => `Cylinder ${number}`,
  tagsTitle: 'Circumstances and what was changed or found',
  symptomGroups: {
    misfire: 'Misfire', starting: 'Starting', running: 'Running', noise: 'Knock and bangs', fluids: 'Smoke, oil, coolant, fuel',
  },
  tagGroups: {
    plugs: 'The plugs', air: 'Air and mixture', fuel: 'Fuel and its supply', spark: 'Gap, spark and timing', engine: 'Oil, gaskets, cooling', use: 'Use and weather',
  },
  notes: 'Notes',
  notesHint: 'Anything else that may matter: what was done lately, how it began.',
  plan: 'What this reading can tell',
  better: 'To make it better',
  road: 'Never full load on a public road: use a dynamometer or a closed course.',
  hot: 'Let the engine cool before the plugs come out: hot parts burn, and hot aluminium threads tear.',
};
