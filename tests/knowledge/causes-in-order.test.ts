import { describe, expect, it } from 'vitest';
import { conclude, ranked } from '../../core/inference/conclude.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';

/*
 * Published lists of causes for a look, against the order the program comes to when it knows no more than that look. No counted failures were found, so the
 * order within a list is expert order; what must hold is which come first and that none of the listed ones is far down.
 */

type Tip = NonNullable<ReadingSheet['plugs'][number]['tip']>;
type Engine = ReadingSheet['engine'];

const ROAD: Engine = { use: 'road', cylinders: 4, cycle: 'four-stroke' };
const AIRCRAFT: Engine = { use: 'aircraft', cylinders: 4 };
const healthy: Tip = { noseColour: 'light tan', deposit: 'light dusting' };
const soot: Tip = { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot' };
const oil: Tip = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil' };
const burnt: Tip = { noseColour: 'white', noseSurface: 'bare', groundElectrode: 'blued' };

type Look = { readonly engine: Engine; readonly tips: readonly Tip[]; readonly more?: object };
const set = (tip: Tip, engine = ROAD, more?: object): Look => ({ engine, tips: Array.from({ length: engine.cylinders }, () => tip), ...(more && { more }) });
const one = (tip: Tip, engine = ROAD, more?: object): Look => ({
  engine, tips: Array.from({ length: engine.cylinders }, (_, i) => (i === 1 ? tip : healthy)), ...(more && { more }),
});
const knocking = { symptoms: [{ what: 'knock under load' }] };

/** `first`: one of these leads. `within`: all of these are among so many. */
const LISTS: readonly (readonly [look: string, source: string, of: Look, first: readonly string[], within: number, listed: readonly string[]])[] = [
  ['the whole set sooty', 'S14, S16, S17', set(soot), ['mixture-rich'], 6, ['air-filter-clogged', 'long-idling', 'short-trips', 'slow-light-use']],
  ['one plug sooty', 'S14, W3', one(soot), ['lead-bad', 'valve-sticking'], 5, ['lead-bad', 'valve-sticking', 'injector-leaking']],
  ['the whole set oily', 'S16, S17', set(oil), ['engine-worn'], 4, ['breather-blocked', 'guides-worn-all', 'rings-running-in']],
  ['one plug oily', 'S16', one(oil), ['rings-worn'], 2, ['guides-worn']],
  ['the whole set wet with fuel', 'W13, S01', set({ noseSurface: 'wet', deposit: 'wet fuel' }), ['flooded-start'], 2, ['no-spark']],
  ['one plug wet with fuel', 'common practice: spark before fuel', one({ noseSurface: 'wet', deposit: 'wet fuel' }), ['lead-bad', 'coil-failed'], 3, ['injector-leaking']],
  ['ash on one plug', 'W6, W12', one({ noseSurface: 'crust', deposit: 'ash crust' }), ['rings-worn', 'guides-worn'], 2, ['rings-worn', 'guides-worn']],
  ['lead in an aircraft', 'S07', set({ deposit: 'lead film' }, AIRCRAFT), ['leaded-cool-running'], 2, ['leaded-idling']],
  [
    'the whole set white and blue', 'S16, W6, W10', set(burnt), ['plugs-too-hot', 'mixture-lean'], 6,
    ['timing-advanced', 'mixture-lean', 'inlet-leak', 'fuel-pressure-low', 'engine-overheating'],
  ],
  ['one plug white and blistered', 'S16', one({ noseColour: 'white', noseSurface: 'blistered' }), ['plug-loose'], 4, ['injector-restricted', 'port-air-leak']],
  ['glass on the noses', 'S17, W6', set({ noseColour: 'yellow', noseSurface: 'glossy glaze' }), ['hard-run-after-light'], 1, []],
  ['pepper and knock', 'S68', set({ specks: 'dark pepper' }, ROAD, knocking), ['octane-low'], 3, ['timing-advanced', 'mixture-lean']],
  ['a molten centre', 'S66, S67', one({ centreElectrode: 'melted' }), ['hot-spot'], 3, ['plug-loose']],
  ['a bridged gap', 'S17, W3', one({ bridge: 'gap bridged' }), ['stop-start-bridge'], 2, ['rings-worn']],
  ['a bridged gap in an aircraft', 'S05', one({ bridge: 'gap bridged' }, AIRCRAFT), ['lead-bead-bridge'], 3, ['stop-start-bridge']],
  ['worn electrodes', 'S17', set({ centreElectrode: 'eroded' }), ['plugs-old'], 2, ['severe-service']],
  ['a cracked nose', 'S20, W11, W1, W18', one({ noseDamage: 'cracked' }), ['insulator-levered'], 4, ['heat-shock', 'plug-mishandled']],
  ['a track outside', 'W17, S05', one({ body: 'flashover track' }), ['insulator-dirty'], 2, ['boot-leaking']],
  ['a gap closed by the piston', 'S10', one({ contact: 'closed by piston' }), ['reach-long-here'], 2, []],
  ['an all-red set', 'W3, S45, S47', set({ noseColour: 'reddish' }), ['manganese-in-fuel'], 2, ['iron-in-fuel']],
];

function causesOf({ engine, tips, more }: Look): string[] {
  const parsed = parseReadingSheet({
    format: 'corenose.reading-sheet', version: 1, engine, plugs: tips.map((tip, i) => ({ cylinder: i + 1, tip })), ...more,
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  const { solution } = conclude(parsed.value, KNOWLEDGE);
  const here = [...solution.network.shared, ...(solution.network.local.get(2) ?? [])].filter((i) => i.cylinders.includes(2) && !i.cause.harmless);
  return ranked(here, solution, 0).slice(0, 8).map(({ cause }) => cause.id);
}

describe('the causes of a look come in the order of published lists', () => {
  it.each(LISTS)('%s (%s)', (_look, _source, of, first, within, listed) => {
    const causes = causesOf(of);
    expect(first, causes.join(', ')).toContain(causes[0]);
    expect(listed.filter((id) => !causes.slice(0, within).includes(id)), causes.join(', ')).toEqual([]);
  });
});
