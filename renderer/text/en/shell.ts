import type { AppError } from '../../../shared/channels.ts';
import type { EnginePage, Place, Station } from '../../app/route.ts';

const stations: Record<Station, string> = { run: 'The run', plugs: 'The plugs', photos: 'Photos', cylinders: 'The cylinders', findings: 'Findings' };

export type Shortcut = { readonly keys: readonly string[]; readonly does: string };

const shortcuts: readonly Shortcut[] = [
  { keys: ['Alt 1', 'Alt 2', 'Alt 3', 'Alt 4', 'Alt 5'], does: 'The run, the plugs, the photos, the cylinders, the findings' },
  { keys: ['Ctrl K'], does: 'Find by its words anything that can be done' },
  { keys: ['/'], does: 'Find a symptom at the run, a value at the plugs' },
  { keys: ['Ctrl Enter'], does: 'Keep this reading with its findings' },
  { keys: ['Ctrl Z'], does: 'Undo' },
  { keys: ['Ctrl Shift Z', 'Ctrl Y'], does: 'Redo' },
  { keys: ['Tab', 'Shift Tab'], does: 'To the next or the previous field' },
  { keys: ['Esc'], does: 'Close what lies over the bench' },
  { keys: ['?'], does: 'This list' },
];

/** Things to do, as one would ask for them. `…Key`: the key that does the same. */
const errands = {
  title: 'Errands',
  open: 'Errands: find anything that can be done (Ctrl K)',
  find: 'What is to be done?',
  hint: 'for example plug 3, keep, inch',
  none: 'Nothing here is called that.',
  station: (name: string): string => `Go to ${name.toLowerCase()}`,
  plug: (place: string): string => `Take plug: ${place.toLowerCase()}`,
  start: (engine: string): string => `Start a reading: ${engine}`,
  goOn: (engine: string): string => `Go on with the reading: ${engine}`,
  openEngine: (engine: string): string => `Open the log: ${engine}`,
  heat: (engine: string): string => `Heat and spark: ${engine}`,
  overTime: (engine: string): string => `Plugs over the years: ${engine}`,
  add: 'Add an engine',
  export: 'Export this reading as a file',
  keepKey: 'Ctrl Enter',
  undoKey: 'Ctrl Z',
  redoKey: 'Ctrl Y',
  theme: { system: 'Theme: as this computer', light: 'Theme: light', dark: 'Theme: dark' },
  units: { metric: 'Units: metric', inch: 'Units: inch' },
  textSize: { normal: 'Text: normal size', large: 'Text: large' },
};

const places: Readonly<Record<Place, string>> = { shelf: 'Engines', photos: 'Photos', knowledge: 'Look it up' };
const enginePages: Readonly<Record<EnginePage, string>> = { engine: 'Readings', 'engine-time': 'Plugs over the years', 'engine-photos': 'Photos over the years', 'engine-heat': 'Heat and spark' };

export const shell = {
  name: 'Corenose',
  skip: 'Skip to the bench',
  bench: 'Bench',
  stations,
  errands,
  stationsName: 'Stations of the reading',
  stationKey: (n: number): string => `Alt ${n}`,
  close: 'Close',
  undo: 'Undo',
  redo: 'Redo',
  undone: (station: string): string => `Undone at another station: ${station}.`,
  redone: (station: string): string => `Done again at another station: ${station}.`,
  settings: 'Settings',
  allEngines: 'All engines',
  places,
  placesName: 'Places',
  enginePages,
  enginePagesName: 'Pages of this engine',
  back: 'Back',
  tryAgain: 'Try again',
  cancel: 'Leave it',
  messages: 'Messages',
  loading: 'Fetching…',
  opening: 'Opening…',
  notHere: 'There is nothing at this address.',
  demo: 'Demo workshop',
  shortcuts: { title: 'Keys', open: 'Keys (press ?)', onTheBench: 'Everywhere', inTheTray: 'At the plugs', list: shortcuts },
  counts: {
    entered: (n: number): string => (n === 0 ? 'nothing yet' : n === 1 ? '1 thing' : `${n} things`),
    plugs: (read: number, all: number): string => `${read} of ${all}`,
    findings: { none: 'not yet', working: 'thinking', current: 'ready', failed: 'failed' },
    stop: 'stop rule',
  },
  save: {
    saved: 'Saved',
    saving: 'Saving',
    'not saved': 'Not saved',
    problem: 'This reading is not saved',
    kept: 'What you entered is still here. It is tried again every few seconds.',
    copy: 'Save a copy as a file',
    conflict: 'This reading was changed in another window. Nothing is overwritten until you choose.',
    mine: 'Keep what is on this screen',
    theirs: 'Take the other one (undo brings this one back)',
  },
  reading: {
    keep: 'Keep this reading',
    keepHint: 'Stores it with its findings and closes it (Ctrl Enter)',
    kept: 'Kept',
    draft: 'Draft',
    keptMessage: (title: string): string => `Kept with its findings: ${title}.`,
    untaken: (n: number): string => (n === 1 ? 'One number in it could not be taken and counts for nothing.' : `${n} numbers in it could not be taken and count for nothing.`),
    closedTitle: 'This reading is kept',
    closedAbout: 'It is closed, so that its findings stay what they were. Open it again to change it; the findings are then worked out anew.',
    reopen: 'Open it again',
    nameAndDate: 'Name and date',
    title: 'What this reading is called',
    titleHint: 'For example: after the jet change',
    date: 'Day the plugs were pulled',
    noDate: 'No date',
    untitled: 'Reading',
    missing: 'This reading could not be opened',
  },
  library: {
    'in-use': 'Another program has this library open',
    damaged: 'The library is damaged',
    newer: 'The library was written by a newer version',
    'cannot-open': 'The library cannot be opened',
    'disk-full': 'The disk is full',
    recover: (backup: string): string => `Go back to ${backup}`,
    recoverTitle: 'Go back to a backup?',
    recoverAbout: (backup: string): string => `The library is set back to the state of ${backup}. What was entered after it is not in there; the damaged file is put aside, not deleted.`,
    recovered: 'The library was set back to the backup.',
    start: 'The program could not be started',
  },
  host: {
    gone: {
      title: 'The program behind this page does not answer',
      goOn: 'If it has ended, start Corenose again and go on in the window it opens. What was saved is in the library; what is not saved yet stays on this page as long as it is open.',
    },
    'started anew': {
      title: 'Corenose was started anew',
      goOn: 'This page belongs to the start before and is not let in any more. Go on in the window that Corenose opened, or at the address it printed: what was saved is there. Something not saved yet can be kept as a file below.',
    },
  },
  broken: {
    title: 'This screen failed',
    safe: 'What you entered is not lost: it is saved with every change, and it is still in memory.',
    again: 'Draw the screen again',
    details: 'What went wrong, for a report',
  },
  quantity: {
    allowed: (low: string, high: string, unit: string): string => `${`Give ${low} to ${high} ${unit}`.trim()}.`,
    problem: (what: 'unreadable' | 'two meanings' | 'out of range', allowed: string): string => {
      switch (what) {
        case 'unreadable': return `This is not a number that can be taken here. ${allowed}`;
        case 'two meanings': return `This can be read in two ways; write it without the comma, or with a point. ${allowed}`;
        case 'out of range': return `Out of range. ${allowed}`;
      }
    },
  },
  error: (error: AppError): string => {
    switch (error.code) {
      case 'forbidden': return 'The program refused the request. Start it again and use the window it opens.';
      case 'bad-request': return error.problems.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`)).join('\n');
      case 'not-found': return `Not found: ${error.what}.`;
      default: return error.message;
    }
  },
};
