import type { CylinderFindingName, PlugFindingName } from '../../../core/knowledge/findings.ts';
import type { Prior } from '../../../core/knowledge/strengths.ts';
import type { Cause, CauseScope, Circumstance, Condition, Needs, Term } from '../../../core/knowledge/types.ts';
import type { Shelf } from '../../app/route.ts';
import type { ShopSays } from '../../../shared/formats/shop-lines.v1.ts';
import type { MoveWord, StrengthWord } from '../../../shared/vocabulary/knowledge.ts';

const strengths: Readonly<Record<StrengthWord, string>> = {
  'almost always': 'almost always', usually: 'usually', often: 'often', sometimes: 'sometimes', rarely: 'rarely', 'hardly ever': 'hardly ever',
};
const priors: Readonly<Record<Prior, string>> = { common: 'common', occasional: 'occasional', rare: 'rare', 'very rare': 'very rare' };
const moves: Readonly<Record<MoveWord, string>> = {
  found: 'found', 'far likelier': 'far likelier', 'much likelier': 'much likelier', likelier: 'likelier', 'less likely': 'less likely', 'much less likely': 'much less likely',
  'ruled out': 'ruled out',
};

const anyOf = (words: readonly string[]): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`);
const count = (n: number, one: string, several: string): string => `${n} ${n === 1 ? one : several}`;

const shelves: Readonly<Record<Shelf, string>> = {
  looks: 'Appearances', causes: 'Causes', checks: 'Checks', stops: 'Stop rules', bars: 'Bars on a hotter plug', contradictions: 'Second looks', cautions: 'Cautions',
  words: 'Words', sources: 'Sources', yours: 'Your own lines', here: 'In this reading',
};

const plugFindings: Readonly<Record<PlugFindingName, string>> = {
  noseColour: 'nose colour', noseSurface: 'nose surface', deposit: 'deposit', coverage: 'coverage', specks: 'specks', bridge: 'bridging', centreElectrode: 'centre electrode',
  groundElectrode: 'ground electrode', heatLine: 'heat line', shellRim: 'shell rim', sootRing: 'soot ring', noseDamage: 'nose damage', insulator: 'insulator', body: 'body',
  terminal: 'terminal', seat: 'seat', threads: 'threads', contact: 'contact marks', overall: 'at a glance', gap: 'gap', resistor: 'resistor', insulation: 'insulation',
  removalTorque: 'torque to loosen', firing: 'firing',
};
const cylinderFindings: Readonly<Record<CylinderFindingName, string>> = {
  compression: 'compression', compressionWet: 'compression with oil', leakDown: 'leak-down', spark: 'spark', injector: 'injector', speedDropWhenCut: 'speed drop when cut',
  exhaustTemperature: 'exhaust temperature', borescope: 'borescope', 'swap plug': 'plug swapped', 'swap lead': 'lead swapped', 'swap coil': 'coil swapped',
  'swap injector': 'injector swapped', 'known-good plug': 'known-good plug', 'known-good lead': 'known-good lead', 'known-good coil': 'known-good coil',
  'known-good injector': 'known-good injector',
};
const finding = (name: string): string => ({ ...plugFindings, ...cylinderFindings } as Readonly<Record<string, string>>)[name] ?? name;

const scopes: Readonly<Record<CauseScope, string>> = {
  plug: 'one plug', cylinder: 'one cylinder', neighbours: 'two neighbours over one gasket edge', 'mixture group': 'all cylinders of one carburettor or throttle',
  coil: 'the cylinders of one coil', 'ignition set': 'the plugs of one magneto or coil pack', bank: 'one bank',
  ends: 'the end cylinders of the rows', middle: 'the middle cylinders of the rows', 'lower plugs': 'all lower plugs', engine: 'the whole engine',
};
const kinds: Readonly<Record<Cause['kind'], string>> = {
  mixture: 'Mixture', ignition: 'Ignition', 'heat value': 'Heat value of the plug', temperature: 'Temperature', oil: 'Oil', fuel: 'Fuel', deposit: 'Deposits', coolant: 'Coolant',
  detonation: 'Detonation', 'pre-ignition': 'Pre-ignition', mechanical: 'Mechanical', fitting: 'Fitting of the plug', use: 'Use', age: 'Age', harmless: 'Harmless',
};
const heatRules: Readonly<Record<Condition['heatRule'], string>> = {
  leave: 'The heat value has nothing to do with it; leave it.',
  'never first': 'Never the first thing to change; put the cause right.',
  'colder once causes are cleared': 'One step colder at most, once every other cause is cleared.',
  'hotter for a whole set once causes are cleared': 'One step hotter at most, for a whole set alike, once every other cause is cleared.',
};

const fitted: Readonly<Record<Extract<Circumstance, { fitted: unknown }>['fitted'], string>> = {
  hotter: 'hotter than specified', colder: 'colder than specified', 'as specified': 'as specified', 'not as specified': 'not as specified', 'longer reach': 'longer in reach than specified',
  'shorter reach': 'shorter in reach than specified', 'other seat': 'with another seat than specified',
};
const names: Readonly<Record<string, string>> = {
  fuel: 'Fuel', duty: 'Running', stop: 'Stop', use: 'Use', cycle: 'Cycle', aspiration: 'Aspiration', cooling: 'Cooling', mixture: 'Mixture by', ignition: 'Ignition by',
  position: 'Position', served: 'Plugs in service', notUse: 'Not for', plugsPerCylinder: 'Plugs per cylinder',
};

/** One thing known of the engine or its running, as a short label. */
function circumstance(by: Circumstance): string {
  if ('tag' in by) return `Noted: ${by.tag}`;
  if ('warm' in by) return by.warm ? 'The engine was warm' : 'The engine was cold';
  if ('lambda' in by) return `Mixture measured ${by.lambda}`;
  if ('coolant' in by) return by.coolant === 'cold' ? 'Coolant below 70 °C' : 'Coolant above 105 °C';
  if ('ambient' in by) return 'Air below 5 °C';
  if ('altitude' in by) return 'Above 1200 m';
  if ('fitted' in by) return `Plug ${fitted[by.fitted]}`;
  const [name, value] = Object.entries(by)[0] as [string, string | readonly string[]];
  return `${names[name] ?? name}: ${anyOf([value].flat())}`;
}

/** Something that must be seen for a rule to speak. */
function term(seen: Term): string {
  if ('plug' in seen) return `${finding(seen.plug)}: ${anyOf(seen.is)}`;
  if ('cylinder' in seen) return `${finding(seen.cylinder)}: ${anyOf(seen.is)}`;
  if ('symptom' in seen) return `symptom: ${seen.symptom}`;
  return circumstance(seen.circumstance);
}

const needs = (wanted: Needs): readonly string[] =>
  Object.entries(wanted).map(([name, value]) => `${names[name] ?? name}: ${anyOf([value as string | number | readonly string[]].flat().map(String))}`);

const intro = {
  title: 'What this program judges by',
  about: 'A reading is judged by causes, by what they do to a plug, and by what can be seen then. Every line below says why it stands here and who says so. Look up anything, and follow it to its source.',
  counted: (lines: number, documents: number, documented: number, practice: number, memory: number): string =>
    `${lines} lines in all: ${documented} rest on one or more of ${documents} documents, ${practice} on common practice without a document, ${memory} on memory alone.`,
  disputed: (n: number): string => `In ${count(n, 'place', 'places')} a source says otherwise. Both are shown, and the line is held weaker.`,
  words: 'What the words stand for',
  wordsAbout: 'The words are graded expert knowledge, not counted failures. The arithmetic takes them at these numbers.',
  strengths: 'How often, when the cause or condition is there',
  priors: 'How common a cause is before anything is seen',
  moves: 'How a circumstance moves the odds of a cause',
  inHundred: (share: string): string => `${share} in 100`,
  times: (factor: string): string => `× ${factor}`,
  over: (factor: string): string => `÷ ${factor}`,
  guards: 'Stop rules and bars on a hotter plug are not weighed. They hold whenever their signs are on the sheet, whatever else is believed, and no line of your own can change them.',
};

const looks = {
  how: 'How it looks',
  typical: 'Drawn with the value of each part that is seen most often. Real plugs show some of it.',
  measured: 'Measured or felt',
  madeBy: 'What makes it',
  makersAbout: 'Before anything else is known: how common the cause is, and how often it leads to this.',
  gives: 'What the engine may do',
  cure: 'What to do',
  heat: 'Heat value',
  stops: 'Rules that speak when this is seen',
  calls: 'A plug so is called',
  cold: 'The tip runs too cold.',
  hot: 'The tip runs too hot.',
  print: 'Print this page',
};

const causes = {
  also: 'Also said',
  reaches: 'Reaches',
  prior: 'How common',
  needs: 'Only where',
  makes: 'What it does to the plug',
  shows: 'What it shows on the cylinder',
  gives: 'What the engine may do',
  moved: 'What makes it likelier or less likely',
  cure: 'What to do',
  trust: 'The cure then holds',
  firstCheck: 'Look in this order',
  checks: 'Checks that can tell',
  heat: 'Heat value',
  barred: 'With a sign of this, no hotter plug.',
  step: { hotter: 'The plug is too cold for the work. A hotter step is the cure, once everything else is cleared.', colder: 'The plug is too hot for the work. A colder step is the cure, once everything else is cleared.' },
  harmless: 'Nothing to put right.',
  part: (part: string): string => `Moves with the ${part} when parts are swapped.`,
  none: 'Nothing is known of this.',
};

const checks = {
  how: 'How it is done',
  minutes: (minutes: string): string => `about ${minutes} min`,
  where: { cylinder: 'On one cylinder', engine: 'Once for the engine' },
  at: { cylinder: 'on one cylinder', engine: 'once for the engine' },
  running: 'on the running engine',
  tells: 'What the outcome speaks for',
  outcome: (what: string, value: string): string => `${what}: ${value}`,
  looksFor: 'It looks for',
  finds: 'Finds what is there',
  falsely: 'Finds what is not there',
  trial: 'The fault moves with the part that carries it, and stays where it is when another part is exchanged.',
  sends: 'Causes that send here',
  cautions: 'Take care',
};

const rules = {
  speaks: 'It speaks when',
  always: 'Always shown.',
  and: 'and',
  sign: (sign: string): string => `Bar: ${sign}`,
  bar: (sign: string, seen: readonly string[]): string => `${sign} – ${anyOf(seen)}`,
  barAbout: 'While this is on the sheet no step toward a hotter plug is advised.',
  stopAbout: 'It outranks every belief.',
  first: 'If the plug shows',
  second: 'it hardly ever shows',
  ask: 'What the reader is asked',
};

const wordPages = {
  graded: 'Graded expert judgement, not counted failures: no field statistics of plug faults were found. The steps are wide enough that neighbours can be told apart.',
  standsFor: (number: string): string => `Stands for ${number}.`,
  strengthAbout: 'Of plugs or engines where the cause or condition is there, so many show it, find it or are cured.',
  priorAbout: 'Of plugs that are pulled for a reading, so many have the cause before anything is seen.',
  moveAbout: 'The odds of the cause are multiplied or divided by it where the circumstance is known to hold.',
  scale: 'The whole scale',
  used: 'Where it is used',
  unused: 'No line uses it.',
  uses: {
    makes: 'What a cause does to a plug', shows: 'What a condition shows on the plug', found: 'What a cause shows on the cylinder', gives: 'Symptoms',
    moved: 'Circumstances of a cause', common: 'Causes that are so common', checks: 'Checks that look for causes', cures: 'Trust in cures',
  },
  places: (n: number): string => count(n, 'place', 'places'),
  other: 'Beside the lines',
  cures: 'Trust in cures',
  curesAbout: 'How far a cure, once carried out, is trusted to have removed its cause. At the next reading the odds of that cause are multiplied by what is missing to certainty. No counted repairs were found.',
  uncleaned: (share: string): string => `On plugs that were neither cleaned nor renewed it counts for ${share} in 100 of that: they still carry what was there before.`,
  well: 'With nothing wrong',
  wellAbout: 'How often each value is met where nothing is wrong. What a condition does not show looks so. Readers and lighting err, so nothing is impossible. Common practice, not counted.',
  wellPlug: 'On the plug',
  wellCylinder: 'On the cylinder',
  wellSymptom: (share: string): string => `Each symptom is felt in ${share} of 100 engines with nothing wrong.`,
  share: (value: string, share: string): string => `${value} ${share}\u00a0%`,
};

const sources = {
  read: (how: string): string => `How it was read: ${how}.`,
  lines: (n: number): string => `${count(n, 'line rests', 'lines rest')} on it`,
  alone: (n: number): string => `${n} of them on nothing else.`,
  disputes: 'Where it says otherwise',
  practice: 'Common practice',
  memory: 'From memory',
  practiceAbout: 'What the trade does and no document at hand says. The weakest ground but one.',
  memoryAbout: 'What was known and could not be looked up. The weakest ground.',
};

const says: Readonly<Record<ShopSays['kind'], string>> = {
  makes: 'leads to a condition of the plug', shows: 'shows on plug or cylinder', gives: 'gives a symptom', moved: 'is likelier or less likely where',
};

const yours = {
  about: 'Lines that you add on your own word. They count like the others, are marked as yours wherever they show, and can be switched off. They can only add: stop rules, bars on a hotter plug and what must come first stay as they are.',
  none: 'No line of your own yet. Open a cause or an appearance and add one there, or begin here.',
  add: 'Add a line of your own',
  addTo: (name: string): string => `Add a line of your own: ${name}`,
  mark: (name: string): string => `yours · ${name}`,
  on: 'counts',
  off: 'off',
  refused: 'It cannot be taken and does not count:',
  change: 'Change',
  changeOf: (line: string): string => `Change: ${line}`,
  remove: 'Remove',
  removeOf: (line: string): string => `Remove: ${line}`,
  removed: 'The line was removed.',
  export: 'Save all as a file',
  import: 'Take in a file',
  imported: (added: number, known: number): string => `${count(added, 'line', 'lines')} added${known > 0 ? `, ${known} were here already` : ''}.`,
  importFailed: 'This file could not be taken in',
  importAbout: 'Nothing was added. Put this right in the file:',
  form: {
    title: 'A line of your own',
    about: 'Say it of one cause or appearance, how often, and why. It is held against the same rules as every other line.',
    of: 'Cause or appearance',
    ofNone: 'Choose',
    kind: 'What you say of it',
    kinds: says,
    condition: 'Which condition',
    finding: 'What is looked at',
    value: 'What it shows',
    symptom: 'Which symptom',
    when: 'Where what is known',
    strength: 'How often',
    how: 'How much',
    because: 'Why',
    becauseHint: 'A whole sentence: what you have seen, and how often.',
    by: 'Who says so',
    byHint: 'A name that others here know.',
    choose: 'Choose',
    save: 'Add the line',
    saveChanged: 'Keep the change',
    missing: 'Choose one.',
  },
};

const here = {
  title: (reading: string): string => `What spoke in ${reading}`,
  about: 'Every line that led from a likely cause to something observed, with what the observation alone does to the odds of that cause.',
  choose: 'Open a reading first; then this list shows which lines spoke there.',
  stops: 'Stop rules that speak',
  bars: 'Bars on a hotter plug that are set',
  noStops: 'No stop rule speaks.',
  noBars: 'No bar is set.',
  causes: 'Causes, and the lines behind what speaks for and against them',
  noCauses: 'No cause is likely enough to be named.',
  bits: (bits: string): string => `${bits} bits`,
  noLine: 'no line of its own: weighed against the rival causes',
  counted: (lines: number, own: number): string => `${count(lines, 'line', 'lines')} spoke${own === 0 ? '' : `, ${own} of them your own`}.`,
  back: 'Back to the findings',
  checks: 'Checks that are advised',
};

export const knowledge = {
  place: 'Look it up',
  title: (name: string): string => `${name} · Look it up`,
  strengths, priors, moves, shelves, shelvesName: 'What to look up', scopes, kinds, heatRules, finding, circumstance, term, needs, intro, looks, causes, checks, rules, words: wordPages, sources, yours, here,
  find: 'Find by word',
  findHint: 'for example oil, glaze, timing',
  listOf: (shelf: string): string => `List: ${shelf}`,
  found: (n: number): string => (n === 0 ? 'Nothing has these words.' : count(n, 'place', 'places')),
  notThere: 'There is nothing called so here. It may have had another name in an earlier version.',
  because: 'Because',
  against: (words: string): string => `Says otherwise: ${words}`,
  spoke: (bits: string): string => `spoke here, ${bits} bits`,
  leads: (name: string): string => `leads to: ${name}`,
  shows: (what: string, value: string): string => `${what}: ${value}`,
  gives: (symptom: string): string => `symptom: ${symptom}`,
  sourcesHere: 'Sources on this page',
  percent: (share: string): string => `${share} %`,
  about: 'Graded expert knowledge, not counted failures. The engine maker’s data come first.',
};
