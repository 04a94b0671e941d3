import { describe, expect, it } from 'vitest';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import { diagnose } from '../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';

type Tip = NonNullable<ReadingSheet['plugs'][number]['tip']>;
type Engine = ReadingSheet['engine'];

const road: Engine = { use: 'road', cycle: 'four-stroke', cylinders: 3 };
const healthy: Tip = { noseColour: 'light tan', noseSurface: 'fine powder', deposit: 'light dusting' };

const sheet = (engine: Engine, tips: readonly Tip[], more: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine, plugs: tips.map((tip, i) => ({ cylinder: i + 1, tip })), ...more,
});
const set = (tip: Tip, more?: Partial<ReadingSheet>, engine: Engine = road): ReadingSheet =>
  sheet(engine, Array.from({ length: engine.cylinders }, () => tip), more);
const second = (tip: Tip, more?: Partial<ReadingSheet>, engine: Engine = road): ReadingSheet =>
  sheet(engine, Array.from({ length: engine.cylinders }, (_, i) => (i === 1 ? tip : healthy)), more);

const verdictOf = (read: ReadingSheet): { verdict: Verdict; causes: string[] } => {
  const findings = diagnose(read, { knowledge: KNOWLEDGE, digest: '' });
  const plug = findings.plugs.find(({ cylinder }) => cylinder === 2) ?? findings.plugs[0];
  return { verdict: plug?.verdict ?? 'undetermined', causes: plug?.causes.map(({ id }) => id.split(' @ ')[0] ?? '') ?? [] };
};

