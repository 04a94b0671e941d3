import type { PhotoView } from '../../../shared/channels-photo.ts';

const views: Readonly<Record<PhotoView, string>> = { 'end-on': 'end-on', side: 'side', strap: 'strap' };
const photosOf = (count: number): string => (count === 1 ? '1 photo' : `${count} photos`);
const kinds = { arrow: 'Arrow', circle: 'Circle', text: 'Words' };

const bringIn = {
  add: 'Add photos',
  addFolder: 'Add a folder',
  hint: 'Or drop them anywhere on this reading, or paste them. Originals are kept as they are.',
  letGo: 'Let go to add these photos to the reading',
  leftOut: (count: number): string => `${count === 1 ? '1 file in the folder is no picture and was' : `${count} files in the folder are no pictures and were`} left out.`,
  onTheirWay: 'Photos on their way',
  going: (done: number, all: number): string => `${done} of ${photosOf(all)}`,
  ended: (count: { readonly in: number; readonly known: number; readonly stopped: number; readonly refused: number }): string => [
    `${photosOf(count.in)} added.`, count.known > 0 ? `${count.known} were in this reading already.` : '', count.stopped > 0 ? `${count.stopped} stopped.` : '',
    count.refused > 0 ? `${count.refused} could not be taken.` : '',
  ].filter(Boolean).join(' '),
  addedBut: 'is added, but could not be measured:',
  stop: 'Stop',
  putAway: 'Put away',
};

const empty = {
  title: 'No photo in this reading yet',
  about: 'A photo of each tip keeps what you saw, and its colours can be measured on a white that you point out. Nothing is entered without your yes.',
  advice: [
    'End-on, the plug filling half of the picture, the focus on the nose.',
    'Dull daylight or a diffuse lamp from one side; no flash straight on.',
    'A grey card or plain paper flat beside the shell, in at least one photo under each lamp.',
    'Rather a little dark than too bright; the same phone each time, without filters.',
    'Photograph the plugs in the order of the tray, and the photos can be laid to them in one go.',
  ],
};

const layOut = {
  views,
  plug: 'Plug',
  seen: 'Seen',
  nowhere: 'Not laid to a plug',
  noPhoto: 'No photo',
  notMeasured: 'not measured',
  unlaid: (count: number): string => `${photosOf(count)} to lay. Photos to a plug:`,
  each: 'Photos to a plug',
  eachOf: (count: number): string => (count === 1 ? 'one' : count === 2 ? 'two' : 'three'),
  byCapture: 'Lay in the order taken',
  byName: 'Lay by file name',
  laid: (photo: string, place: string): string => `${photo}: ${place}`,
  turned: (photo: string, view: string): string => `${photo}: ${view}`,
  allLaid: (count: number): string => `${photosOf(count)} laid to the plugs.`,
  left: (count: number): string => (count === 0 ? '' : `${photosOf(count)} left over.`),
  noneLaid: 'There is nothing to lay.',
  removed: (photo: string): string => `${photo} is removed from the reading.`,
  keys: 'On a photo: a number lays it to that cylinder, [ and ] to the plug before or after, V changes the view, Backspace takes it off the plug, Delete removes it, Enter opens it. Or drag it.',
};

const photo = {
  all: 'All photos',
  previous: 'Previous photo',
  next: 'Next photo',
  facts: (at: number, of: number, taken: string | undefined, width: number, height: number): string =>
    [`${at} of ${of}`, taken === undefined ? 'no date in the file' : `taken ${taken}`, `${width} × ${height}`].join(' · '),
  more: 'More',
  moreOf: (name: string): string => `More for ${name}`,
  saveCopy: 'Save a copy without personal data',
  saveOriginal: 'Save the original, place and personal data included',
  remove: 'Remove from the reading',
};

const viewer = {
  pictureOf: (name: string): string => `Picture ${name}`,
  byKeys: 'Plus and minus zoom, 0 shows all, 1 every pixel, L is the loupe, arrows move. With a tool in hand, arrows move a cross, Enter begins and ends a stroke, Escape puts the tool down.',
  tools: 'Looking at the picture',
  nearer: 'Nearer (+)',
  farther: 'Farther (-)',
  fit: 'All of it',
  full: 'Every pixel',
  loupe: 'Loupe',
  outlines: 'Outlines',
  corrected: 'On corrected white',
  scale: (percent: string, whole: boolean): string => `${percent} %${whole ? ', every pixel' : ''}`,
};

