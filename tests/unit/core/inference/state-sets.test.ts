import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rosterOf, type Roster } from '../../../../core/inference/roster.ts';
import { massUpToTwo, projected, shareAlike, worldsFor, type StateSets, type Worlds } from '../../../../core/inference/state-sets.ts';
import { switched } from './small-plug.ts';

const setsOf = (...list: readonly (readonly [number, number])[]): StateSets =>
  ({ first: Int16Array.from(list, ([a]) => a), second: Int16Array.from(list, ([, b]) => b) });
const listOf = ({ first, second }: StateSets): [number, number][] => Array.from(first, (a, s) => [a, second[s]!]);

describe('the sets of the engine as one cylinder sees them', () => {
  it('lose the states that do not reach it; those that come to the same are one', () => {
    // States 0 and 2 of the engine are 0 and 1 at the cylinder; 1 and 3 do not reach it.
    const { setOf, local } = projected(setsOf([-1, -1], [0, -1], [1, -1], [0, 1], [0, 2], [1, 2], [1, 3], [2, 3], [2, -1]), Int16Array.of(0, -1, 1, -1));
    expect(listOf(local)).toEqual([[-1, -1], [0, -1], [0, 1], [1, -1]]);
    expect([...setOf]).toEqual([0, 1, 0, 1, 2, 3, 0, 3, 3]);
  });

  it('are the very same where all states reach it', () => {
    const all = setsOf([-1, -1], [0, -1], [1, -1], [2, -1], [0, 1], [0, 2], [1, 2]);
    const { setOf, local } = projected(all, Int16Array.of(0, 1, 2));
    expect(listOf(local)).toEqual(listOf(all));
    expect([...setOf]).toEqual([0, 1, 2, 3, 4, 5, 6]);
  });
});

/** Two shared causes, the first with two states; then two coupled causes, the second with two states: 0 1 | 2 | 3 | 4 5. */
const roster: Roster = rosterOf([[[], []], [[]], [[]], [[], []]].map((others) => switched(others)));
const shape = { roster, sharedStates: 3 };

describe('the worlds of one cylinder', () => {
  it('are every shared set with every coupled state that the bound of two leaves room for', () => {
    const shared = setsOf([-1, -1], [0, -1], [0, 2]);
    const worlds = worldsFor(shape, shared);
    expect(worlds.shared).toBe(shared);
    expect(listOf(worlds).map(([a, b], w) => [worlds.set[w], a, b])).toEqual([
      [0, -1, -1], [0, 3, -1], [0, 3, 4], [0, 3, 5], [0, 4, -1], [0, 5, -1],
      [1, 0, -1], [1, 0, 3], [1, 0, 4], [1, 0, 5],
      [2, 0, 2],
    ]);
  });

  it('leave out those with coupled states that are not to be counted, asked by shared set and states', () => {
    const asked: string[] = [];
    const worlds = worldsFor(shape, setsOf([-1, -1], [0, -1]), (set, a, b) => {
      asked.push(`${set}: ${a} ${b}`);
      return b === 4;
    });
    expect(asked).toEqual(['0: -1 3', '0: 3 4', '0: 3 5', '0: -1 4', '0: -1 5', '1: 0 3', '1: 0 4', '1: 0 5']);
    expect(listOf(worlds)).toEqual([[-1, -1], [3, 4], [4, -1], [0, -1], [0, 4]]);
  });
});

describe('cylinders that count the same worlds', () => {
  const worldsOf = (set: readonly number[], ...list: readonly (readonly [number, number])[]): Worlds =>
    ({ ...setsOf(...list), set: Uint32Array.from(set), shared: setsOf([-1, -1]) });
  it('get the very same list, and keep what else is theirs', () => {
    const same = (): Worlds => worldsOf([0, 0], [-1, -1], [3, -1]);
    const [one, other] = shareAlike([{ at: 1, worlds: same() }, { at: 2, worlds: same() }]);
    expect(other?.worlds).toBe(one?.worlds);
    expect([one?.at, other?.at]).toEqual([1, 2]);
  });

  it.each<[string, Worlds]>([
    ['another shared set', worldsOf([0, 1], [-1, -1], [3, 4])],
    ['another first state', worldsOf([0, 0], [-1, -1], [2, 4])],
    ['another second state', worldsOf([0, 0], [-1, -1], [3, 5])],
    ['fewer worlds', worldsOf([0], [-1, -1])],
    ['more worlds', worldsOf([0, 0, 0], [-1, -1], [3, 4], [3, 5])],
  ])('are told apart by %s', (_what, worlds) => {
    const base = worldsOf([0, 0], [-1, -1], [3, 4]);
    expect(shareAlike([{ worlds: base }, { worlds }]).map((place) => place.worlds)).toEqual([base, worlds]);
  });
});

describe('the mass of at most two changes', () => {
  it('is that of the Poisson binomial distribution, every set of changes weighed', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0.05, max: 0.95, noNaN: true }), { maxLength: 8 }), (chances) => {
      let sum = 0;
      for (let set = 0; set < 2 ** chances.length; set += 1) {
        const happens = chances.map((_, i) => ((set >> i) & 1) === 1);
        if (happens.filter(Boolean).length <= 2) sum += chances.reduce((p, chance, i) => p * (happens[i] === true ? chance : 1 - chance), 1);
      }
      expect(massUpToTwo(chances)).toBeCloseTo(sum, 12);
    }));
  });
});
