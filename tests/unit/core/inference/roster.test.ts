import { describe, expect, it } from 'vitest';
import { causeBeliefs, plugTouches, rosterOf, turns } from '../../../../core/inference/roster.ts';
import type { Switch } from '../../../../core/inference/states.ts';
import { switched } from './small-plug.ts';

/** A cause that is there before anything is seen: absent, or there in another way. */
const expected = ((): Switch => {
  const one = switched([[], []]);
  return { ...one, base: { there: true, chance: 0.8, touches: [] }, others: one.others.map((state, i) => ({ ...state, there: i === 1 })) };
})();

describe('a row of states', () => {
  it('has those of one cause together, each with its cause and the first state of the next one', () => {
    const roster = rosterOf([switched([[], []]), switched([[]]), switched([[], []])]);
    expect(roster.states).toHaveLength(5);
    expect([...roster.owners]).toEqual([0, 0, 1, 2, 2]);
    expect([...roster.ends]).toEqual([2, 2, 3, 5, 5]);
  });

  it('has every two states of different causes once, in rows by the first', () => {
    const { ends, offsets, pairs, states } = rosterOf([switched([[], []]), switched([[]]), switched([[], []])]);
    const places = states.flatMap((_, a) => states.flatMap((__, b) => (b >= ends[a]! ? [offsets[a]! + b] : [])));
    // 0 and 1 with 2, 3, 4; then 2 with 3, 4: eight pairs.
    expect(places).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(pairs).toBe(8);
  });

  it('tells a cause that is there or not from one that only shows otherwise', () => {
    const roster = rosterOf([switched([[]]), expected]);
    expect([0, 1, 2].map((v) => turns(roster, v))).toEqual([true, true, false]);
  });

  it('sums the belief in a cause over the states in which it is there', () => {
    // The first is there in its one state. The second is there unless absent; how else it shows does not matter.
    expect([...causeBeliefs(rosterOf([switched([[]]), expected]), Float64Array.of(0.3, 0.25, 0.6))]).toEqual([0.3, 0.75]);
    expect([...causeBeliefs(rosterOf([switched([[], []])]), Float64Array.of(0.25, 0.5))]).toEqual([0.75]);
  });
});

describe('what the states touch on one plug', () => {
  const [first, second] = [[{ k: 1, factor: 0.5 }, { k: 0, factor: 0.25 }], [{ k: 2, factor: 0.8 }]];
  const roster = rosterOf([switched([first, []]), switched([second], ['2']), switched([second])]);

  it('stands end to end, state by state, with what each lets through', () => {
    const { starts, ks, gains, products } = plugTouches(roster, { key: '1' });
    expect([...starts]).toEqual([0, 2, 2, 2, 3]);
    expect([...ks]).toEqual([1, 0, 2]);
    expect([...gains]).toEqual([1, 3, 0.25]);
    expect([...products]).toEqual([0.125, 1, 1, 0.8]);
  });

  it('is nothing of a cause that does not reach it', () => {
    const { starts, ks, products } = plugTouches(roster, { key: '2' });
    expect([...starts]).toEqual([0, 0, 0, 1, 1]);
    expect([...ks]).toEqual([2]);
    expect([...products]).toEqual([1, 1, 0.8, 1]);
  });
});