const light = {
  title: 'White',
  reference: {
    unmeasured: 'Not measured yet.',
    none: 'No reference: the colours are as the camera balanced them, too uncertain to judge.',
    'grey card': 'On the grey card that you pointed out.',
    'white paper': 'On the white paper that you pointed out.',
    'other photo': 'On the reference of another photo under the same lamp.',
    'bare metal': 'Estimated from bare metal: hue may be off, lightness is a guess.',
  },
  pointOut: { 'grey card': 'Grey card', 'white paper': 'White paper', 'bare shell': 'Bare shell' },
  how: 'Click its middle in the picture, or draw a box on it. By keyboard: into the picture, arrows move the cross, Enter begins and ends the box.',
  sameLamp: 'Same lamp as in',
  none: 'its own light',
  giveToAll: (count: number): string => `Same lamp: use it for the other ${photosOf(count)}`,
  gaveToAll: (count: number): string => `${photosOf(count)} measured on this white.`,
  forget: 'Forget it',
};

const handles = {
  shell: 'Shell', bore: 'Bore', nose: 'Nose', centreElectrode: 'Centre electrode', foot: 'Ground electrode, foot', end: 'Ground electrode, free end',
};

const parts = {
  title: 'Parts',
  handles,
  said: (x: number, y: number, size: number): string => `at ${x}, ${y}; size ${size} pixels`,
  found: 'Found.',
  unsure: 'Found, but look: the circles may be off.',
  notFound: 'No plug was found for certain.',
  putRight: 'Put right by you.',
  confidence: (belief: string): string => `Confidence ${belief}.`,
  correct: 'Correct the circles',
  pointOut: 'Draw the circles',
  asIn: (name: string): string => `As in ${name}`,
  forget: 'Back to what was found',
  how: 'Drag a round handle to move a circle, a flat one to make it larger or smaller. By keyboard: Tab to a handle, arrows move, + and - size, Shift for small steps.',
};

const measures = {
  title: 'Measured',
  suggests: 'What it speaks for',
  doubts: 'Doubts',
  notMeasured: 'Not measured.',
  also: 'Also measured',
  colours: 'CIELAB, D65.',
  part: 'Part', hue: 'Hue', chroma: 'Chroma', spread: 'Spread', lightness: 'L*',
  grey: 'grey',
  degrees: (hue: string): string => `${hue}°`,
  plusMinus: (spread: string): string => `± ${spread}`,
  regions: { nose: 'Nose', shellRim: 'Rim', groundElectrode: 'Ground electrode', centreElectrode: 'Centre electrode' },
  noColour: 'No part could be seen well enough to measure its colour.',
  drawn: 'The tip as noted, its nose in the measured colour.',
  lightnessHelp: 'L* is shown, not judged: the nose stands in the shadow of shell and strap.',
  refused: {
    greyscale: 'This picture is grey; its colours are not judged.',
    cmyk: 'This picture is made for print (CMYK), which shifts colours; they are not judged.',
    transparent: 'This picture is partly transparent; its colours are not judged.',
  },
  coverage: 'Dark on the nose', percent: (share: string): string => `${share} %`,
  specks: 'Specks', specksOn: (count: number, share: string): string => `${count} on the ${share} % of the nose that shows`,
  grain: 'Grain of the surface', grainOf: (value: string): string => `L* ± ${value}`,
  heatLine: 'Colour change on the strap', heatLineAt: (share: string): string => `${share} % of the way from its free end`,
  exposure: 'Overexposed, nearly black', exposureOf: (clipped: string, dark: string): string => `${clipped} %, ${dark} % of the nose`,
  mixed: 'Light from two sides differs', mixedOf: (difference: string): string => `ΔE00 ${difference}`,
  belief: (belief: string): string => `belief ${belief}`,
  take: 'Take it',
  takeOf: (question: string, value: string): string => `Take it: ${question} ${value}`,
  count: 'Let it count',
  countOf: (question: string, value: string): string => `Let it count: ${question} ${value}`,
  countsAs: (value: string, belief: string): string => `It counts as ${value} with belief ${belief}, as measured before; press twice to let the new one count.`,
  countHelp: '“Take it” enters the value as seen. “Let it count” leaves that to you and lets the measuring speak for itself, by its belief.',
  entered: 'entered',
  against: (entered: string): string => `You entered ${entered}. The photo speaks against it; what you saw counts for more.`,
  layFirst: 'Lay the photo to a plug first; then its values can be taken.',
  suggestsNothing: 'Nothing that it can tell.',
};

