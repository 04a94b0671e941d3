import { beforeEach, describe, expect, it } from 'vitest';
import { evidenceOf, type Evidence } from '../../../../core/inference/evidence.ts';
import { piecesOf, type Piece } from '../../../../core/inference/pieces.ts';
import type { ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import { sheetOf } from './sheet-of.ts';

const plugs = (...tips: readonly Tip[]): ReadingSheet['plugs'] => tips.map((tip, i) => ({ cylinder: i + 1, tip })) as ReadingSheet['plugs'];
const sheet = sheetOf({
  plugs: plugs({ noseColour: 'black', deposit: 'dry soot' }, { deposit: 'dry soot' }, { deposit: 'none' }, {}),
  cylinderChecks: [{ cylinder: 1, spark: 'weak', borescope: 'clean' }],
  symptoms: [{ what: 'oil use' }, { what: 'misfire', cylinder: 2 }], symptomsAbsent: ['surging'],
});
let evidence: Evidence;
let pieces: readonly Piece[];
beforeEach(() => {
  evidence = evidenceOf(sheet);
  pieces = piecesOf(evidence, [1]);
});
const wordsOf = (all: readonly Piece[], kind?: Piece['kind']): string[] => all.filter((piece) => kind === undefined || piece.kind === kind).map(({ words }) => words);
const piece = (words: string, of: readonly Piece[] = pieces): Piece => of.find((one) => one.words === words)!;

/** All that an evidence says, to tell what was taken away. */
const everything = ({ cylinders, present, absent }: Evidence): string[] => [
  ...cylinders.flatMap((c) => [...c.plugs.flatMap((plug) => plug.seen), ...c.seen].map(({ path }) => path)),
  ...cylinders.flatMap((c) => c.symptoms.map((what) => `${c.cylinder} ${what}`)), ...present, ...absent.map((what) => `no ${what}`),
];
const takenBy = (words: string): string[] => {
  const left = new Set(everything(piece(words).without));
  return everything(evidence).filter((one) => !left.has(one));
};

describe('what is taken away to explain a reading', () => {
  it('is each observation on a troubled cylinder, and each symptom', () => {
    expect(wordsOf(pieces, 'one')).toEqual([
      'cylinder 1: nose colour black', 'cylinder 1: deposit dry soot', 'cylinder 1: spark weak', 'cylinder 1: borescope clean', 'oil use', 'no surging', 'cylinder 2: misfire',
    ]);
    expect(piece('cylinder 1: spark weak')).toMatchObject({ about: 'cylinderChecks.0.spark', said: [{ finding: 'spark', value: 'weak' }], cylinders: [1], parts: [] });
    expect(takenBy('cylinder 1: deposit dry soot')).toEqual(['plugs.0.tip.deposit']);
    expect(takenBy('cylinder 1: spark weak')).toEqual(['cylinderChecks.0.spark']);
  });

  it('is a symptom of the engine, of its absence, or of a cylinder, each alone', () => {
    expect(piece('oil use')).toMatchObject({ about: 'symptoms', said: [{ finding: 'symptom', value: 'oil use' }], cylinders: [], parts: [] });
    expect(piece('no surging')).toMatchObject({ about: 'symptomsAbsent', said: [{ finding: 'symptom', value: 'surging' }], cylinders: [], parts: [] });
    expect(piece('cylinder 2: misfire')).toMatchObject({ about: 'symptoms', said: [{ finding: 'symptom', value: 'misfire' }], cylinders: [2], parts: [] });
    expect([takenBy('oil use'), takenBy('no surging'), takenBy('cylinder 2: misfire')]).toEqual([['oil use'], ['no surging'], ['2 misfire']]);
  });

  it('leaves the other symptoms of the same kind', () => {
    const felt = evidenceOf(sheetOf({
      symptoms: [{ what: 'oil use' }, { what: 'flooded' }, { what: 'misfire', cylinder: 2 }, { what: 'vibration', cylinder: 2 }], symptomsAbsent: ['surging', 'no start'],
    }));
    const left = (words: string): string[] => everything(piece(words, piecesOf(felt, [])).without);
    expect(left('oil use')).toEqual(['2 misfire', '2 vibration', 'flooded', 'no no start', 'no surging']);
    expect(left('no surging')).toEqual(['2 misfire', '2 vibration', 'flooded', 'oil use', 'no no start']);
    expect(left('cylinder 2: misfire')).toEqual(['2 vibration', 'flooded', 'oil use', 'no no start', 'no surging']);
    expect(left('flooded, oil use, cylinder 2: misfire and cylinder 2: vibration, taken together')).toEqual(['no no start', 'no surging']);
  });

  it('is the same finding on several cylinders, troubled or not', () => {
    expect(wordsOf(pieces, 'alike')).toEqual(['cylinders 1 and 2: deposit dry soot']);
    expect(piece('cylinders 1 and 2: deposit dry soot')).toMatchObject({
      about: 'plugs.0.tip.deposit', cylinders: [1, 2], said: [{ finding: 'deposit', value: 'dry soot' }, { finding: 'deposit', value: 'dry soot' }], parts: [],
    });
    expect(takenBy('cylinders 1 and 2: deposit dry soot')).toEqual(['plugs.0.tip.deposit', 'plugs.1.tip.deposit']);
  });

  it('is all of one plug, all of one cylinder, all plugs and all symptoms', () => {
    const [plug, cylinder, set, felt] = [
      'cylinder 1: nose colour black and deposit dry soot, taken together', 'cylinder 1: spark weak and borescope clean, taken together',
      'cylinders 1, 2 and 3: nose colour black, deposit dry soot and deposit none, taken together', 'oil use and cylinder 2: misfire, taken together',
    ] as const;
    expect(wordsOf(pieces, 'together')).toEqual([plug, cylinder, set, felt]);
    expect(takenBy(plug)).toEqual(['plugs.0.tip.noseColour', 'plugs.0.tip.deposit']);
    expect(takenBy(cylinder)).toEqual(['cylinderChecks.0.spark', 'cylinderChecks.0.borescope']);
    expect(takenBy(set)).toEqual(['plugs.0.tip.noseColour', 'plugs.0.tip.deposit', 'plugs.1.tip.deposit', 'plugs.2.tip.deposit']);
    expect(takenBy(felt)).toEqual(['2 misfire', 'oil use']);
    expect(piece(plug).parts).toEqual(['cylinder 1: nose colour black', 'cylinder 1: deposit dry soot']);
    expect(piece(set).parts).toEqual([
      'cylinders 1 and 2: deposit dry soot', 'cylinder 1: nose colour black', 'cylinder 1: deposit dry soot', 'cylinder 2: deposit dry soot', 'cylinder 3: deposit none',
    ]);
    expect(piece(felt)).toMatchObject({ about: 'symptoms', cylinders: [], parts: ['oil use', 'cylinder 2: misfire'] });
    expect(piece(felt).said.map(({ value }) => value)).toEqual(['oil use', 'misfire']);
  });
});

describe('what is not taken together', () => {
  it('is what stands alone: one finding of a plug, one plug of a set, one symptom, two plugs of one cylinder', () => {
    const lone = evidenceOf(sheetOf({ plugs: plugs({ noseColour: 'black' }), symptoms: [{ what: 'oil use' }] }));
    expect(wordsOf(piecesOf(lone, [1]))).toEqual(['cylinder 1: nose colour black', 'oil use']);
    const twin = evidenceOf(sheetOf({
      engine: { use: 'aircraft', cylinders: 2, plugsPerCylinder: 2 },
      plugs: (['upper', 'lower'] as const).map((position) => ({ cylinder: 1, position, tip: { deposit: 'dry soot' } })),
    }));
    expect(wordsOf(piecesOf(twin, []))).toEqual([]);
  });

  it('is a sure value with the same value in doubt', () => {
    const doubted = evidenceOf(sheetOf({ plugs: plugs({ deposit: 'dry soot' }, { deposit: 'dry soot', unsure: ['deposit'] }) }));
    expect(wordsOf(piecesOf(doubted, []), 'alike')).toEqual([]);
    const both = evidenceOf(sheetOf({ plugs: plugs(...[1, 2].map((): Tip => ({ deposit: 'dry soot', unsure: ['deposit'] }))) }));
    expect(wordsOf(piecesOf(both, []), 'alike')).toEqual(['cylinders 1 and 2: deposit dry soot (unsure)']);
  });
});

describe('many alike', () => {
  const eight = { use: 'road', cylinders: 9 } as const;
  const sootyPlugs = (n: number): ReadingSheet['plugs'] => plugs(...Array.from({ length: 8 }, (_, i): Tip => ({ deposit: i < n ? 'dry soot' : 'none' })));

  it('are counted from the seventh on, among the plugs that were read', () => {
    const alike = (n: number): string[] => wordsOf(piecesOf(evidenceOf(sheetOf({ engine: eight, plugs: sootyPlugs(n) })), []), 'alike');
    expect(alike(6)).toContain('cylinders 1, 2, 3, 4, 5 and 6: deposit dry soot');
    expect(alike(7)).toEqual(['7 of 8 plugs: deposit dry soot']);
  });

  it('are counted as cylinders where they were found there', () => {
    const cylinderChecks = Array.from({ length: 8 }, (_, i) => ({ cylinder: i + 1, spark: i < 7 ? ('weak' as const) : ('strong' as const) }));
    expect(wordsOf(piecesOf(evidenceOf(sheetOf({ engine: eight, cylinderChecks })), []), 'alike')).toEqual(['7 of 8 cylinders: spark weak']);
  });

  it('findings of one plug, or symptoms, are counted from the seventh on', () => {
    const tip: Tip = { noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', coverage: 'full', specks: 'none', bridge: 'none', shellRim: 'wet oil' };
    const full = piecesOf(evidenceOf(sheetOf({ plugs: plugs(tip) })), [1]);
    expect(wordsOf(full, 'together')).toEqual(['cylinder 1: all 7 findings taken together']);
    const { bridge: _, ...six } = tip;
    expect(wordsOf(piecesOf(evidenceOf(sheetOf({ plugs: plugs(six) })), [1]), 'together')[0]).toMatch(/^cylinder 1: nose colour black, .* and shell rim wet oil, taken together$/);
    const felt = (n: number): string[] => wordsOf(piecesOf(evidenceOf(sheetOf({ symptoms: SYMPTOMS.slice(0, n).map((what) => ({ what })) })), []), 'together');
    expect(felt(7)).toEqual(['all 7 symptoms, taken together']);
    expect(felt(6)[0]).toMatch(/ and .*, taken together$/);
  });

  it('said twice on one set are told once', () => {
    const set = wordsOf(piecesOf(evidenceOf(sheetOf({ plugs: plugs({ deposit: 'dry soot' }, { deposit: 'dry soot' }) })), []), 'together');
    expect(set).toEqual(['cylinders 1 and 2: deposit dry soot, taken together']);
  });
});

describe('what is left when something is taken away', () => {
  it('is the very same where nothing of it was touched, so that it need not be worked out again', () => {
    const { without } = piece('cylinder 1: spark weak');
    expect(without.cylinders.map((c, i) => c === evidence.cylinders[i])).toEqual([false, true, true, true]);
    expect(without.cylinders[0]?.plugs[0]?.seen).toBe(evidence.cylinders[0]?.plugs[0]?.seen);
    expect(piece('cylinder 2: misfire').without.cylinders.map((c, i) => c === evidence.cylinders[i])).toEqual([true, false, true, true]);
    expect(piece('oil use and cylinder 2: misfire, taken together').without.cylinders.map((c, i) => c === evidence.cylinders[i])).toEqual([true, false, true, true]);
  });

  it('remembers on each plug all that was seen there, also when more is taken away', () => {
    const all = evidence.cylinders[0]?.plugs[0]?.seen;
    const once = piece('cylinder 1: nose colour black').without;
    expect(once.cylinders[0]?.plugs[0]).toMatchObject({ seen: all?.slice(1) });
    expect(once.cylinders[0]?.plugs[0]?.from).toBe(all);
    const twice = piece('cylinder 1: deposit dry soot', piecesOf(once, [1])).without;
    expect(twice.cylinders[0]?.plugs[0]?.seen).toEqual([]);
    expect(twice.cylinders[0]?.plugs[0]?.from).toBe(all);
  });
});
