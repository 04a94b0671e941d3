import type { Condition } from '../knowledge/types.ts';
import type { CylinderEvidence } from './evidence.ts';
import { marksAny } from './found.ts';
import type { Instance } from './network.ts';
import type { OwnCause } from './plug-sum.ts';
import { plugTouches, rosterOf, turns, type PlugTouches, type Roster } from './roster.ts';
import { switchFor, touchesOf, type State, type Switch } from './states.ts';
import type { Damping } from './symptoms.ts';

/**
 * What can be switched at one cylinder, whatever is seen there. Local causes that couple (they act on two plugs, or mark something found on the cylinder)
 * are switched one by one; all others belong to one plug and are summed in closed form.
 */
export type Frame = {
  /** The shared causes that reach the cylinder, then the coupled ones. */
  readonly roster: Roster;
  /** States before this one belong to shared causes, the others to coupled ones. */
  readonly sharedStates: number;
  readonly coupled: readonly Switch[];
  readonly plugs: readonly PlugFrame[];
};
/** `kind`: the same for plugs on which the same states and causes act alike. */
type PlugFrame = {
  readonly kind: string;
  readonly touches: PlugTouches;
  /** P(condition absent) in the base states. */
  readonly absent: Float64Array;
  /** The other local causes that act on this plug. */
  readonly own: readonly Instance[];
};

const plugsReached = ({ plugs, cause }: Instance, evidence: CylinderEvidence): number =>
  cause.makes.length === 0 ? 0 : evidence.plugs.filter(({ key }) => plugs.includes(key)).length;

function absentInBase(switches: readonly Switch[], { key }: CylinderEvidence['plugs'][number], conditions: readonly Condition[]): Float64Array {
  const absent = Float64Array.from(conditions, (c) => 1 - c.leak);
  for (const { instance, base } of switches)
    if (instance.plugs.includes(key)) for (const { k, factor } of base.touches) absent[k] = (absent[k] as number) * factor;
  return absent;
}

/** The plug that an own cause acts on; the first where it acts on none. */
const plugOf = ({ plugs }: Instance, evidence: CylinderEvidence): number => Math.max(0, evidence.plugs.findIndex(({ key }) => plugs.includes(key)));

const numbers = new WeakMap<Switch, number>();
let numbered = 0;
function numberOf(one: Switch): number {
  const number = numbers.get(one) ?? (numbered += 1);
  numbers.set(one, number);
  return number;
}

/** Shared causes are the same wherever they reach; coupled and own ones are alike where the cause and its prior are. */
function kindOf(shared: readonly Switch[], local: readonly Instance[], own: readonly Instance[], { key }: CylinderEvidence['plugs'][number]): string {
  const reach = ({ plugs }: Instance): string => (plugs.includes(key) ? '' : '-');
  const here = shared.map((one) => `${numberOf(one)}${reach(one.instance)}`);
  return `${here.join()} ${local.map((i) => `${i.cause.id}:${i.prior}${reach(i)}${own.includes(i) ? '' : '*'}`).join()}`;
}

/**
 * @param shared the shared causes that reach this cylinder
 * @param alsoSwitched further local causes to switch one by one, for those who need to see them apart
 */
export function frameFor(
  shared: readonly Switch[],
  evidence: CylinderEvidence,
  local: readonly Instance[],
  conditions: readonly Condition[],
  alsoSwitched: (instance: Instance) => boolean = () => false,
): Frame {
  const couples = (i: Instance): boolean => plugsReached(i, evidence) > 1 || marksAny(i.cause, evidence) || alsoSwitched(i);
  const coupled = local.filter(couples).map((i) => switchFor(i, conditions));
  const rest = local.filter((i) => !coupled.some(({ instance }) => instance === i));
  const switches = [...shared, ...coupled];
  const roster = rosterOf(switches);
  return {
    roster,
    sharedStates: shared.reduce((n, { others }) => n + others.length, 0),
    coupled,
    plugs: evidence.plugs.map((plug, p) => {
      const own = rest.filter((i) => plugOf(i, evidence) === p);
      return { kind: kindOf(shared, local, own, plug), touches: plugTouches(roster, plug), absent: absentInBase(switches, plug, conditions), own };
    }),
  };
}

const quietOf = ({ cause }: Instance, damping: Damping): number => damping.causes.get(cause.id) ?? 1;

/** Chance that the causes present in their base states give none of the symptoms taken as absent. */
export const quietInBase = (switches: readonly Switch[], damping: Damping): number =>
  switches.reduce((p, { base, instance }) => (base.there ? p * quietOf(instance, damping) : p), 1);

/** How much likelier each state is to give none of the symptoms taken as absent than the base state of its cause. */
function quieter(roster: Roster, damping: Damping): Float64Array {
  const { states, owners, switches } = roster;
  const weights = new Float64Array(states.length);
  const quiet = switches.map(({ instance }) => quietOf(instance, damping));
  for (let v = 0; v < weights.length; v += 1) {
    const q = quiet[owners[v] as number] as number;
    weights[v] = turns(roster, v) ? ((states[v] as State).there ? q : 1 / q) : 1;
  }
  return weights;
}

/** How much likelier each state is than the base state of its cause, before anything is seen but the symptoms. */
export function stateWeights(roster: Roster, damping: Damping): Float64Array {
  const { states, owners, switches } = roster;
  const weights = quieter(roster, damping);
  for (let v = 0; v < weights.length; v += 1)
    weights[v] = ((weights[v] as number) * (states[v] as State).chance) / (switches[owners[v] as number] as Switch).base.chance;
  return weights;
}

export const ownCauses = (instances: readonly Instance[], damping: Damping, conditions: readonly Condition[]): OwnCause[] =>
  instances.map((instance) => ({ prior: instance.prior, quiet: quietOf(instance, damping), passes: touchesOf(instance, conditions) }));

/** The weights of a cylinder's states against the base states of their causes; the priors of shared causes are left to the engine. */
export type CylinderWeights = { readonly base: number; readonly states: Float64Array };

/**
 * @param damping for all symptoms taken as absent
 * @param own for those of them that were felt on this cylinder alone
 */
export function cylinderWeights({ roster, sharedStates, coupled }: Frame, damping: Damping, own: Damping): CylinderWeights {
  const states = quieter(roster, own);
  states.set(stateWeights(roster, damping).subarray(sharedStates), sharedStates);
  return { base: quietInBase(coupled, damping) * quietInBase(roster.switches.slice(0, roster.switches.length - coupled.length), own), states };
}
