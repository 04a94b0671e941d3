import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeOf, plugSum } from '../../../../core/inference/plug-sum.ts';
import { PlugUnder } from '../../../../core/inference/plug-under.ts';
import type { PlugTouches, Roster } from '../../../../core/inference/roster.ts';
import { anyPlug, anyRoster, product, type SmallPlug } from './small-plug.ts';

const N = 4;
type Drawn = { readonly roster: Roster; readonly touches: PlugTouches };

const underOf = ({ fit, damping, absent, own }: SmallPlug, { roster, touches }: Drawn): PlugUnder =>
  new PlugUnder(plugSum(fit, damping, freeOf(absent, own)), touches, roster);

/** The plug summed afresh, each condition absent as often as the states let it be. */
function afresh({ fit, damping, absent, own }: SmallPlug, { states }: Roster, set: readonly number[]): number {
  const factors = absent.map((a, k) => a * product(set.flatMap((v) => states[v]!.touches.filter((touch) => touch.k === k).map(({ factor }) => factor))));
  return Math.max(0, plugSum(fit, damping, freeOf(factors, own)).total);
}

/** Every two states of different causes, the earlier first. */
const twos = ({ states, ends }: Roster): [number, number][] =>
  states.flatMap((_, a) => states.flatMap((__, b): [number, number][] => (b >= ends[a]! ? [[a, b]] : [])));

describe('one plug under the states of its causes', () => {
  it('explains what was seen as well as the same plug summed afresh with what the states let through', () => {
    fc.assert(fc.property(anyPlug(N), anyRoster(N), (plug, drawn) => {
      const under = underOf(plug, drawn);
      expect(under.with(-1, -1)).toBeCloseTo(afresh(plug, drawn.roster, []), 10);
      drawn.roster.states.forEach((_, v) => { expect(under.with(v, -1)).toBeCloseTo(afresh(plug, drawn.roster, [v]), 10); });
      for (const [a, b] of twos(drawn.roster)) expect(under.with(a, b)).toBeCloseTo(afresh(plug, drawn.roster, [a, b]), 10);
    }), { numRuns: 100 });
  });

  it('gives the same in whatever order it is asked, one by one or all pairs at once', () => {
    fc.assert(fc.property(anyPlug(N), anyRoster(N), fc.infiniteStream(fc.nat(1000)), (plug, drawn, order) => {
      const pairs = twos(drawn.roster).map((two) => ({ two, at: order.next().value as number })).sort((x, y) => x.at - y.at).map(({ two }) => two);
      const [one, all] = [underOf(plug, drawn), underOf(plug, drawn)];
      const table = all.pairs;
      expect(table).toHaveLength(drawn.roster.pairs);
      expect(all.pairs).toBe(table);
      for (const [a, b] of pairs) {
        expect(one.with(a, b)).toBeCloseTo(afresh(plug, drawn.roster, [a, b]), 10);
        expect(table[drawn.roster.offsets[a]! + b]).toBeCloseTo(afresh(plug, drawn.roster, [a, b]), 10);
        expect(all.with(a, b)).toBe(table[drawn.roster.offsets[a]! + b]);
      }
    }), { numRuns: 60 });
  });
});
