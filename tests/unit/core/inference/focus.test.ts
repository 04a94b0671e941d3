import { beforeAll, describe, expect, it } from 'vitest';
import { focusOn } from '../../../../core/inference/focus.ts';
import type { CylinderEvidence, Evidence } from '../../../../core/inference/evidence.ts';
import { networkFor, type Instance } from '../../../../core/inference/network.ts';
import { solverFor, type Solution, type Solver } from '../../../../core/inference/posterior.ts';
import type { Cause } from '../../../../core/knowledge/types.ts';
import { counted, many, manyCauses, nameOf, setsOf, solved, sum, valveAfter, weightOf } from './many-causes.ts';

type Chances = {
  readonly sets: Cause[][]; readonly chanceOf: (set: readonly Cause[], valve?: boolean) => number; readonly believed: ReadonlyMap<Cause, number>;
};
/** Probability of a set, also with the valve of cylinder 1, and of every cause, by the formula. */
function byFormula(causes: readonly Cause[]): Chances {
  const sets = setsOf(causes);
  const total = sum(sets.map((set) => weightOf(set, 'felt')));
  const chanceOf = (set: readonly Cause[], valve = false): number => weightOf(set, 'felt', valve) / total;
  const believed = new Map(causes.map((one) => [one, sum(sets.filter((set) => set.includes(one)).map((set) => chanceOf(set)))]));
  return { sets, chanceOf, believed };
}

let full: Solution;
let evidence: Evidence;
let solve: Solver;
let focused: Solution;
beforeAll(() => {
  full = solved(many, 'felt');
  ({ evidence } = full);
  solve = focusOn(full);
  focused = solve(evidence);
});
const { sets, chanceOf, believed } = byFormula(many);
const valveBelieved = sum(sets.map((set) => chanceOf(set, true)));

describe('the worlds in focus', () => {
  it('are no cause, every cause alone, pairs likelier than one in a million, and pairs of which each is believed two in a thousand', () => {
    const keeps = sets.filter((set) => set.length < 2 || chanceOf(set) >= 1e-6 || set.every((one) => believed.get(one)! >= 0.002));
    expect(counted(focused).sort()).toEqual(keeps.map(nameOf).sort());
    expect(keeps.length).toBeLessThan(counted(full).length);
    expect(keeps.some((set) => set.length === 2 && !set.every((one) => believed.get(one)! >= 0.002))).toBe(true);
  });

  it('hold a pair of believed causes, however unlikely both at once', () => {
    const unlikely = manyCauses(50, true);
    const formula = byFormula(unlikely);
    const solution = solved(unlikely, 'felt');
    const all = new Set(counted(solution));
    const pairs = formula.sets.filter((set) => set.length === 2 && all.has(nameOf(set)) && formula.chanceOf(set) < 0.9e-6);
    const strong = pairs.filter((set) => set.every((one) => formula.believed.get(one)! > 0.0021));
    const weak = pairs.filter((set) => set.some((one) => formula.believed.get(one)! < 0.0019));
    const keeps = new Set(counted(focusOn(solution)(solution.evidence)));
    expect(strong.length).toBeGreaterThan(0);
    expect(strong.filter((set) => !keeps.has(nameOf(set)))).toEqual([]);
    expect(weak.filter((set) => keeps.has(nameOf(set)))).toEqual([]);
    expect(weak.length).toBeGreaterThan(0);
  });

  it('hold at one cylinder its own causes beside a shared one by the same rule', () => {
    const { worlds } = focused.counted.places[0]!;
    const beside = new Set(Array.from(worlds.first).filter((_, w) => worlds.second[w] === valveAfter(many)));
    const keeps = many.filter((one) => chanceOf([one], true) >= 1e-6 || (believed.get(one)! >= 0.002 && valveBelieved >= 0.002));
    expect(many.filter((_, v) => beside.has(v)).map(({ id }) => id)).toEqual(keeps.map(({ id }) => id));
    expect(keeps.length).toBeGreaterThan(0);
    expect(keeps.length).toBeLessThan(many.length);
    expect(Array.from(worlds.first).some((a, w) => a === valveAfter(many) && worlds.second[w] === -1)).toBe(true);
  });

  it('name the shared sets of each cylinder by their place among those that were kept', () => {
    const { sets: { first, second }, places } = focused.counted;
    const { localOf } = focused.ground.places[3]!;
    const { worlds, setOf } = places[3]!;
    const local = (v: number): number => (v < 0 ? -1 : localOf[v]!);
    Array.from(first).forEach((a, s) => {
      const seen = [local(a), local(second[s]!)].filter((v) => v >= 0).sort((x, y) => x - y);
      const named = [worlds.shared.first[setOf[s]!]!, worlds.shared.second[setOf[s]!]!].filter((v) => v >= 0);
      expect(named).toEqual(seen);
    });
    // Every shared set stands among the worlds, without own causes and under its own number.
    const valve = focused.ground.places[3]!.frame.shape.sharedStates;
    worlds.set.forEach((set, w) => {
      const there = [worlds.first[w]!, worlds.second[w]!].filter((v) => v >= 0 && v < valve);
      expect(there).toEqual([worlds.shared.first[set]!, worlds.shared.second[set]!].filter((v) => v >= 0));
    });
    expect(new Set(worlds.set).size).toBe(worlds.shared.first.length);
  });

  it('are one list for cylinders that stand and look alike', () => {
    const { places } = focused.counted;
    expect(places[1]!.worlds).toBe(places[0]!.worlds);
    expect(places[3]!.worlds).not.toBe(places[0]!.worlds);
  });
});

describe('a solver among the worlds in focus', () => {
  const bits = (p: number): number => Math.log2(p / (1 - p));
  const bare = (one: CylinderEvidence): CylinderEvidence => ({ ...one, plugs: one.plugs.map((plug) => ({ ...plug, seen: [] })) });
  const changed = (): Evidence => ({ ...evidence, cylinders: evidence.cylinders.map((one, c) => (c === 1 ? bare(one) : one)) });

  it.each<[string, () => Evidence]>([
    ['unchanged', () => evidence], ['that changed at one cylinder', changed], ['without the symptom', () => ({ ...evidence, present: [] })],
  ])(
    'agrees with the full one within two hundredths of a bit on evidence %s', (_what, asking) => {
      const asked = asking();
      const whole: Solution = solverFor(networkFor(structuredClone(full.network.knowledge), evidence))(asked);
      const here = solve(asked);
      const off = (one: Instance): number => Math.abs(bits(here.belief(one)) - bits(whole.belief(one)));
      const own = full.network.local.get(2)!;
      for (const one of [...full.network.shared, ...own].filter((instance) => whole.belief(instance) >= 0.01)) expect(off(one)).toBeLessThan(0.02);
    });

  it('keeps what it works out apart from that of the full one', () => {
    expect(focused.ground.memory).not.toBe(full.ground.memory);
  });
});
