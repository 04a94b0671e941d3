import type { Condition } from '../knowledge/types.ts';
import { once } from '../once.ts';
import { plugFit, type PlugFit } from './appearance.ts';
import { cylinderWeights, ownCauses, type CylinderWeights, type Frame } from './cylinder.ts';
import type { CylinderEvidence, PlugEvidence } from './evidence.ts';
import { foundOn, tableOf, type Found } from './found.ts';
import { freeOf, plugSum, type OnPairs, type PlugSum } from './plug-sum.ts';
import { PlugUnder } from './plug-under.ts';
import type { Damping } from './symptoms.ts';

/** One plug under one signed term of the symptom sum. */
export type PlugTerm = { readonly sum: PlugSum; readonly under: PlugUnder };

/** What a solver worked out and may need again: plugs that look alike and stand alike are worked out once. */
export type Memory = {
  readonly plug: (frame: Frame['plugs'][number], evidence: PlugEvidence, damping: Damping) => PlugTerm;
  readonly found: (frame: Frame, seen: CylinderEvidence['seen']) => Found;
  readonly weights: (frame: Frame, damping: Damping, own: Damping) => CylinderWeights;
};

export function memoryFor(conditions: readonly Condition[]): Memory {
  const numbers = new Map<readonly number[], number>();
  const looks = new WeakMap<PlugEvidence['seen'], string>();
  const [fits, frees, terms] = [new Map<string, PlugFit>(), new Map<string, OnPairs>(), new Map<string, PlugTerm>()];
  const found = new WeakMap<Frame, WeakMap<CylinderEvidence['seen'], Found>>();
  const tables = new WeakMap<Frame, WeakMap<CylinderEvidence['seen'][number], Float64Array>>();
  const table = (frame: Frame, one: CylinderEvidence['seen'][number]): Float64Array =>
    once(once(tables, frame, () => new WeakMap<CylinderEvidence['seen'][number], Float64Array>()), one, () => tableOf(one, frame.roster));
  const weights = new WeakMap<Frame, Map<string, CylinderWeights>>();
  const look = (seen: PlugEvidence['seen']): string =>
    once(looks, seen, () => seen.map((o) => once(numbers, o.weights, () => numbers.size)).join());
  const fit = ({ seen, from }: PlugEvidence): PlugFit =>
    once(fits, look(seen), () => plugFit(seen, conditions, from && { seen: from, fit: once(fits, look(from), () => plugFit(from, conditions)) }));
  return {
    plug: (frame, evidence, damping) =>
      once(terms, `${look(evidence.seen)} ${damping.key} ${frame.kind}`, () => {
        const free = once(frees, `${damping.key} ${frame.kind}`, () => freeOf(frame.absent, ownCauses(frame.own, damping, conditions)));
        const sum = plugSum(fit(evidence), damping.conditions, free);
        return { sum, under: new PlugUnder(sum, frame.touches) };
      }),
    found: (frame, seen) => once(once(found, frame, () => new WeakMap<CylinderEvidence['seen'], Found>()), seen, () =>
        foundOn(seen.map((one) => table(frame, one)), frame.roster)),
    weights: (frame, damping, own) =>
      once(once(weights, frame, () => new Map<string, CylinderWeights>()), `${damping.key} ${own.key}`, () => cylinderWeights(frame, damping, own)),
  };
}
