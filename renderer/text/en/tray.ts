import type { PlugPlace } from '../../../core/domain/plugs.ts';
import type { Position } from '../../../shared/vocabulary/engine.ts';
import type { FacetName } from '../../../shared/vocabulary/tip.ts';
import type { Verdict } from '../../../shared/vocabulary/verdicts.ts';
import type { View } from '../../ui/drawn-tip/drawing.ts';
import type { Question, TipPart } from '../../ui/drawn-tip/parts.ts';

const parts: Readonly<Record<TipPart, string>> = { rim: 'Rim', nose: 'Nose', electrodes: 'Electrodes', outside: 'Outside' };

const questions: Readonly<Record<Question, string>> = {
  overall: 'At a glance',
  noseColour: 'Nose colour',
  noseSurface: 'Nose surface',
  deposit: 'Deposit on the nose',
  coverage: 'How much of the nose it covers',
  specks: 'Specks on the nose',
  bridge: 'Bridging',
  centreElectrode: 'Centre electrode',
  groundElectrode: 'Ground electrode',
  heatLine: 'Heat line on the ground electrode',
  shellRim: 'Rim of the shell',
  sootRing: 'Soot ring deep on the nose',
  noseDamage: 'Damage to the nose',
  insulator: 'Insulator as a whole',
  body: 'Outside above the hexagon',
  terminal: 'Terminal',
  seat: 'Seat and gasket',
  threads: 'Threads',
  contact: 'Contact marks',
};

/** Within its part a facet needs fewer words. */
const short: Readonly<Record<FacetName, string>> = {
  noseColour: 'colour', noseSurface: 'surface', deposit: 'deposit', coverage: 'coverage', specks: 'specks', bridge: 'bridging',
  centreElectrode: 'centre electrode', groundElectrode: 'ground electrode', heatLine: 'heat line', shellRim: 'face of the shell', sootRing: 'soot ring',
  noseDamage: 'damage', insulator: 'insulator', body: 'body', terminal: 'terminal', seat: 'seat', threads: 'threads', contact: 'contact marks',
};

/** What a screen reader hears once an answer is given. */
const spoken: Readonly<Record<Question, string>> = { ...short, overall: 'at a glance', noseColour: 'nose colour', noseSurface: 'nose surface', shellRim: 'rim', noseDamage: 'nose damage' };

/** Where to look, and how. Common practice, no source. */
const where: Readonly<Record<Question, string>> = {
  overall: 'All you can say without looking closely. It may stand alone.',
  noseColour: 'In daylight or a neutral lamp, on the side away from the fuel spray.',
  noseSurface: 'Turn the plug under the lamp and watch what shines.',
  deposit: 'What lies on the insulator nose. Rub it with a fingertip in a glove: soot smears, carbon does not.',
  coverage: 'Of the nose that you can see down into the shell.',
  specks: 'With a lens, under a small bright light.',
  bridge: 'Across the spark gap, or between nose and shell.',
  centreElectrode: 'Edges first: sharp, soft or gone.',
  groundElectrode: 'From above, then from the side.',
  heatLine: 'Where the colour of the strap changes.',
  shellRim: 'The flat ring of steel around the nose.',
  sootRing: 'Look down between nose and shell with a lamp.',
  noseDamage: 'Turn it all the way round; a hairline shows when breathed on.',
  insulator: 'Try to turn or rock it by hand, cold.',
  body: 'From the crimp to the terminal.',
  terminal: 'Try the cap nut, look for green or white.',
  seat: 'Both faces of the gasket, and how tight the plug was.',
  threads: 'How many turns are coloured, and what is on them.',
  contact: 'Signs that something struck the end.',
};

const positionShort: Readonly<Record<Position, string>> = { only: '', upper: 'U', lower: 'L', intake: 'In', exhaust: 'Ex', front: 'F', rear: 'R', unknown: '?' };

