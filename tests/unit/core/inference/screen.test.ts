import { describe, expect, it } from 'vitest';
import { chance, counted, few, many, manyCauses, nameOf, odds, setsOf, solved, sum, valveAfter, weightOf, type Felt } from './many-causes.ts';
import { product } from './small-plug.ts';

/** The sets that were not counted. `limit`: the power of ten of the total weight under which they lie. */
function leftOut(felt: Felt) {
  const all = setsOf(many).map((set) => ({ name: nameOf(set), pair: set.length === 2, weight: weightOf(set, felt) }));
  const total = sum(all.map(({ weight }) => weight));
  const kept = new Set(counted(solved(many, felt)));
  const out = all.filter(({ name }) => !kept.has(name));
  const limit = total * 10 ** Math.ceil(Math.log10(Math.max(...out.map(({ weight }) => weight)) / total));
  return { all, out, total, kept, limit };
}

describe('the sets that are weighed in full', () => {
  it('are all of them where there are fewer than a thousand pairs', () => {
    expect(counted(solved(few, 'not asked')).sort()).toEqual(setsOf(few).map(nameOf).sort());
  });

  it.each<Felt>(['not asked', 'absent'])('else leave out the lightest, together at most a hundred-thousandth (misfire %s)', (felt) => {
    const { all, out, total, limit, kept } = leftOut(felt);
    expect(kept.size + out.length).toBe(all.length);
    expect(out.length).toBeGreaterThan(100);
    expect(out.every(({ pair }) => pair)).toBe(true);
    expect(sum(out.map(({ weight }) => weight))).toBeLessThanOrEqual(1e-5 * total);
    // Below the limit everything is out, from it on everything in; ten times the limit would leave out too much.
    expect(all.filter(({ pair, weight }) => pair && weight < limit).map(({ name }) => name).sort()).toEqual(out.map(({ name }) => name).sort());
    expect(sum(all.filter(({ pair, weight }) => pair && weight < 10 * limit).map(({ weight }) => weight))).toBeGreaterThan(1e-5 * total);
  });

  it('are chosen as if nothing had been felt, for a symptom can only make a set lighter', () => {
    expect(counted(solved(many, 'felt'))).toEqual(counted(solved(many, 'not asked')));
  });
});

describe('beliefs among the sets that are weighed', () => {
  it.each<[Felt, number]>([['not asked', 20], ['felt', 20], ['absent', 20], ['not asked', 50], ['felt', 50], ['absent', 50]])(
    'are those of the formula over all sets of shared causes and own ones (misfire %s, %i causes)', (felt, n) => {
      const causes = manyCauses(n);
      const solution = solved(causes, felt);
      const sets = setsOf(causes);
      const total = sum(sets.map((set) => weightOf(set, felt)));
      const digits = n < 50 ? 9 : 4;
      for (const instance of solution.network.shared) {
        const holding = sets.filter((set) => set.includes(instance.cause));
        expect(solution.belief(instance)).toBeCloseTo(sum(holding.map((set) => weightOf(set, felt))) / total, digits);
      }
      const valve = solution.network.local.get(1)!.find(({ id }) => id === 'valve @ 1')!;
      expect(solution.belief(valve)).toBeCloseTo(sum(sets.map((set) => weightOf(set, felt, true))) / total, digits);
    });

  it('have each set as likely as it weighs', () => {
    const solution = solved(few, 'felt');
    const total = sum(setsOf(few).map((set) => weightOf(set, 'felt')));
    const byName = new Map(counted(solution).map((name, s) => [name, solution.perSet()[s]]));
    for (const set of setsOf(few)) expect(byName.get(nameOf(set))).toBeCloseTo(weightOf(set, 'felt') / total, 9);
  });

  it('tell how much the sets of more than two causes were likely before anything was seen', () => {
    const upToTwo = product(few.map((one) => 1 - chance(one))) * sum(setsOf(few).map((set) => product(set.map(odds))));
    expect(solved(few, 'not asked').neglectedMass).toBeCloseTo(1 - upToTwo, 12);
  });
});

describe('the worlds of one cylinder that are weighed in full', () => {
  it('are all of them where no set is left out: each set with as many own causes beside it as there is room for', () => {
    const { counted: { places } } = solved(few, 'not asked');
    // No cause with none, either or both of two, 20 causes with none or either, 190 pairs; at the last cylinder one cause less.
    expect(places.map(({ worlds }) => worlds.set.length)).toEqual([...[1, 2, 3].map(() => 4 + 3 * 20 + 190), 4 + 3 * 19 + 171]);
  });

  it('leave out a valve beside a cause where both together weigh less than a tenth of the lightest set', () => {
    const { counted: { places: [place] } } = solved(many, 'not asked');
    const { limit } = leftOut('not asked');
    const { first, second } = place!.worlds;
    const beside = new Set(Array.from(first).filter((a, w) => a < many.length && second[w] === valveAfter(many)));
    const weights = many.map((one) => weightOf([one], 'not asked', true));
    expect(weights.map((_, v) => beside.has(v))).toEqual(weights.map((w) => w >= 0.1 * limit));
    expect(beside.size).toBeGreaterThan(0);
    expect(beside.size).toBeLessThan(many.length);
  });
});
