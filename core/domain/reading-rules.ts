import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { ConditionTag, Fuel } from '../../shared/vocabulary/conditions.ts';
import { COMMON_PRACTICE, FROM_MEMORY, type SourceId } from '../knowledge/types.ts';

/** What somebody may want to learn from a set of pulled plugs. Each asks for another way of running them. */
export const READING_QUESTIONS = ['mixture and heat', 'wear and oil', 'between cylinders'] as const;
export type ReadingQuestion = (typeof READING_QUESTIONS)[number];

/** What a circumstance does to an answer. `bear in mind` changes where to look, not how far to trust it. */
export type Effect = 'supports' | 'bear in mind' | 'not known' | 'weakens' | 'spoils';

export type ReadingRule = {
  readonly id: string;
  readonly holds: (sheet: ReadingSheet) => boolean;
  readonly effects: { readonly [Q in ReadingQuestion]?: Effect };
  readonly words: string;
  readonly because: string;
  readonly source: readonly SourceId[];
  /** What to do about it at the next reading, or what to write down now. */
  readonly remedy?: string;
};

/** Below this the engine is taken as not warm. Common practice, no source. */
const WARM_COOLANT_C = 60;
/** RD-WARM: a new plug needs at least ten minutes before it colours (S62); as a distance at 60 km/h. */
const COLOURS_AFTER = { hours: 10 / 60, km: 10 };
/** RD-KM: wear and oil are read after 500 to 5000 km of normal use (common practice); as hours at 50 km/h. */
const WEAR_SPELL = { km: [500, 5000], hours: [10, 100] } as const;

const said = ({ conditions }: ReadingSheet) => conditions ?? {};
const tagged = (sheet: ReadingSheet, ...tags: readonly ConditionTag[]): boolean => tags.some((tag) => said(sheet).tags?.includes(tag));
const burns = (sheet: ReadingSheet, ...fuels: readonly Fuel[]): boolean => fuels.some((fuel) => said(sheet).fuel === fuel);

/** How far the running on these plugs lies from a span given in km and in hours; distance outranks hours. */
function served(sheet: ReadingSheet, span: { readonly km: readonly [number, number]; readonly hours: readonly [number, number] }): 'below' | 'within' | 'above' | undefined {
  const { distanceKm, hours } = said(sheet);
  const [value, [low, high]] = distanceKm === undefined ? [hours, span.hours] : [distanceKm, span.km];
  if (value === undefined) return undefined;
  return value < low ? 'below' : value > high ? 'above' : 'within';
}
const tooShortToColour = (sheet: ReadingSheet): boolean =>
  served(sheet, { km: [COLOURS_AFTER.km, Infinity], hours: [COLOURS_AFTER.hours, Infinity] }) === 'below';
/** What was noted outranks what was measured; undefined when neither tells. */
function warmth({ conditions }: ReadingSheet): boolean | undefined {
  if (conditions?.warm !== undefined) return conditions.warm;
  return conditions?.coolantC === undefined ? undefined : conditions.coolantC >= WARM_COOLANT_C;
}
const isCold = (sheet: ReadingSheet): boolean => warmth(sheet) === false;
const isWarm = (sheet: ReadingSheet): boolean => warmth(sheet) === true;
const carriesOlderRunning = (sheet: ReadingSheet): boolean => !tagged(sheet, 'plugs new', 'plugs cleaned');

const plugKinds = ({ plugs }: ReadingSheet): number =>
  new Set(plugs.flatMap(({ fitted }) => (fitted?.designation ? [fitted.designation.trim().toLowerCase()] : []))).size;
const plugsRead = ({ plugs }: ReadingSheet): number => plugs.filter(({ tip }) => tip && Object.keys(tip).some((facet) => facet !== 'unsure')).length;
const plugHoles = ({ engine }: ReadingSheet): number => engine.cylinders * (engine.plugsPerCylinder ?? 1);

