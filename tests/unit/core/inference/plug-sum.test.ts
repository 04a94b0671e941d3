import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeOf, ownShare, plugSum } from '../../../../core/inference/plug-sum.ts';
import { anyPlug, at, product, setsOfTwo, ways, type SmallPlug } from './small-plug.ts';

const N = 3;
const SETS = setsOfTwo(N);

/** P(all but E absent), summed over every way in which the own causes may be there. */
const allBut = (plug: SmallPlug, free: readonly number[]): number =>
  ways(plug).reduce((sum, { weight, absent }) => sum + weight * product(absent.filter((_, k) => !free.includes(k))), 0);

/** How well exactly these conditions explain what was seen, and that none of them was felt. */
const explains = ({ fit, damping }: SmallPlug, set: readonly number[]): number => at(fit, set) * product(set.map((k) => damping[k] as number));

/** Exactly these conditions: each of them there, all others not. */
const exactly = (plug: SmallPlug, set: readonly number[]): number =>
  explains(plug, set) * ways(plug).reduce((sum, { weight, absent }) => sum + weight * product(absent.map((a, k) => (set.includes(k) ? 1 - a : a))), 0);

/** Its share in the sum over all exact sets: by inclusion and exclusion over the subsets left free. */
const term = (plug: SmallPlug, free: readonly number[]): number =>
  allBut(plug, free) * SETS.filter((set) => free.every((k) => set.includes(k)))
    .reduce((sum, set) => sum + (-1) ** (set.length - free.length) * explains(plug, set), 0);

describe('one plug summed in closed form', () => {
  it('has every set of conditions left free as likely as the sum over all its own causes says', () => {
    fc.assert(fc.property(anyPlug(N), (plug) => {
      const free = freeOf(plug.absent, plug.own);
      for (const set of SETS)
        for (const one of [set, [...set].reverse()]) expect(at(free, one)).toBeCloseTo(allBut(plug, set), 12);
    }), { numRuns: 60 });
  });

  it('explains what was seen as well as the sum over all exact sets of at most two conditions says', () => {
    fc.assert(fc.property(anyPlug(N), (plug) => {
      const sum = plugSum(plug.fit, plug.damping, freeOf(plug.absent, plug.own));
      expect(sum.total).toBeCloseTo(SETS.reduce((all, set) => all + exactly(plug, set), 0), 12);
      for (const set of SETS) expect(at(sum.terms, set)).toBeCloseTo(term(plug, set), 12);
      for (let k = 0; k < N; k += 1)
        expect(sum.holding[k]).toBeCloseTo(SETS.filter((set) => set.includes(k)).reduce((all, set) => all + term(plug, set), 0), 12);
    }), { numRuns: 60 });
  });

  it('gives an own cause the share of the worlds in which it is there', () => {
    fc.assert(fc.property(anyPlug(N), fc.subarray([0, 1, 2]), ({ own }, free) => {
      for (const cause of own) {
        const there = cause.prior * cause.quiet * product(cause.passes.filter(({ k }) => !free.includes(k)).map(({ factor }) => factor));
        expect(ownShare(cause, free)).toBeCloseTo(there / (1 - cause.prior + there), 12);
      }
    }), { numRuns: 60 });
  });
});
