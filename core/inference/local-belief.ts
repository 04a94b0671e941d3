import { once } from '../once.ts';
import type { Frame } from './cylinder.ts';
import { ownBeliefs } from './plug-belief.ts';
import { causeBeliefs } from './roster.ts';
import { worldProbabilities, type Solved, type SolvedCylinder } from './solved-cylinder.ts';

/** Beliefs in the causes that are switched, in the order of the roster; only those of the coupled ones are whole. */
function switchedBeliefs(solved: Solved): Float64Array {
  const { shape: { roster, sharedStates, coupled }, worlds: { first, second } } = solved;
  const beliefs = new Float64Array(roster.states.length);
  if (coupled.length > 0)
    worldProbabilities(solved).forEach((p, w) => {
      for (const v of [first[w] as number, second[w] as number]) if (v >= sharedStates) beliefs[v] = (beliefs[v] as number) + p;
    });
  return causeBeliefs(roster, beliefs);
}

/** Beliefs in the local causes of a cylinder, end to end: the coupled ones, then those of each plug. */
function localBeliefs(solved: Solved): readonly number[] {
  return [...switchedBeliefs(solved).subarray(solved.shape.shared.length), ...ownBeliefs(solved).flatMap((list) => [...list])];
}

const known = new WeakMap<Solved, readonly number[]>();
const places = new WeakMap<Frame, ReadonlyMap<string, number>>();

/** Belief in a local cause of a cylinder by its id; 0 for one that is not there. */
export function localBelief({ frame, solved }: SolvedCylinder, id: string): number {
  const place = once(places, frame, () => new Map([...frame.coupled, ...frame.own.flat()].map((instance, at) => [instance.id, at]))).get(id);
  return place === undefined ? 0 : (once(known, solved, () => localBeliefs(solved))[place] as number);
}
