import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { explainCause, removalsFor, type Removals } from '../../../../core/inference/explain.ts';
import { focusOn } from '../../../../core/inference/focus.ts';
import { networkFor, type AppliedMove, type Instance } from '../../../../core/inference/network.ts';
import { piecesOf, type Piece } from '../../../../core/inference/pieces.ts';
import { solverFor, type Solution } from '../../../../core/inference/posterior.ts';
import type { Cause } from '../../../../core/knowledge/types.ts';
import type { CauseFinding, Fact } from '../../../../shared/formats/findings.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

const soot = condition('soot', { shows: [{ ...shows('deposit', 'dry soot', 'usually'), because: 'Soot is dry.' }] });
const rich = cause('rich', { makes: [makes('soot', 'usually')] });
const kb = knowledge([soot], [rich]);

const at = (cylinders: readonly number[], parts: Partial<Instance> = {}): Instance =>
  ({ id: 'rich', cause: rich, group: '', cylinders, plugs: [], prior: 0.04, moves: [], ...parts });

type Part = Partial<Omit<Piece, 'without'>> & { readonly bits: number };
/** Something that was taken away, and the belief without it: at even odds with it, so many bits less. */
const removed = ({ bits, ...parts }: Part): Removals['removed'][number] => ({
  piece: { kind: 'one', about: 'plugs.0.tip', words: 'word', said: [{ finding: 'noseColour', value: 'black' }], cylinders: [1], parts: [], ...parts } as unknown as Piece,
  without: () => 1 / (1 + 2 ** bits),
});
const explain = (instance: Instance, parts: readonly Part[]): CauseFinding =>
  explainCause(instance, { belief: () => 0.6 } as unknown as Solution, { with: () => 0.5, removed: parts.map(removed) }, kb);
const told = (facts: readonly Fact[]): [string, number][] => facts.map(({ text, bits }) => [text, bits]);
const [local, shared] = [at([1]), at([1, 2])];

describe('the weight of an observation', () => {
  it('is by how much the log-odds of the cause change when it is taken away, in bits to three places', () => {
    const of = (before: number, without: number): number[] => {
      const { piece } = removed({ bits: 0 });
      const removals: Removals = { with: () => before, removed: [{ piece, without: () => without }] };
      const { supports, speaksAgainst } = explainCause(local, { belief: () => before } as unknown as Solution, removals, kb);
      return [...supports, ...speaksAgainst].map(({ bits }) => bits);
    };
    expect(of(0.8, 0.5)).toEqual([2]);
    expect(of(0.5, 0.8)).toEqual([-2]);
    // log2(3) = 1.58496
    expect(of(0.75, 0.5)).toEqual([1.585]);
    // No belief counts as closer to none or to all than one in 10^9: log2(10^9 - 1) = 29.897.
    expect(of(1, 0.5)).toEqual([29.897]);
    expect(of(0, 0.5)).toEqual([-29.897]);
  });

  it('speaks for or against, the weightiest first, of like ones in the order of their words; not what is less than a twentieth of a bit', () => {
    const parts = [['little', 0.0492], ['b', 1], ['enough', 0.05], ['a', 1], ['most', 3], ['against', -2], ['not much', -0.05], ['noise', -0.04]] as const;
    const { supports, speaksAgainst } = explain(local, parts.map(([words, bits]) => ({ words, bits })));
    expect(told(supports)).toEqual([['most', 3], ['a', 1], ['b', 1], ['enough', 0.05]]);
    expect(told(speaksAgainst)).toEqual([['against', -2], ['not much', -0.05]]);
  });

  it('is told of the eight weightiest on each side', () => {
    const { supports, speaksAgainst } = explain(local, Array.from({ length: 20 }, (_, i) => ({ words: `${i}`, bits: i < 10 ? i + 1 : 9 - i })));
    expect(supports.map(({ bits }) => bits)).toEqual([10, 9, 8, 7, 6, 5, 4, 3]);
    expect(speaksAgainst.map(({ bits }) => bits)).toEqual([-10, -9, -8, -7, -6, -5, -4, -3]);
  });

  it('comes with where it stands on the sheet and why it speaks so', () => {
    const { supports: [fact] } = explain(local, [{ bits: 1, about: 'plugs.0.tip.deposit', said: [{ finding: 'deposit', value: 'dry soot' }] }]);
    expect(fact).toEqual({ about: 'plugs.0.tip.deposit', text: 'word', bits: 1, because: 'Soot is dry.', lines: ['rich makes soot', 'soot shows deposit dry soot'] });
    const { speaksAgainst } = explain(local, [{ bits: -1, said: [{ finding: 'deposit', value: 'none' }] }]);
    expect(speaksAgainst[0]?.because).toBe('With this cause one would rather see "dry soot". Soot is dry.');
  });
});

