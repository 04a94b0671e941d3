import type { State, Switch, Touch } from './states.ts';
import type { PlugEvidence } from './evidence.ts';

/**
 * The touches of every state on one plug, laid flat: those of state v stand from starts[v] up to starts[v + 1].
 * `gains`: 1 / factor - 1. `products`: product of the factors of a state.
 */
export type PlugTouches = { readonly starts: Uint16Array; readonly ks: Uint16Array; readonly gains: Float64Array; readonly products: Float64Array };

/** Everything that can be switched at one place, as a row of states other than the base states; those of one cause stand together. */
export type Roster = {
  readonly switches: readonly Switch[];
  readonly states: readonly State[];
  /** By state: its cause, and the first state of the next cause. */
  readonly owners: Uint16Array;
  readonly ends: Uint16Array;
  /** Every two states of different causes, in rows by the first: states a and b stand at offsets[a] + b. */
  readonly offsets: Int32Array;
  readonly pairs: number;
};

export function rosterOf(switches: readonly Switch[]): Roster {
  const states = switches.flatMap(({ others }) => others);
  const owners = Uint16Array.from(switches.flatMap(({ others }, o) => others.map(() => o)));
  let end = 0;
  const endOf = switches.map(({ others }) => (end += others.length));
  const ends = Uint16Array.from(owners, (o) => endOf[o] as number);
  let pairs = 0;
  const offsets = Int32Array.from(ends, (from) => {
    const offset = pairs - from;
    pairs += states.length - from;
    return offset;
  });
  return { switches, states, owners, ends, offsets, pairs };
}

const NOTHING: readonly Touch[] = [];

/** What every state of the roster touches on one plug. */
export function plugTouches({ switches }: Roster, { key }: Pick<PlugEvidence, 'key'>): PlugTouches {
  const lists = switches.flatMap(({ instance, others }) => {
    const reaches = instance.plugs.includes(key);
    return others.map(({ touches }) => (reaches ? touches : NOTHING));
  });
  const starts = new Uint16Array(lists.length + 1);
  lists.forEach((list, v) => { starts[v + 1] = (starts[v] as number) + list.length; });
  const flat = lists.flat();
  return {
    starts,
    ks: Uint16Array.from(flat, ({ k }) => k),
    gains: Float64Array.from(flat, ({ factor }) => 1 / factor - 1),
    products: Float64Array.from(lists, (list) => list.reduce((p, { factor }) => p * factor, 1)),
  };
}

/** Whether the changed state differs in the cause being there, not merely in how it shows. */
export const turns = ({ states, owners, switches }: Roster, v: number): boolean =>
  (states[v] as State).there !== (switches[owners[v] as number] as Switch).base.there;

/** Belief in each cause of a roster, from the beliefs in its states. */
export function causeBeliefs(roster: Roster, beliefs: Float64Array): Float64Array {
  const turned = new Float64Array(roster.switches.length);
  for (let v = 0; v < beliefs.length; v += 1) {
    const o = roster.owners[v] as number;
    if (turns(roster, v)) turned[o] = (turned[o] as number) + (beliefs[v] as number);
  }
  return turned.map((belief, o) => (roster.switches[o]?.base.there === true ? 1 - belief : belief));
}