const marks = {
  title: 'Marks',
  kinds,
  help: 'Marks are kept beside the picture, which stays as it is.',
  how: {
    arrow: 'Draw from the tail to the place it points at.', circle: 'Draw from the middle outward.', text: 'Click where the words shall stand.',
  },
  wordsOf: (kind: keyof typeof kinds, n: number): string => `${kinds[kind]} ${n}`,
  remove: (kind: keyof typeof kinds, n: number): string => `Take away ${kinds[kind].toLowerCase()} ${n}`,
};

const compare = {
  title: 'Comparison',
  none: 'No reading of this engine has photos yet. They are added at the station Photos of a reading.',
  onlyOne: 'Lay photos of one plug to it at two readings; then they can be compared.',
  strip: 'All photos of this engine',
  choose: (place: string, name: string): string => `Compare ${place}, ${name}`,
  earlier: 'Earlier',
  later: 'Later',
  pick: 'choose',
  mode: 'Laid',
  modes: { 'side by side': 'Side by side', 'onion skin': 'Onion skin', wipe: 'Wipe' },
  commonWhite: 'On corrected white',
  paneOf: (names: string): string => `Photo of ${names}`,
  wipe: 'Edge between earlier and later',
  through: 'Later over earlier',
  nudge: 'Turn the later one',
  nudgeHelp: 'laid on each other by the rings and the ground electrode',
  degrees: (turn: number): string => `${turn}°`,
  notRegistered: 'No ring is known in both photos, so they cannot be laid on each other. Draw the circles in the photos first.',
  difference: 'Difference of hue and chroma, both brought to one lightness',
  deltaE: 'ΔE00', unsure: 'Uncertain by', says: 'That is',
  changed: 'changed',
  noChange: 'no change shown',
  coverage: (before: string, after: string, changed: boolean): string => `Dark on the nose: ${before} % earlier, ${after} % later; ${changed ? 'changed' : 'within what the measuring errs by'}.`,
  otherCamera: 'The photos come from different cameras, which render colours each in their own way.',
  help: 'About 1 is just seen. Unchanged plugs under other lamps read up to 4 with a card in both photos.',
  notComparable: 'Not comparable',
  hindrances: {
    'not measured': 'A photo is not measured.', 'no plug found': 'No plug was found for certain in a photo; draw its circles.', 'no colour': 'A photo has no colours that can be judged.',
    'no white': 'A photo has no white; point one out.', 'mixed light': 'A photo was taken in light of two colours.', overexposed: 'A nose is overexposed.',
    'other view': 'The photos show the plug from different sides.',
  },
  trend: 'Over the readings',
  trendSaid: (name: string, values: string): string => `${name}: ${values}`,
  trendHelp: 'Filled: on a white that was pointed out, or measured by hand. Hollow: on an estimated white. L* is not judged.',
  noTrend: 'A trend needs two readings with photos of this plug.',
  quantities: { lightness: 'L* of the nose', a: 'a* of the nose (green to red)', b: 'b* of the nose (blue to yellow)', coverage: 'Dark on the nose, %', gap: 'Gap' },
};

const library = {
  title: 'All photos',
  find: 'Find by file name or engine',
  seen: 'Seen',
  all: 'all',
  unlaid: 'Not laid to a plug',
  none: 'No photo here. Photos are added at the station Photos of a reading.',
  total: (count: number): string => photosOf(count),
  /** Begins with the words below the picture, so that saying them finds it. */
  open: (name: string, engine: string, place: string): string => `${engine} ${place}, ${name}`,
};

export const photos = {
  titleOf: (engine: string): string => `Photos over the years · ${engine}`,
  count: (count: number): string => (count === 0 ? 'none yet' : photosOf(count)),
  photosOf,
  panel: 'About this photo',
  unreadable: 'The photos could not be read',
  problemToTell: (name: string, problem: string): string => `${name}: ${problem}`,
  demoHint: 'The pictures of the demo are drawings, not photos. You can add your own.',
  compareLink: 'Compare over the years',
  bringIn, empty, layOut, photo, viewer, light, parts, measures, marks, compare, library,
};
