import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Messages } from '../../../../core/inference/messages.ts';
import type { Roster } from '../../../../core/inference/roster.ts';
import { anyRoster, at, product, setsOfTwo } from './small-plug.ts';

const N = 4;
type World = { readonly weight: number; readonly a: number; readonly b: number };

/** Worlds of none, one or two states in any order, the same ones again among them. */
const anyWorlds = ({ states, ends }: Roster): fc.Arbitrary<World[]> => {
  const sets = [[-1, -1], ...states.flatMap((_, a) => [[a, -1], ...states.flatMap((__, b) => (b >= ends[a]! ? [[a, b]] : []))])];
  return fc.array(fc.record({ set: fc.constantFrom(...sets), weight: fc.double({ min: 0.1, max: 1, noNaN: true }), sign: fc.constantFrom(-1, 1) }),
    { minLength: 3, maxLength: 20 })
    .map((list) => list.map(({ set: [a, b], weight, sign }) => ({ weight: sign * weight, a: a!, b: b! })));
};
const drawn = anyRoster(N).chain(({ roster, touches }) => fc.record({ roster: fc.constant(roster), touches: fc.constant(touches), worlds: anyWorlds(roster) }));

/** Σ w · Π factor over all touched conditions outside E, from the definition. */
const worth = ({ states }: Roster, worlds: readonly World[], free: readonly number[]): number =>
  worlds.reduce((sum, { weight, a, b }) => {
    const touches = [a, b].flatMap((v) => states[v]?.touches ?? []).filter(({ k }) => !free.includes(k));
    return sum + weight * product(touches.map(({ factor }) => factor));
  }, 0);

describe('what the worlds say to one plug', () => {
  it('is for every set of freed conditions the sum of the worlds, each with what it lets through of the others', () => {
    fc.assert(fc.property(drawn, ({ roster, touches, worlds }) => {
      const messages = new Messages(N, touches);
      for (const { weight, a, b } of worlds) messages.add(weight, a, b);
      const all = messages.worth();
      for (const set of setsOfTwo(N)) {
        expect(at(all, set)).toBeCloseTo(worth(roster, worlds, set), 10);
        expect(at(all, [...set].reverse())).toBe(at(all, set));
      }
    }), { numRuns: 200 });
  });
});