describe('a circumstance', () => {
  const move = (words: string, factor: number, parts: Partial<AppliedMove> = {}): AppliedMove => ({ words, factor, about: 'conditions', because: 'Reason.', source: 'S16', ...parts });

  it('weighs the logarithm of its factor, among the observations', () => {
    const moves = [move('choke sticking', 8, { line: 'rich moved by choke sticking', addedBy: 'Ann' }), move('duty: town', 1 / 3)];
    const { supports, speaksAgainst } = explain(at([1], { moves }), [{ words: 'more', bits: 4 }, { words: 'less', bits: 2 }]);
    expect(told(supports)).toEqual([['more', 4], ['choke sticking', 3], ['less', 2]]);
    expect(supports[1]).toEqual({ about: 'conditions', text: 'choke sticking', bits: 3, because: 'Reason.', lines: ['rich moved by choke sticking'], addedBy: 'Ann' });
    expect(speaksAgainst).toEqual([{ about: 'conditions', text: 'duty: town', bits: -1.585, because: 'Reason.' }]);
  });
});

describe('what concerns a cause of one cylinder', () => {
  it('is what was seen there, alone or together, and what is said of the engine', () => {
    const { supports } = explain(local, [
      { words: 'here', cylinders: [1], bits: 9 }, { words: 'all here', kind: 'together', cylinders: [1], bits: 8 }, { words: 'felt', cylinders: [], bits: 7 },
      { words: 'elsewhere', cylinders: [2], bits: 6 }, { words: 'likes', kind: 'alike', cylinders: [1], bits: 5 }, { words: 'all plugs', kind: 'together', cylinders: [1, 2], bits: 4 },
    ]);
    expect(supports.map(({ text }) => text)).toEqual(['here', 'all here', 'felt']);
  });
});

describe('what concerns a shared cause', () => {
  it('is what is alike anywhere, one thing at its own cylinders, what holds all of them together, and what is said of the engine', () => {
    const { supports } = explain(shared, [
      { words: 'here', cylinders: [1], bits: 9 }, { words: 'alike elsewhere', kind: 'alike', cylinders: [3, 4], said: [], bits: 8 }, { words: 'felt', cylinders: [], bits: 7 },
      { words: 'all', kind: 'together', cylinders: [1, 2, 3], bits: 6 },
      { words: 'elsewhere', cylinders: [3], bits: 5 }, { words: 'all of one', kind: 'together', cylinders: [1], bits: 4 }, { words: 'partly', cylinders: [2, 3], bits: 3 },
    ]);
    expect(supports.map(({ text }) => text)).toEqual(['here', 'alike elsewhere', 'felt', 'all']);
  });

  it('is told of several plugs alike once, and not of each', () => {
    const dry = { finding: 'deposit', value: 'dry soot' };
    const { supports } = explain(shared, [
      { words: 'alike', kind: 'alike', cylinders: [1, 2], said: [dry, dry], bits: 4 }, { words: 'dry 1', said: [dry], bits: 3 }, { words: 'dry 2', cylinders: [2], said: [dry], bits: 3 },
      { words: 'black 1', bits: 2 }, { words: 'wet 1', said: [{ finding: 'deposit', value: 'wet oil' }], bits: 1 },
    ]);
    expect(supports.map(({ text }) => text)).toEqual(['alike', 'black 1', 'wet 1']);
  });

  it('keeps a symptom though its word is told of several plugs', () => {
    const said = [{ finding: 'symptom', value: 'misfire' }];
    const { supports } = explain(shared, [{ words: 'alike', kind: 'alike', said, bits: 4 }, { words: 'misfire', said, bits: 3 }]);
    expect(supports.map(({ text }) => text)).toEqual(['alike', 'misfire']);
  });
});