export const READING_RULES: readonly ReadingRule[] = [
  {
    id: 'clean-cut', holds: (s) => said(s).stop === 'clean cut', effects: { 'mixture and heat': 'supports' },
    words: 'Stopped clean at the load to be judged.', because: 'The tip keeps the picture of the running that was cut off.', source: ['S61', 'S62'],
  },
  {
    id: 'idled', holds: (s) => said(s).stop === 'idled before stop', effects: { 'mixture and heat': 'spoils', 'between cylinders': 'weakens' },
    words: 'The engine idled before it was stopped.', because: 'The tip shows the last running only; after about a minute at idle it says only that it idled.', source: ['S60', FROM_MEMORY],
    remedy: 'Warm it up, hold the load you want to judge, cut the ignition and let it coast; pull the plugs without restarting.',
  },
  {
    id: 'driven-home', holds: (s) => said(s).stop === 'driven home', effects: { 'mixture and heat': 'weakens' },
    words: 'The plugs saw the way home last.', because: 'The tip shows the last running: a drive at light load lies over the picture of the load in question.', source: ['S60'],
    remedy: 'Good enough to compare cylinders. To judge mixture or heat value, cut clean at the load in question.',
  },
  {
    id: 'stop-unknown', holds: (s) => said(s).stop === undefined, effects: { 'mixture and heat': 'not known' },
    words: 'How the engine was stopped is not noted.', because: 'The tip shows the last running only, so the last minute decides what it says.', source: ['S60'],
    remedy: 'Note how it was stopped.',
  },
  {
    id: 'cold', holds: isCold, effects: { 'mixture and heat': 'spoils', 'between cylinders': 'weakens' },
    words: 'The engine was not fully warm.', because: 'Cold enrichment leaves soot, and a nose below its working temperature does not clean itself.', source: ['S62', FROM_MEMORY],
    remedy: 'Run it fully warm before the reading.',
  },
  {
    id: 'warm', holds: isWarm, effects: { 'mixture and heat': 'supports' },
    words: 'Fully warm.', because: 'A reading means something only on a warm engine.', source: ['S62'],
  },
  {
    id: 'warm-unknown', holds: (s) => !isCold(s) && !isWarm(s), effects: { 'mixture and heat': 'not known' },
    words: 'Whether it was warm is not noted.', because: 'A reading means something only on a warm engine.', source: ['S62'], remedy: 'Note whether it was warm.',
  },
  {
    id: 'light-duty', holds: (s) => ['idle', 'short trips'].includes(said(s).duty ?? '') || tagged(s, 'long idling'), effects: { 'mixture and heat': 'weakens' },
    words: 'It mostly idled or made short trips.', because: 'Long idling and short trips soot a whole set by themselves.', source: ['S14', 'S16', 'S17'],
    remedy: 'Give it a spell at load, fully warm, then read again before touching the mixture.',
  },
  {
    id: 'duty-unknown', holds: (s) => said(s).duty === undefined && !tagged(s, 'long idling'), effects: { 'mixture and heat': 'not known' },
    words: 'How it was run is not noted.', because: 'The same tip is normal after town driving and a warning after full load.', source: [COMMON_PRACTICE], remedy: 'Note the running.',
  },
  {
    id: 'new-too-short', holds: (s) => tagged(s, 'plugs new') && tooShortToColour(s), effects: { 'mixture and heat': 'spoils', 'between cylinders': 'weakens' },
    words: 'New plugs, run for too short a time to colour.', because: 'A new plug needs at least ten minutes of warm running before it colours.', source: ['S62'],
    remedy: 'Run at least ten minutes, about 10 km, and read again; on unleaded fuel make two runs or more.',
  },
  {
    id: 'new', holds: (s) => tagged(s, 'plugs new') && !tooShortToColour(s), effects: { 'mixture and heat': 'supports' },
    words: 'New plugs.', because: 'No older colour hides what this running left.', source: ['S61'],
  },
  {
    id: 'old-colour', holds: (s) => carriesOlderRunning(s) && ['within', 'above'].includes(served(s, WEAR_SPELL) ?? ''), effects: { 'mixture and heat': 'weakens' },
    words: 'The tips carry older running as well.', because: 'Old colour hides new: mixture is read on fresh plugs.', source: ['S61'],
    remedy: 'To judge mixture, fit fresh plugs of the same type for the run.',
  },
  {
    id: 'changed-since', holds: (s) => carriesOlderRunning(s) && tagged(s, 'jets changed', 'altitude changed', 'boost raised'), effects: { 'mixture and heat': 'weakens' },
    words: 'Something was changed while these plugs were in.', because: 'The tip carries running from before and after the change.', source: [COMMON_PRACTICE],
    remedy: 'Read each setting on fresh or cleaned plugs.',
  },
  {
    id: 'few-km', holds: (s) => served(s, WEAR_SPELL) === 'below', effects: { 'wear and oil': 'spoils' },
    words: 'Too little running on these plugs.', because: 'Wear and oil show after 500 to 5000 km of normal use (about 10 to 100 h).', source: [COMMON_PRACTICE],
    remedy: 'Read wear and oil after at least 500 km or 10 h.',
  },
  {
    id: 'enough-km', holds: (s) => served(s, WEAR_SPELL) === 'within' && !tagged(s, 'plugs cleaned'), effects: { 'wear and oil': 'supports' },
    words: 'Enough normal running.', because: 'Wear and oil show after 500 to 5000 km of normal use (about 10 to 100 h).', source: [COMMON_PRACTICE],
  },
  {
    id: 'many-km', holds: (s) => served(s, WEAR_SPELL) === 'above' && !tagged(s, 'plugs cleaned'), effects: { 'wear and oil': 'bear in mind' },
    words: 'Long running on these plugs.', because: 'Wear measures well, but when the oil came cannot be told from one tip.', source: [COMMON_PRACTICE],
  },
  {
    id: 'km-unknown', holds: (s) => served(s, WEAR_SPELL) === undefined, effects: { 'wear and oil': 'not known' },
    words: 'Distance or hours on these plugs are not noted.', because: 'Wear and oil show after 500 to 5000 km of normal use (about 10 to 100 h).', source: [COMMON_PRACTICE],
    remedy: 'Note the distance or the hours on these plugs.',
  },
  {
    id: 'cleaned', holds: (s) => tagged(s, 'plugs cleaned'), effects: { 'wear and oil': 'weakens', 'mixture and heat': 'bear in mind' },
    words: 'The plugs had been cleaned.', because: 'Deposits from before the cleaning are gone; only what came since can be read.', source: [COMMON_PRACTICE],
  },
  {
    id: 'alcohol', holds: (s) => burns(s, 'ethanol', 'methanol'), effects: { 'mixture and heat': 'weakens' },
    words: 'Alcohol fuel.', because: 'Alcohol leaves no colour on the nose.', source: ['S60'],
    remedy: 'Read the shell rim and the first three threads instead of the nose.',
  },
  {
    id: 'ethanol-blend', holds: (s) => burns(s, 'E85'), effects: { 'mixture and heat': 'weakens' },
    words: 'Mostly ethanol in the fuel.', because: 'Ethanol blends colour the nose even more faintly than unleaded petrol.', source: ['S60', FROM_MEMORY],
    remedy: 'Read the shell rim and the first three threads as well as the nose.',
  },
  {
    id: 'unleaded', holds: (s) => burns(s, 'petrol', 'E10'), effects: { 'mixture and heat': 'bear in mind' },
    words: 'Unleaded fuel colours faintly.', because: 'The old tan came from lead; near white with smooth surface and sharp edges is normal. Take two runs or more.', source: ['S60', 'S61', FROM_MEMORY],
  },
  {
    id: 'lpg', holds: (s) => burns(s, 'LPG'), effects: { 'mixture and heat': 'bear in mind' },
    words: 'With LPG the sources disagree about colour.', because: 'A military manual calls brown normal, others say whiter than petrol: do not judge by colour alone.', source: ['S14', COMMON_PRACTICE],
  },
  {
    id: 'two-stroke', holds: (s) => s.engine.cycle === 'two-stroke' || burns(s, 'two-stroke premix'), effects: { 'mixture and heat': 'bear in mind' },
    words: 'Two-stroke oil colours the tip.', because: 'Judge at the root of the nose, deep in the shell, not at its end.', source: ['S59', 'S63'],
  },
  {
    id: 'lambda-control', holds: (s) => ['port injection', 'direct injection'].includes(s.engine.mixture?.kind ?? '') && ['steady cruise', 'light load', 'town'].includes(said(s).duty ?? ''),
    effects: { 'mixture and heat': 'bear in mind' }, words: 'Injection with a lambda sensor corrects itself at this load.',
    because: 'A closed loop holds lambda 1; the plug cannot show an error it has corrected. Read the fuel trims.', source: [FROM_MEMORY],
  },
  {
    id: 'additive', holds: (s) => tagged(s, 'additive used'), effects: { 'mixture and heat': 'weakens' },
    words: 'An additive was used.', because: 'Additives colour and coat the tip by themselves; a red coat comes from manganese or iron, not from heat.', source: ['S45', 'W3'],
    remedy: 'Read again on plain fuel and fresh plugs.',
  },
  {
    id: 'mixed-plugs', holds: (s) => plugKinds(s) > 1, effects: { 'between cylinders': 'spoils' },
    words: 'The plugs are not all of one type.', because: 'Plugs of different make or heat value colour differently by themselves.', source: ['S16'],
    remedy: 'Fit one type throughout, then compare.',
  },
  {
    id: 'set-incomplete', holds: (s) => plugsRead(s) < plugHoles(s), effects: { 'between cylinders': 'weakens' },
    words: 'Not every plug has been read.', because: 'The difference between cylinders is the strongest sign: same fuel, same weather, same driver.', source: ['S14'],
    remedy: 'Pull and read them all, in order.',
  },
  {
    id: 'set-complete', holds: (s) => plugsRead(s) >= plugHoles(s), effects: { 'between cylinders': 'supports' },
    words: 'Every plug has been read.', because: 'The difference between cylinders is the strongest sign: same fuel, same weather, same driver.', source: ['S14'],
  },
];
