import { describe, expect, it } from 'vitest';
import { evidenceOf, type CylinderEvidence, type Observation, type PlugEvidence } from '../../../../core/inference/evidence.ts';
import type { CylinderCheck, PlugReading, ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';

const plugOf = (plug: Omit<PlugReading, 'cylinder'>): PlugEvidence => evidenceOf(sheetOf({ plugs: [{ cylinder: 1, ...plug }] })).cylinders[0]!.plugs[0]!;
const seenOf = (plug: Omit<PlugReading, 'cylinder'>): readonly Observation[] => plugOf(plug).seen;
const cylinderOf = (sheet: ReadingSheet, cylinder = 1): CylinderEvidence => evidenceOf(sheet).cylinders[cylinder - 1]!;
const wordsOf = (seen: readonly Observation[]): string[] => seen.map(({ words }) => words);

describe('a facet of a tip', () => {
  it('is one observation with its place on the sheet, in the order of the facets', () => {
    expect(seenOf({ tip: { bridge: 'gap bridged', noseColour: 'black' } })).toEqual([
      expect.objectContaining({ path: 'plugs.0.tip.noseColour', finding: 'noseColour', value: 'black', sure: true, words: 'nose colour black' }),
      { path: 'plugs.0.tip.bridge', finding: 'bridge', value: 'gap bridged', sure: true, words: 'bridging gap bridged', weights: [0, 1, 0] },
    ]);
  });

  it('that the reader doubts counts as read in half of the cases and as any value in the other half', () => {
    const [bridge, colour] = seenOf({ tip: { bridge: 'gap bridged', noseColour: 'black', unsure: ['bridge'] } }).toReversed();
    expect(bridge).toMatchObject({ value: 'gap bridged', sure: false, words: 'bridging gap bridged (unsure)' });
    expect(bridge?.weights).toEqual([1 / 6, 1 / 6 + 1 / 2, 1 / 6]);
    expect(colour).toMatchObject({ sure: true, words: 'nose colour black' });
  });

  it('outranks a glance that found nothing, but not one that found something', () => {
    expect(wordsOf(seenOf({ tip: { overall: 'looks normal' } }))).toEqual(['at a glance looks normal']);
    expect(wordsOf(seenOf({ tip: { overall: 'looks normal', specks: 'none' } }))).toEqual(['specks none']);
    expect(wordsOf(seenOf({ tip: { overall: 'looks unfired', specks: 'none' } }))).toEqual(['specks none', 'at a glance looks unfired']);
  });
});

describe('a measurement on a plug', () => {
  it('is spread over its bands, and rules go by the likeliest', () => {
    const [gap] = seenOf({ fitted: { gapNewMm: 0.8 }, measured: { gapMm: 2 } });
    expect(gap).toMatchObject({ path: 'plugs.0.measured.gapMm', finding: 'gap', value: 'far too wide', sure: true, words: 'gap 2 mm (new 0.8 mm)' });
    // closed, narrow, as set, wide, far too wide: in the order of the findings, not of the bands.
    expect(gap?.weights.map((w) => Math.round(w))).toEqual([0, 0, 0, 0, 1]);
    expect(seenOf({ measured: { resistorKOhm: 50 } })[0]?.weights.map((w) => Math.round(w))).toEqual([0, 0, 1, 0]);
  });
});

describe('what a photo shows', () => {
  const photo = (belief: number): PlugReading['photo'] => [{ facet: 'bridge', value: 'gap bridged', belief }];

  it('is read right with the belief of the measuring, else any value', () => {
    // Pearl 1988, section 2.2.2: virtual evidence. (1 - 0.7) / 3 = 0.1.
    const [bridge] = seenOf({ photo: photo(0.7) });
    expect(bridge).toMatchObject({ path: 'plugs.0.photo.0', value: 'gap bridged', sure: false, photo: 0.7, words: 'bridging gap bridged (photo)' });
    [0.1, 0.8, 0.1].forEach((w, i) => expect(bridge?.weights[i]).toBeCloseTo(w, 12));
  });

  it('is a value for the rules from one half on', () => {
    expect([0.49, 0.5, 0.51].map((belief) => seenOf({ photo: photo(belief) })[0]?.value)).toEqual(['', 'gap bridged', 'gap bridged']);
  });

  it('is not there where the measuring says nothing', () => {
    expect(seenOf({ photo: photo(0) })).toEqual([]);
  });

  it('stands behind what was noted of other facets, and not beside the same facet noted for sure', () => {
    expect(wordsOf(seenOf({ tip: { specks: 'none' }, photo: photo(0.9) }))).toEqual(['specks none', 'bridging gap bridged (photo)']);
    expect(wordsOf(seenOf({ tip: { bridge: 'none' }, photo: photo(0.9) }))).toEqual(['bridging none']);
  });

  it('sharpens the same facet noted with doubt: the two reports together', () => {
    const [one, ...more] = seenOf({ tip: { bridge: 'gap bridged', unsure: ['bridge'] }, photo: photo(0.7) });
    expect(more).toEqual([]);
    expect(one).toMatchObject({ sure: false, words: 'bridging gap bridged (unsure); bridging gap bridged (photo)' });
    [0.1 / 6, 0.8 * (1 / 6 + 1 / 2), 0.1 / 6].forEach((w, i) => expect(one?.weights[i]).toBeCloseTo(w, 12));
    expect(wordsOf(seenOf({ tip: { specks: 'none', unsure: ['specks'] }, photo: photo(0.7) }))).toEqual(['specks none (unsure)', 'bridging gap bridged (photo)']);
  });
});

describe('a check on a cylinder', () => {
  const found = (check: Omit<CylinderCheck, 'cylinder'>): readonly Observation[] => cylinderOf(sheetOf({ cylinderChecks: [{ cylinder: 1, ...check }] })).seen;

  it('is one observation, and a measured one is spread over its bands', () => {
    expect(found({ spark: 'weak', leakDownPercent: 60 })).toEqual([
      { path: 'cylinderChecks.0.spark', finding: 'spark', value: 'weak', sure: true, words: 'spark weak', weights: [0, 0, 1, 0] },
      expect.objectContaining({ path: 'cylinderChecks.0.leakDownPercent', finding: 'leakDown', value: 'fault', sure: true, words: 'leak-down 60 %' }),
    ]);
    expect(wordsOf(found({ injector: 'dead', speedDropWhenCut: 'none', borescope: 'clean' }))).toEqual(['injector dead', 'speed drop when cut none', 'borescope clean']);
  });

  it('with a part swapped or put in says where the fault went', () => {
    const swapped = found({
      swaps: [{ part: 'coil', to: 2, followed: true }, { part: 'plug', to: 2, followed: false }],
      substitutions: [{ part: 'lead', cured: true }, { part: 'injector', cured: false }],
    });
    expect(swapped.map(({ finding, value }) => [finding, value])).toEqual(
      [['swap coil', 'followed'], ['swap plug', 'stayed'], ['known-good lead', 'cured'], ['known-good injector', 'not cured']],
    );
  });

  it('stands on its own cylinder only', () => {
    const sheet = sheetOf({ cylinderChecks: [{ cylinder: 3, spark: 'none' }, { cylinder: 2, spark: 'weak' }] });
    expect([1, 2, 3, 4].map((n) => cylinderOf(sheet, n).seen.map(({ path, value }) => `${path} ${value}`))).toEqual(
      [[], ['cylinderChecks.1.spark weak'], ['cylinderChecks.0.spark none'], []],
    );
  });
});

describe('a check at the reading before', () => {
  const since = (checks: Omit<CylinderCheck, 'cylinder'>, more: Partial<NonNullable<ReadingSheet['since']>> = {}): Partial<ReadingSheet> => ({
    since: { reading: { plugs: [{ cylinder: 1 }], cylinderChecks: [{ cylinder: 1, ...checks }, { cylinder: 2, ...checks }] }, ...more },
  });

  it('of what a cylinder keeps counts as a doubted value does', () => {
    const [spark] = cylinderOf(sheetOf(since({ spark: 'weak' }))).seen;
    expect(spark).toEqual({
      path: 'since.reading.cylinderChecks.0.spark', finding: 'spark', value: 'weak', sure: false, words: 'spark weak (at the reading before)', weights: [0.125, 0.125, 0.625, 0.125],
    });
    const kept = { compressionKPa: 800, compressionWetKPa: 900, leakDownPercent: 5, borescope: 'clean', spark: 'weak', injector: 'works' } as const;
    expect(cylinderOf(sheetOf(since(kept))).seen.map(({ finding }) => finding).sort()).toEqual(
      ['borescope', 'compression', 'compressionWet', 'injector', 'leakDown', 'spark'],
    );
  });

  it('is compared with the cylinders of its own day', () => {
    const sheet = sheetOf({ ...since({ compressionKPa: 900 }), cylinderChecks: [{ cylinder: 3, compressionKPa: 1500 }] });
    expect(cylinderOf(sheet).seen[0]).toMatchObject({ value: 'good', words: 'compression 900 kPa, best 900 kPa (at the reading before)' });
  });

  it('of how the cylinder ran that day is over', () => {
    expect(cylinderOf(sheetOf(since({ speedDropWhenCut: 'none', egtC: 700, swaps: [{ part: 'plug', to: 2, followed: true }] }))).seen).toEqual([]);
  });

  it('gives way to the same check made again, and to work on the cylinder', () => {
    const again = sheetOf({ ...since({ spark: 'weak', borescope: 'clean' }), cylinderChecks: [{ cylinder: 1, spark: 'strong' }] });
    expect(wordsOf(cylinderOf(again).seen)).toEqual(['spark strong', 'borescope clean (at the reading before)']);
    const worked = sheetOf(since({ spark: 'weak' }, { done: [{ cause: 'coil-weak', cylinders: [2] }] }));
    expect([1, 2].map((n) => cylinderOf(worked, n).seen.length)).toEqual([1, 0]);
  });
});

describe('symptoms', () => {
  it('belong to the engine or to the cylinder that they were felt on, each once and in order', () => {
    const evidence = evidenceOf(sheetOf({
      symptoms: [{ what: 'oil use' }, { what: 'misfire', cylinder: 2 }, { what: 'blue smoke' }, { what: 'oil use' }], symptomsAbsent: ['surging', 'flooded', 'surging'],
    }));
    expect(evidence.present).toEqual(['blue smoke', 'oil use']);
    expect(evidence.absent).toEqual(['flooded', 'surging']);
    expect(evidence.cylinders.map(({ symptoms }) => symptoms)).toEqual([[], ['misfire'], [], []]);
  });

  it('are none where none were noted', () => {
    const { present, absent, cylinders } = evidenceOf(sheetOf());
    expect([present, absent, cylinders.map(({ symptoms }) => symptoms)]).toEqual([[], [], [[], [], [], []]]);
  });
});

describe('the plugs of an engine', () => {
  const keys = (sheet: ReadingSheet): string[][] => evidenceOf(sheet).cylinders.map(({ plugs }) => plugs.map(({ key }) => key));

  it('stand in every hole, read or not', () => {
    expect(keys(sheetOf())).toEqual([['1'], ['2'], ['3'], ['4']]);
    const { cylinders } = evidenceOf(sheetOf({ plugs: [{ cylinder: 2, tip: { specks: 'none' } }] }));
    expect(cylinders.map(({ plugs }) => plugs[0]?.reading?.cylinder)).toEqual([undefined, 2, undefined, undefined]);
    expect(cylinders[0]?.plugs[0]).toEqual({ key: '1', place: { cylinder: 1, position: 'only' }, reading: undefined, seen: [] });
    expect(cylinders.map(({ cylinder }) => cylinder)).toEqual([1, 2, 3, 4]);
  });

  it('are two a cylinder where the engine says so, each with its own reading', () => {
    const twin = sheetOf({
      engine: { use: 'aircraft', cylinders: 2, plugsPerCylinder: 2 },
      plugs: [{ cylinder: 1, position: 'lower', tip: { deposit: 'wet oil' } }, { cylinder: 1, position: 'upper', tip: { deposit: 'none' } }],
    });
    expect(keys(twin)).toEqual([['1 upper', '1 lower'], ['2 upper', '2 lower']]);
    const [first] = evidenceOf(twin).cylinders;
    expect(first?.plugs.map(({ seen }) => wordsOf(seen))).toEqual([['deposit none'], ['deposit wet oil']]);
    expect(first?.plugs.map(({ seen }) => seen[0]?.path)).toEqual(['plugs.1.tip.deposit', 'plugs.0.tip.deposit']);
  });

  it('count one that was read as one of two beside the holes that others claim', () => {
    const engine = { use: 'aircraft', cylinders: 4, plugsPerCylinder: 2 } as const;
    const plugs = [
      { cylinder: 1, position: 'unknown' }, { cylinder: 2, position: 'unknown' }, { cylinder: 2, position: 'lower' }, { cylinder: 3, position: 'lower' },
      { cylinder: 4, position: 'upper' },
    ] as const;
    expect(keys(sheetOf({ engine, plugs: [...plugs] }))).toEqual([['1 unknown', '1 upper'], ['2 lower', '2 unknown'], ['3 lower', '3 upper'], ['4 upper', '4 lower']]);
  });
});
