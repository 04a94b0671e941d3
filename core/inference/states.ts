import { STRENGTHS } from '../knowledge/strengths.ts';
import { once } from '../once.ts';
import type { Condition } from '../knowledge/types.ts';
import { strengthOf, type Instance } from './network.ts';

/** Factor on the probability that condition k is absent from a plug. */
export type Touch = { readonly k: number; readonly factor: number };

/** One way in which a cause can stand. `chance`: its probability before anything is seen. */
export type State = { readonly there: boolean; readonly chance: number; readonly touches: readonly Touch[] };

/** A cause with all its states. `base`: the likeliest before anything is seen; the touches of the `others` are seen from it. */
export type Switch = { readonly instance: Instance; readonly base: State; readonly others: readonly State[] };

/**
 * An effect of a shared cause that is weaker than this is a trait of the case: the fault shows it in this engine or does not, and where it does, it shows it
 * on each plug with this strength. So twelve plugs without the trait are one piece of evidence against it, not twelve. The share of a single plug stays
 * what the knowledge says. Expert estimate.
 */
const TRAIT = STRENGTHS.usually;
/** Each trait doubles the states of a cause; the weakest effects beyond this many count plug by plug. */
const MOST_TRAITS = 4;

type Effect = { readonly k: number; readonly p: number };

const places = new WeakMap<readonly Condition[], ReadonlyMap<string, number>>();

const placesIn = (conditions: readonly Condition[]): ReadonlyMap<string, number> =>
  once(places, conditions, () => new Map(conditions.map((c, k) => [c.id, k])));

/** Conditions that are not considered cannot come about. */
const effectsOf = ({ cause }: Instance, conditions: readonly Condition[]): Effect[] =>
  cause.makes.flatMap((link) => {
    const k = placesIn(conditions).get(link.condition);
    return k === undefined ? [] : [{ k, p: strengthOf(link) }];
  });

/** What a cause touches on a plug that it acts on, every effect counted plug by plug. */
export const touchesOf = (instance: Instance, conditions: readonly Condition[]): Touch[] =>
  effectsOf(instance, conditions).map(({ k, p }) => ({ k, factor: 1 - p }));

/** Present with every set of its traits. */
function presentStates(instance: Instance, conditions: readonly Condition[]): State[] {
  const effects = effectsOf(instance, conditions);
  const weak = instance.cylinders.length > 1 ? effects.filter(({ p }) => p < TRAIT).sort((a, b) => b.p - a.p || a.k - b.k) : [];
  const traits = weak.slice(0, MOST_TRAITS);
  const firm = effects.filter((effect) => !traits.includes(effect)).map(({ k, p }) => ({ k, factor: 1 - p }));
  return traits.reduce<State[]>(
    (states, { k, p }) => [
      ...states.map((s) => ({ ...s, chance: s.chance * (1 - p / TRAIT) })),
      ...states.map((s) => ({ ...s, chance: s.chance * (p / TRAIT), touches: [...s.touches, { k, factor: 1 - TRAIT }] })),
    ],
    [{ there: true, chance: instance.prior, touches: firm }],
  );
}

function fromBase({ there, chance, touches }: State, base: State): State {
  const factors = new Map(base.touches.map(({ k, factor }) => [k, 1 / factor]));
  for (const { k, factor } of touches) factors.set(k, (factors.get(k) ?? 1) * factor);
  return { there, chance, touches: [...factors].map(([k, factor]) => ({ k, factor })) };
}

/** Every state of a cause at its place. */
export function switchFor(instance: Instance, conditions: readonly Condition[]): Switch {
  const absent: State = { there: false, chance: 1 - instance.prior, touches: [] };
  const present = presentStates(instance, conditions);
  if (instance.prior <= 0.5) return { instance, base: absent, others: present };
  const base = present.reduce((best, s) => (s.chance > best.chance ? s : best));
  return { instance, base, others: [absent, ...present.filter((s) => s !== base)].map((s) => fromBase(s, base)) };
}
