import { COMMON_PRACTICE, FROM_MEMORY, type Contradiction } from './types.ts';

/** Pairs of findings on one plug that make a reader look twice, and values that say less than a second look would. */
export const CONTRADICTIONS: readonly Contradiction[] = [
  {
    id: 'black-yet-bare', first: { plug: 'noseColour', is: ['black'] }, second: { plug: 'deposit', is: ['none'] },
    words: 'A black nose carries something: look again whether the deposit is soot, oil or hard carbon.',
    because: 'The ceramic is white; black can only be a deposit.', source: COMMON_PRACTICE,
  },
  {
    id: 'coloured-yet-uncovered', first: { plug: 'noseColour', is: ['black', 'dark brown', 'dark grey', 'reddish', 'yellow', 'greenish'] }, second: { plug: 'coverage', is: ['none'] },
    words: 'A nose of that colour is covered by something: look again how far it reaches.',
    because: 'The ceramic is white; strong colour can only be a deposit.', source: COMMON_PRACTICE,
  },
  {
    id: 'glaze-yet-powdery', first: { plug: 'deposit', is: ['glaze'] }, second: { plug: 'noseSurface', is: ['fine powder', 'matt soot'] },
    words: 'A glaze shines and does not rub off; powder does. Rub it with a finger.',
    because: 'A glaze is a deposit that has melted.', source: 'S17',
  },
  {
    id: 'wet-yet-dry-soot', first: { plug: 'noseSurface', is: ['wet'] }, second: { plug: 'deposit', is: ['dry soot', 'light dusting', 'none'] },
    words: 'The surface is noted as wet but the deposit as dry: wipe it and say which it is.',
    because: 'Dry carbon is dull fluff; oil and fuel shine.', source: ['S16', 'S17'],
  },
  {
    id: 'wet-deposit-yet-dry', first: { plug: 'deposit', is: ['wet oil', 'wet fuel', 'wet of unknown kind', 'water'] }, second: { plug: 'noseSurface', is: ['fine powder', 'matt soot', 'bare'] },
    words: 'The deposit is noted as wet but the surface as dry: wipe it and say which it is.',
    because: 'A wet deposit shines.', source: 'S16',
  },
  {
    id: 'white-yet-sooted', first: { plug: 'noseColour', is: ['white'] }, second: { plug: 'deposit', is: ['dry soot', 'hard carbon', 'rust-coloured film'] },
    words: 'A white nose cannot carry that deposit: were two plugs mixed up, or is the soot on the shell only?',
    because: 'Soot and rust hide the white of the ceramic.', source: COMMON_PRACTICE,
  },
  {
    id: 'spray-yet-no-specks', first: { plug: 'deposit', is: ['metal spray'] }, second: { plug: 'specks', is: ['none'] },
    words: 'Metal spray is noted but no specks: look with a lens.',
    because: 'Metal on a plug is seen as specks or beads.', source: 'S59',
  },
  {
    id: 'blistered-yet-sooted', first: { plug: 'noseSurface', is: ['blistered'] }, second: { plug: 'sootRing', is: ['wide'] },
    words: 'A blistered nose keeps no wide soot ring: which of the two is the last running?',
    because: 'Where the ceramic was hot enough to blister carbon has burnt off.', source: 'S59',
  },
  {
    id: 'blistered-yet-oily', first: { plug: 'noseSurface', is: ['blistered'] }, second: { plug: 'shellRim', is: ['wet oil', 'heavy soot'] },
    words: 'A blistered nose in an oily or sooty shell: had it cooled and idled, or were two plugs mixed up?',
    because: 'A rim under such heat carries nothing.', source: COMMON_PRACTICE,
  },
  {
    id: 'sharp-yet-wide', first: { plug: 'centreElectrode', is: ['sharp'] }, second: { plug: 'gap', is: ['far too wide'] },
    words: 'Sharp edges and a gap far too wide: the gap was set so, or measured in another unit.',
    because: 'A gap that has grown by wear has round edges.', source: 'S17',
  },
  {
    id: 'bridged-yet-open', first: { plug: 'bridge', is: ['gap bridged'] }, second: { plug: 'gap', is: ['as set', 'wide', 'far too wide'] },
    words: 'A bridged gap lets no gauge pass: was it measured after the bridge fell off?',
    because: 'A bridge fills the gap.', source: 'S05',
  },
  {
    id: 'bridged-yet-insulating', first: { plug: 'bridge', is: ['gap bridged', 'core bridged'] }, second: { plug: 'insulation', is: ['good'] },
    words: 'A bridged plug cannot insulate well: was it measured after cleaning?',
    because: 'A bridge is a short.', source: ['S05', 'S14'],
  },
  {
    id: 'unfired-yet-worn', first: { plug: 'overall', is: ['looks unfired'] }, second: { plug: 'centreElectrode', is: ['rounded', 'eroded', 'melted'] },
    words: 'A plug that looks unfired has no worn edges: it may have been cleaned, or washed by coolant.',
    because: 'Only sparks and heat wear the edges.', source: 'S03',
  },
  {
    id: 'normal-yet-damaged', first: { plug: 'overall', is: ['looks normal'] }, second: { plug: 'noseDamage', is: ['cracked', 'chipped', 'broken away'] },
    words: 'The plug is called normal but its nose is damaged.',
    because: 'A damaged nose is a reason to reject the plug.', source: 'S05',
  },
  {
    id: 'normal-yet-fouled', first: { plug: 'overall', is: ['looks normal'] }, second: { plug: 'deposit', is: ['dry soot', 'wet oil', 'wet fuel', 'hard carbon', 'lead beads', 'glaze', 'metal spray', 'water'] },
    words: 'The plug is called normal but carries a deposit that is not.',
    because: 'A normal nose has a thin dry film at most.', source: ['S14', 'S16'],
  },
  {
    id: 'fires-yet-open', first: { plug: 'firing', is: ['fires'] }, second: { plug: 'bridge', is: ['gap bridged', 'core bridged'] },
    words: 'A bridged plug cannot fire: was the bridge there while the engine ran?',
    because: 'A bridge is a short.', source: 'S05',
  },
  {
    id: 'wet-with-what', first: { plug: 'deposit', is: ['wet of unknown kind'] },
    words: 'Wet with what? Wipe it on paper: fuel smells and dries off, oil stays greasy and black, water or coolant beads up or feels sticky.',
    because: 'Oil, fuel and water have quite different causes.', source: COMMON_PRACTICE,
  },
  {
    id: 'carbon-of-which-kind', first: { plug: 'deposit', is: ['carbon of unknown kind'] },
    words: 'What kind of carbon? Rub it: dry soot wipes off, oily carbon smears, hard carbon stays.',
    because: 'Dry soot speaks of mixture, use and spark, oily and hard carbon of oil.', source: ['S16', 'S17'],
  },
  {
    id: 'lead-of-which-form', first: { plug: 'deposit', is: ['lead of unknown form'] },
    words: 'Beads or film? Look into the cavity with a lens: beads can short the plug, a film leaks when hot.',
    because: 'Beads are picked out, a film is cleaned off.', source: ['S53', 'S17'],
  },
  {
    id: 'fouled-with-what', first: { plug: 'overall', is: ['fouled, kind unknown'] },
    words: 'Fouled with what? Note whether the deposit is dry soot, wet, lead, ash or a glaze; the causes differ.',
    because: 'Every kind of fouling has causes of its own.', source: ['S01', 'S17'],
  },
  {
    id: 'insulation-clean-and-again', first: { plug: 'insulation', is: ['low', 'shunted'] },
    words: 'Clean and dry it, look for a crack or a track from terminal to shell, and measure the insulation again: soot, damp and dirt make a sound plug read low.',
    because: 'A reading below 10 MΩ is judged after cleaning; soot, cracks and graphite all shunt the gap.', source: ['W1', 'S25'],
  },
  {
    id: 'beads-of-what', first: { plug: 'specks', is: ['shiny beads'] },
    words: 'Press a needle on the beads under a lens: soft metal that smears points to piston aluminium, hard ones to oil or fuel additives.',
    because: 'Race practice and one columnist read shiny beads differently.', source: ['S59', FROM_MEMORY],
  },
  {
    id: 'corona-or-leak', first: { plug: 'body', is: ['corona stain'] }, second: { plug: 'insulator', is: ['loose in shell'] },
    words: 'With a loose insulator the stain may be gas: streaks that run up from the crimp are a leak, an even ring is corona.',
    because: 'Gas past the joint leaves uneven streaks upward.', source: ['W2', FROM_MEMORY],
  },
  {
    id: 'tight-yet-loose', first: { plug: 'removalTorque', is: ['as fitted'] }, second: { plug: 'seat', is: ['loose when removed', 'loose with leakage marks'] },
    words: 'The torque measured on removal speaks against a loose plug.',
    because: 'A loose plug meets hardly any torque.', source: COMMON_PRACTICE,
  },
];