const list = (items: readonly string[]): string => (items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`);
const placeShort = ({ cylinder, position }: PlugPlace): string => `${cylinder}${positionShort[position]}`;
const placeName = ({ cylinder, position }: PlugPlace): string => (position === 'only' ? `Cylinder ${cylinder}` : position === 'unknown' ? `Cylinder ${cylinder}, one of two` : `Cylinder ${cylinder} ${position}`);
const drawn: Readonly<Record<View, string>> = { end: 'Drawing of the firing end.', side: 'Drawing of the plug from the side.' };

const tip = {
  drawn,
  nothing: 'Nothing observed yet; line work only.',
  fact: (facet: FacetName, value: string, unsure: boolean): string => `${short[facet]} ${value}${unsure ? ' (unsure)' : ''}`,
  ofPart: (part: TipPart, facts: readonly string[]): string => `${parts[part]}: ${facts.join(', ')}.`,
  atAGlance: (value: string): string => `At a glance: ${value}.`,
  notObserved: (missing: readonly TipPart[]): string => `Not observed: ${list(missing.map((part) => parts[part].toLowerCase()))}.`,
};

const trayWords = {
  name: 'Tray: the plugs in the order of the engine',
  entered: (count: number, of: number): string => (count === 0 ? 'nothing entered' : `${count} of ${of} entered`),
  notRead: 'not read',
  verdict: (word: string, belief?: string): string => (belief === undefined ? word : `${word}, belief ${belief}`),
  groups: 'Verdicts by cylinder',
  verdictsOf: (count: number): string => (count === 1 ? '1 plug' : `${count} plugs`),
};

const entry = {
  name: (place: string): string => `What ${place} shows`,
  notObserved: 'not observed',
  unsure: 'unsure',
  markUnsure: 'I am not sure',
  clear: 'Not observed',
  looksNormal: 'Looks normal',
  previous: 'Previous plug',
  next: 'Next plug',
  sameAs: 'Same as',
  sameTip: (place: string): string => `${place}: the whole tip`,
  samePart: (place: string, part: string): string => `${place}: ${part.toLowerCase()}`,
  sameValue: (place: string, value: string): string => `as ${place}: ${value}`,
  sameValueName: (place: string, value: string): string => `Same as ${place}: ${value}`,
  copyToEmpty: 'Copy to the rest',
  copyToAll: 'Copy to all',
  clearTip: 'Clear',
  notRead: 'Not read',
  readAfterAll: 'Read this plug',
  absent: 'This plug is left out of the reading. It counts as not read: evidence for nothing.',
  search: 'Find a value',
  searchHint: 'for example soot',
  noMatch: 'No value has this word.',
  fieldsEntered: (count: number): string => (count === 0 ? '' : count === 1 ? '1 entered' : `${count} entered`),
  partLeft: (entered: number, all: number): string => (entered === 0 ? 'not observed' : `${entered} of ${all}`),
  details: { measured: 'Measured on the plug', fitted: 'The plug that was in the hole', note: 'Note on this plug' },
  picture: 'Drawn from what is entered',
};

const said = {
  set: (place: string, question: string, value: string): string => `${place}: ${question} ${value}`,
  cleared: (place: string, question: string): string => `${place}: ${question} not observed`,
  unsure: (place: string, question: string, on: boolean): string => `${place}: ${question} ${on ? 'unsure' : 'sure'}`,
  at: (place: string, question: string): string => `${place}, ${question}`,
  copied: (place: string, targets: readonly string[]): string => (targets.length === 0 ? 'Every other plug has something entered; nothing was copied.'
    : `${place} copied to ${targets.length > 4 ? `${targets.length} other plugs` : list(targets)}.`),
  taken: (place: string, from: string): string => `${place}: taken over from ${from}.`,
  nothingBeside: 'No plug beside this one has anything here.',
  nothingToCopy: (place: string): string => `${place} has nothing to copy.`,
  clearedTip: (place: string): string => `${place}: tip cleared.`,
  leftOut: (place: string): string => `${place} is left out of the reading.`,
  nothingToDoubt: 'Nothing is entered here that could be unsure.',
  lastPlug: 'A reading needs at least one plug.',
};

const measured = {
  gapMm: { label: 'Gap', hint: 'With a wire gauge, before bending anything.' },
  resistorKOhm: { label: 'Resistance', hint: 'Terminal to centre electrode, cold.' },
  insulationMOhm: { label: 'Insulation', hint: 'Terminal to shell, clean and dry outside.' },
  removalTorqueNm: { label: 'Torque to loosen', hint: 'As the plug began to turn.' },
};

const fitted = {
  designation: 'Designation on the plug',
  steps: 'Heat steps from the specified plug',
  stepsHint: 'Hotter counts up from 0, colder counts down.',
  matches: 'Is it the plug the engine asks for?',
  yes: 'Yes',
  no: 'No',
  forAll: 'The same in all cylinders',
};

/** `does` stands on the sheet of all keys; `short` below the tray, for keys that no control shows. */
const keys: readonly { readonly keys: readonly string[]; readonly short?: string; readonly does: string }[] = [
  { keys: ['1', '…', '9'], short: 'value with that key', does: 'Take the value that shows this key and go on to the next question; after 9 come 0 - = Q W E R T' },
  { keys: ['Shift 1', '…'], short: 'value, next plug', does: 'Take the value and go on to the next plug with the same question' },
  { keys: ['↑', '↓'], short: 'question', does: 'The question before or after; in the tray, the plug above or below' },
  { keys: ['←', '→', '[', ']'], short: 'plug', does: 'The plug before or after' },
  { keys: ['O'], does: 'The plug looks normal at a glance' },
  { keys: ['U'], does: 'Unsure of this value, or sure again' },
  { keys: ['Del'], does: 'Take the answer back: not observed' },
  { keys: ['S', 'Shift S'], short: 'same as its neighbour', does: 'The answer of the plug beside it; with Shift its whole tip' },
  { keys: ['C', 'Shift C'], does: 'Copy this tip to the plugs that have nothing yet, or to all' },
  { keys: ['/'], does: 'Find a value by its word' },
  { keys: ['M', 'N'], short: 'measurements, note', does: 'To the measurements, to the note' },
];

const valueName = (value: string): string => value;
const verdictName = (verdict: Verdict): string => verdict;

export const tray = { parts, questions, spoken, where, positionShort, placeName, placeShort, tip, tray: trayWords, entry, said, measured, fitted, keys, allKeys: 'all keys', keysName: 'Keys at the plugs', valueName, verdictName };
