import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Instance } from '../../../../core/inference/network.ts';
import { switchFor, touchesOf, type State } from '../../../../core/inference/states.ts';
import { STRENGTHS, type Strength } from '../../../../core/knowledge/strengths.ts';
import { cause, condition, makes } from './small-knowledge.ts';

const CONDITIONS = ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => condition(id, {}));
const at = (cylinders: readonly number[], prior: number, effects: readonly (readonly [string, Strength])[]): Instance =>
  ({ id: 'x', cause: cause('x', { makes: effects.map(([id, strength]) => makes(id, strength)) }), group: '', cylinders, plugs: [], prior, moves: [] });

/** A state by what it touches, to be compared whatever the order. */
const told = ({ there, chance, touches }: State): object =>
  ({ there, chance: +chance.toFixed(12), touches: Object.fromEntries(touches.map(({ k, factor }) => [k, +factor.toFixed(12)])) });
const state = (there: boolean, chance: number, touches: Readonly<Record<number, number>>): object =>
  ({ there, chance: +chance.toFixed(12), touches: Object.fromEntries(Object.entries(touches).map(([k, factor]) => [k, +factor.toFixed(12)])) });

describe('a cause of one cylinder', () => {
  it('is there with all its effects or not at all; a condition that is not considered cannot come about', () => {
    const rings = at([1], 0.04, [['b', 'often'], ['unheard of', 'usually'], ['a', 'rarely']]);
    const { base, others, instance } = switchFor(rings, CONDITIONS);
    expect(instance).toBe(rings);
    expect(told(base)).toEqual(state(false, 0.96, {}));
    expect(others.map(told)).toEqual([state(true, 0.04, { 1: 0.55, 0: 0.94 })]);
    expect(touchesOf(rings, CONDITIONS)).toEqual([{ k: 1, factor: 1 - 0.45 }, { k: 0, factor: 1 - 0.06 }]);
  });
});

describe('a cause of several cylinders', () => {
  it('shows an effect weaker than "usually" in this engine or not, and where it does, with that strength', () => {
    const { base, others } = switchFor(at([1, 2], 0.04, [['a', 'usually'], ['b', 'sometimes']]), CONDITIONS);
    const shown = 0.2 / 0.7;
    expect(told(base)).toEqual(state(false, 0.96, {}));
    expect(others.map(told)).toEqual([state(true, 0.04 * (1 - shown), { 0: 0.3 }), state(true, 0.04 * shown, { 0: 0.3, 1: 0.3 })]);
  });

  it('has at most four traits, its strongest weak effects, of like ones the earlier conditions; the rest counts plug by plug', () => {
    const { others } = switchFor(
      at([1, 2], 0.04, [['c', 'rarely'], ['a', 'rarely'], ['e', 'hardly ever'], ['d', 'often'], ['b', 'sometimes'], ['f', 'sometimes']]), CONDITIONS,
    );
    // Traits: d, b, f, a; firm: c and e.
    const touched = (v: State): string => v.touches.map(({ k, factor }) => `${CONDITIONS[k]!.id}${factor.toFixed(3)}`).sort().join(' ');
    const subsets = ['a0.300', 'b0.300', 'd0.300', 'f0.300'].reduce<string[][]>((all, one) => [...all, ...all.map((set) => [...set, one])], [[]]);
    expect(others.map(touched).sort()).toEqual(subsets.map((set) => [...set, 'c0.940', 'e0.985'].sort().join(' ')).sort());
    const all = others.find(({ touches }) => touches.length === 6);
    expect(all?.chance).toBeCloseTo(0.04 * (0.45 * 0.2 * 0.2 * 0.06) / 0.7 ** 4, 12);
  });

  it('is as likely in all its states together as its prior, and makes each condition of one plug as often as its word says', () => {
    const word = fc.constantFrom(...(Object.keys(STRENGTHS) as Strength[]));
    fc.assert(fc.property(fc.array(word, { maxLength: 6 }), fc.double({ min: 0.01, max: 0.5, noNaN: true }), (words, prior) => {
      const { base, others } = switchFor(at([1, 2], prior, words.map((strength, k) => [CONDITIONS[k]!.id, strength])), CONDITIONS);
      const sum = (of: (one: State) => number): number => others.reduce((all, one) => all + one.chance * of(one), 0);
      expect(base.chance + sum(() => 1)).toBeCloseTo(1, 12);
      words.forEach((strength, k) => {
        const absent = sum(({ touches }) => touches.find((touch) => touch.k === k)?.factor ?? 1);
        expect(absent).toBeCloseTo(prior * (1 - STRENGTHS[strength]), 12);
      });
    }), { numRuns: 50 });
  });
});

describe('a cause that was expected before anything was seen', () => {
  it('stands in the likeliest of its states; the others are told by what they touch otherwise', () => {
    // "often" is shown in 0.45 / 0.7 of the engines, more than half; "sometimes" in 0.2 / 0.7.
    const { base, others } = switchFor(at([1, 2], 0.9, [['a', 'usually'], ['b', 'often'], ['c', 'sometimes']]), CONDITIONS);
    const [b, c] = [0.45 / 0.7, 0.2 / 0.7];
    expect(told(base)).toEqual(state(true, 0.9 * b * (1 - c), { 0: 0.3, 1: 0.3 }));
    expect(others.map(told)).toEqual([
      state(false, 0.1, { 0: 1 / 0.3, 1: 1 / 0.3 }),
      state(true, 0.9 * (1 - b) * (1 - c), { 0: 1, 1: 1 / 0.3 }),
      state(true, 0.9 * (1 - b) * c, { 0: 1, 1: 1 / 0.3, 2: 0.3 }),
      state(true, 0.9 * b * c, { 0: 1, 1: 1, 2: 0.3 }),
    ]);
  });

  it('is one that is likelier than not', () => {
    expect(switchFor(at([1], 0.5, []), CONDITIONS).base.there).toBe(false);
    expect(switchFor(at([1], 0.51, []), CONDITIONS).base.there).toBe(true);
  });
});
