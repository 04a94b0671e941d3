import type { Condition } from '../knowledge/types.ts';
import { Kept, once } from '../once.ts';
import { plugFit, type PlugFit } from './appearance.ts';
import { cylinderWeights, ownCauses, type CylinderWeights, type PlugShape, type Shape } from './cylinder.ts';
import type { CylinderEvidence, PlugEvidence } from './evidence.ts';
import { foundOn, tableOf, type Found } from './found.ts';
import { freeOf, plugSum, type OnPairs, type OwnCause, type PlugSum } from './plug-sum.ts';
import { PlugUnder } from './plug-under.ts';
import type { Damping } from './symptoms.ts';

/** One plug under one signed term of the symptom sum. */
export type PlugTerm = { readonly sum: PlugSum; readonly under: PlugUnder; readonly own: readonly OwnCause[] };

/** What a solver worked out and may need again: plugs that look alike and stand alike are worked out once. */
export type Memory = {
  /** The same for cylinders on which the same was seen, found and felt. */
  readonly look: (evidence: CylinderEvidence) => string;
  readonly plug: (shape: Shape, plug: number, evidence: PlugEvidence, damping: Damping) => PlugTerm;
  readonly found: (shape: Shape, seen: CylinderEvidence['seen']) => Found;
  readonly weights: (shape: Shape, damping: Damping, own: Damping) => CylinderWeights;
};

type Seen = CylinderEvidence['seen'] | PlugEvidence['seen'];

/** Numbers lists of observations; alike ones bear the same number. */
function looking(): (seen: Seen) => number {
  const [numbers, looks] = [new WeakMap<Seen, number>(), new Map<string, number>()];
  const [said, sayings] = [new WeakMap<readonly number[], number>(), new Map<string, number>()];
  const sayingOf = ({ finding, weights }: Seen[number]): number => once(said, weights, () => once(sayings, `${finding} ${weights.join()}`, () => sayings.size));
  return (seen) => once(numbers, seen, () => once(looks, seen.map(sayingOf).join(), () => looks.size));
}

/** Numbers what was seen on plugs. A fit from which something was taken out again has another scale, so it is another look. */
function plugLooking(look: (seen: Seen) => number): (plug: PlugEvidence) => number {
  const numbers = new Map<string, number>();
  return ({ seen, from = seen }) => (from === seen ? look(seen) : -1 - once(numbers, `${look(seen)} ${look(from)}`, () => numbers.size));
}

type Own = { readonly causes: readonly OwnCause[]; readonly free: OnPairs };

export function memoryFor(conditions: readonly Condition[]): Memory {
  const look = looking();
  const plugLook = plugLooking(look);
  const [fits, terms] = [new Map<number, PlugFit>(), new Kept<PlugShape, Damping, PlugTerm, number>()];
  const whole = (seen: PlugEvidence['seen']): PlugFit => once(fits, look(seen), () => plugFit(seen, conditions));
  const fit = (plug: PlugEvidence): PlugFit => {
    const { seen, from = seen } = plug;
    return from === seen ? whole(seen) : once(fits, plugLook(plug), () => plugFit(seen, conditions, { seen: from, fit: whole(from) }));
  };
  const owns = new Kept<PlugShape, Damping, Own>();
  const ownOf = (plug: PlugShape, damping: Damping): Own => {
    const causes = ownCauses(plug.own, damping, conditions);
    return { causes, free: freeOf(plug.absent, causes) };
  };
  const termOf = (shape: Shape, plug: PlugShape, evidence: PlugEvidence, damping: Damping): PlugTerm => {
    const { causes, free } = owns.once(plug, damping, () => ownOf(plug, damping));
    const sum = plugSum(fit(evidence), damping.conditions, free);
    return { sum, under: new PlugUnder(sum, plug.touches, shape.roster), own: causes };
  };
  const [tables, found] = [new Kept<Shape, readonly number[], Float64Array>(), new Kept<Shape, number, Found>()];
  const foundAt = (shape: Shape, seen: CylinderEvidence['seen']): Found =>
    foundOn(seen.map((one) => tables.once(shape, one.weights, () => tableOf(one, shape.roster))), shape.roster);
  const weights = new Kept<Shape, Damping, CylinderWeights, Damping>();
  const looks = new WeakMap<CylinderEvidence, string>();
  return {
    look: (cylinder) => once(looks, cylinder, () => [look(cylinder.seen), ...cylinder.plugs.map(plugLook), ...cylinder.symptoms].join()),
    plug: (shape, p, evidence, damping) => {
      const plug = shape.plugs[p] as PlugShape;
      return terms.once(plug, damping, () => termOf(shape, plug, evidence, damping), plugLook(evidence));
    },
    found: (shape, seen) => found.once(shape, look(seen), () => foundAt(shape, seen)),
    weights: (shape, damping, own) => weights.once(shape, damping, () => cylinderWeights(shape, damping, own), own),
  };
}