/** Appearances as published descriptions give them, and what the same text calls the plug. */
const APPEARANCES: readonly (readonly [what: string, source: string, read: ReadingSheet, verdict: Verdict])[] = [
  ['soft black dry fluff over nose and shell', 'S16, S17', set({ noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot' }), 'dry carbon fouling'],
  ['wet, shiny black', 'S16, S17', second({ noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil' }), 'oil fouling'],
  ['wet and smelling of fuel after cranking', 'W13', second({ noseSurface: 'wet', deposit: 'wet fuel' }), 'fuel wet'],
  ['a light crust that crumbles', 'W6, W12', second({ noseColour: 'light tan', noseSurface: 'crust', deposit: 'ash crust' }), 'ash deposits'],
  ['hard beads in the cavity of aircraft plugs', 'S17, S53', set({ deposit: 'lead beads' }, {}, { use: 'aircraft', cylinders: 2 }), 'lead fouling'],
  ['an even rust-coloured coat over the whole tip', 'W3', set({ noseColour: 'reddish', coverage: 'full' }), 'additive deposits'],
  ['dead white and blistered', 'S14, S16', second({ noseColour: 'white', noseSurface: 'blistered' }), 'too hot'],
  ['shiny yellow glass', 'S17', set({ noseColour: 'yellow', noseSurface: 'glossy glaze' }), 'glazing'],
  ['melted electrodes', 'S14, W6', second({ centreElectrode: 'melted' }), 'pre-ignition damage'],
  ['black pepper on the nose with knock', 'S59', set({ specks: 'dark pepper' }, { symptoms: [{ what: 'knock under load' }] }), 'detonation damage'],
  ['a gap closed by deposit', 'S17', second({ bridge: 'gap bridged' }), 'bridged'],
  ['rounded electrodes with a normal nose', 'S17, W13', set({ noseColour: 'light tan', centreElectrode: 'rounded' }), 'worn'],
  ['a hollowed strap on the whole set', 'from memory', set({ groundElectrode: 'hollowed underneath' }, {}, { ...road, ignition: { kind: 'breaker points' } }), 'reversed polarity'],
  ['a cracked nose', 'S05', second({ noseDamage: 'cracked' }), 'insulator damage'],
  ['a thin dark line from terminal to hexagon', 'W17', second({ body: 'flashover track' }), 'ignition leakage'],
  ['a corona ring above the crimp', 'W2', set({ ...healthy, body: 'corona stain' }), 'normal'],
  ['a bent strap with peen marks', 'S05', second({ groundElectrode: 'bent', contact: 'debris marks' }), 'mechanical damage'],
  ['exposed threads full of carbon, the wrong reach noted', 'S10', set({ threads: 'first turns carboned' }, { conditions: { tags: ['wrong reach fitted'] } }), 'wrong reach'],
  ['hardly any torque on removal', 'S16', second({ seat: 'loose when removed' }), 'not sealing'],
  ['a wide soot ring and colour only at the end of the strap', 'S56, S61', set({ sootRing: 'wide', heatLine: 'near the end' }), 'too cold'],
  ['no sign of combustion on a missing cylinder', 'from memory', second({ overall: 'looks unfired' }, { symptoms: [{ what: 'misfire', cylinder: 2 }] }), 'not firing'],
  ['one plug strikingly clean while coolant is lost', 'from memory', second({ noseColour: 'white', noseSurface: 'bare', deposit: 'none', coverage: 'none', overall: 'lighter than its neighbours' }, { symptoms: [{ what: 'coolant loss' }, { what: 'white smoke' }] }, { ...road, cooling: 'liquid' }), 'coolant entry'],
  ['a thin dry tan film', 'S14, S16, W6', set(healthy), 'normal'],
  ['a nearly white set with sharp edges on petrol', 'common practice', set({ noseColour: 'white', noseSurface: 'bare', centreElectrode: 'sharp' }, { conditions: { fuel: 'petrol' } }), 'normal'],
  ['a white set on methanol', 'S60', set({ noseColour: 'white', deposit: 'none' }, { conditions: { fuel: 'methanol' } }), 'normal'],
  ['a brown set on liquefied gas', 'S14', set({ noseColour: 'brown', deposit: 'light dusting' }, { conditions: { fuel: 'LPG' } }), 'normal'],
  ['a brown two-stroke tip', 'S63', set({ noseColour: 'dark brown' }, {}, { use: 'small', cycle: 'two-stroke', cylinders: 1 }), 'normal'],
];

/** Published patterns between cylinders, and causes of the kind that the same text names first. */
const PATTERNS: readonly (readonly [what: string, source: string, read: ReadingSheet, first: readonly string[]])[] = [
  ['the whole set sooty', 'S14', set({ noseColour: 'black', deposit: 'dry soot' }), ['mixture-rich', 'choke-stuck', 'air-filter-clogged', 'long-idling', 'short-trips', 'slow-light-use', 'ignition-weak']],
  ['one plug sooty, the rest good', 'S14', second({ noseColour: 'black', deposit: 'dry soot' }), ['lead-bad', 'valve-sticking', 'valve-leaking', 'compression-low', 'injector-leaking']],
  ['one plug oily', 'S16', second({ noseSurface: 'wet', deposit: 'wet oil' }), ['rings-worn', 'guides-worn']],
  ['the whole set oily', 'S17', set({ noseSurface: 'wet', deposit: 'wet oil' }), ['engine-worn', 'breather-blocked', 'rings-running-in']],
  ['one plug white and blistered', 'S16', second({ noseColour: 'white', noseSurface: 'blistered' }), ['plug-loose']],
  ['the whole set red', 'W3, S45', set({ noseColour: 'reddish' }), ['manganese-in-fuel']],
  ['a set that knocks on poor fuel', 'S68', set({ specks: 'dark pepper' }, { symptoms: [{ what: 'knock under load' }] }), ['octane-low']],
  ['two neighbours sooty and low in compression', 'S15, S18', sheet(road, [healthy, { deposit: 'dry soot' }, { deposit: 'dry soot' }], { cylinderChecks: [{ cylinder: 1, compressionKPa: 1100 }, { cylinder: 2, compressionKPa: 500 }, { cylinder: 3, compressionKPa: 500 }] }), ['gasket-between']],
  ['a coil pair wet', 'from memory', sheet({ ...road, cylinders: 4, ignition: { kind: 'wasted spark', groups: [[1, 4], [2, 3]] } }, [healthy, { deposit: 'wet fuel' }, { deposit: 'wet fuel' }, healthy]), ['coil-failed']],
  ['an oily plug whose compression rises with oil', 'S15, W4', second({ deposit: 'wet oil' }, { cylinderChecks: [{ cylinder: 1, compressionKPa: 1100 }, { cylinder: 2, compressionKPa: 700, compressionWetKPa: 1000 }, { cylinder: 3, compressionKPa: 1100 }] }), ['rings-worn']],
  ['a miss that moves with the plug', 'from memory', second({ overall: 'looks unfired' }, { symptoms: [{ what: 'misfire', cylinder: 2 }], cylinderChecks: [{ cylinder: 2, swaps: [{ part: 'plug', to: 3, followed: true }] }] }), ['plug-defective']],
];

describe('a plug that looks as published descriptions have it', () => {
  it.each(APPEARANCES)('%s (%s)', (_what, _source, read, verdict) => {
    expect(verdictOf(read).verdict).toBe(verdict);
  });
});

describe('a pattern between cylinders points first where published texts point', () => {
  it.each(PATTERNS)('%s (%s)', (_what, _source, read, first) => {
    expect(first).toContain(verdictOf(read).causes[0]);
  });
});
