import { twinPositions } from '../../../core/domain/plugs.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import type { Position } from '../../../shared/vocabulary/engine.ts';

export type Pair = readonly [Position, Position];
type Sets = NonNullable<NonNullable<Engine['ignition']>['sets']>;

/** What the two plugs of a cylinder are called, pair by pair. */
export const PAIRS: readonly Pair[] = [['upper', 'lower'], ['intake', 'exhaust'], ['front', 'rear']];

export const pairOf = (engine: Engine): Pair => {
  const [first] = twinPositions(engine);
  return PAIRS.find((pair) => pair.includes(first ?? 'upper')) ?? ['upper', 'lower'];
};

/** One set a position: all first plugs on one, all second plugs on the other. A place to start from. */
export const straightSets = (cylinders: number, pair: Pair, nameOf: (n: number) => string): Sets =>
  pair.map((position, i) => ({ name: nameOf(i + 1), plugs: Array.from({ length: cylinders }, (_, n) => ({ cylinder: n + 1, position })) }));

/** The same wiring with the plugs called otherwise. */
export function renamedSets(sets: Sets, from: Pair, to: Pair): Sets {
  const rename = (position: Position): Position => (position === from[0] ? to[0] : position === from[1] ? to[1] : position);
  return sets.map((set) => ({ ...set, plugs: set.plugs.map((plug) => ({ ...plug, position: rename(plug.position) })) }));
}