describe('findings that repeat each other', () => {
  const group = (together: number, ...apart: readonly number[]): string[] => {
    const parts = apart.map((bits, i): Part => ({ words: `part ${i}`, bits }));
    const { supports, speaksAgainst } = explain(local, [...parts, { words: 'group', kind: 'together', parts: [...parts.map(({ words }) => words!), 'unheard of'], bits: together }]);
    return [...supports, ...speaksAgainst].map(({ text }) => text);
  };

  it('are told as one where together they say more than half a bit more than one by one', () => {
    expect(group(2.6, 1, 1)).toEqual(['group']);
    expect(group(2.4, 1, 1)).toEqual(['part 0', 'part 1']);
    expect(group(-2.6, -1, -1)).toEqual(['group']);
    expect(group(-2.4, -1, -1)).toEqual(['part 0', 'part 1']);
  });

  it('count parts that speak the other way as nothing', () => {
    expect(group(0.6, -2)).toEqual(['group']);
    expect(group(0.4, -2)).toEqual(['part 0']);
    expect(group(-0.6, 2)).toEqual(['group']);
    expect(group(-0.4, 2)).toEqual(['part 0']);
  });

  it('leave what is no part of them', () => {
    const { supports } = explain(local, [{ words: 'other', bits: 1 }, { words: 'part', bits: 1 }, { words: 'group', kind: 'together', parts: ['part'], bits: 3 }]);
    expect(told(supports)).toEqual([['group', 3], ['other', 1]]);
  });
});

describe('a cause explained', () => {
  it('has its name with the group, its belief, its place and its sources in order', () => {
    const sources = (source: string): { because: string; source: string } => ({ because: '', source });
    const jet: Cause = cause('jet', {
      scope: 'mixture group', makes: [{ ...makes('soot', 'often'), ...sources('S9') }], shows: [{ finding: 'spark', is: 'weak', strength: 'often', ...sources('S3') }],
      gives: [{ symptom: 'misfire', strength: 'often', ...sources('S3') }],
    });
    const moves: AppliedMove[] = [{ words: 'town', factor: 3, about: 'conditions', ...sources('S1') }];
    expect(explain(at([1, 2], { id: 'jet @ front', cause: jet, group: 'front', moves }), [])).toMatchObject({
      id: 'jet @ front', name: 'jet (front)', belief: 0.6, scope: 'group', cylinders: [1, 2], sources: ['S1', 'S3', 'S9'],
    });
    expect(explain(local, [])).toMatchObject({ id: 'rich', name: 'rich', scope: 'engine', cylinders: [1], sources: ['common practice'], supports: [], speaksAgainst: [] });
  });

  it('is put into words once for the same removals', () => {
    const removals: Removals = { with: () => 0.5, removed: [] };
    const solution = { belief: () => 0.6 } as unknown as Solution;
    const first = explainCause(local, solution, removals, kb);
    expect(explainCause(local, solution, removals, kb)).toBe(first);
    expect(explainCause(at([1]), solution, removals, kb)).not.toBe(first);
    expect(explainCause(local, solution, { ...removals }, kb)).not.toBe(first);
  });
});

describe('what can be taken away from a reading', () => {
  it('is every piece of it, and the belief without each is that of a reading without it', () => {
    const evidence = evidenceOf(sheetOf({ plugs: [{ cylinder: 1, tip: { deposit: 'dry soot' } }, { cylinder: 2, tip: { deposit: 'none', noseColour: 'black' } }] }));
    const network = networkFor(kb, evidence);
    const solution = solverFor(network)(evidence);
    const [one] = network.shared as [Instance];
    const removals = removalsFor(solution, [1]);
    const pieces = piecesOf(evidence, [1]);
    expect(removals.removed.map(({ piece }) => piece.words)).toEqual(pieces.map(({ words }) => words));
    expect(removals.with(one)).toBeCloseTo(solution.belief(one), 9);
    const solve = focusOn(solution);
    removals.removed.forEach(({ without }, i) => {
      const again = solverFor(networkFor(structuredClone(kb), evidence))(pieces[i]!.without).belief(one);
      expect(without(one)).toBeCloseTo(again, 9);
      expect(without(one)).toBeCloseTo(solve(pieces[i]!.without).belief(one), 9);
    });
    expect(new Set(removals.removed.map(({ without }) => without(one).toFixed(6))).size).toBeGreaterThan(1);
  });
});
