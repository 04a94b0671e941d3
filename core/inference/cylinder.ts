import type { Cause, Condition } from '../knowledge/types.ts';
import { once } from '../once.ts';
import type { CylinderEvidence } from './evidence.ts';
import { marksAny } from './found.ts';
import type { Instance } from './network.ts';
import type { OwnCause } from './plug-sum.ts';
import { plugTouches, rosterOf, turns, type PlugTouches, type Roster } from './roster.ts';
import { switchFor, touchesOf, type State, type Switch } from './states.ts';
import type { Damping } from './symptoms.ts';

/**
 * What can be switched at a cylinder, whatever is seen there; the same for all cylinders at which the same causes can act alike. Local causes that couple
 * (they act on two plugs, or mark something found on the cylinder) are switched one by one; all others belong to one plug and are summed in closed form.
 */
export type Shape = {
  /** The shared causes that reach the cylinder, and the coupled ones as they stand at one of the cylinders. */
  readonly shared: readonly Switch[];
  readonly coupled: readonly Switch[];
  /** Of both; states before `sharedStates` belong to shared causes. */
  readonly roster: Roster;
  readonly sharedStates: number;
  readonly plugs: readonly PlugShape[];
};

/** `absent`: P(condition absent) in the base states. `own`: the other local causes that act on this plug. */
export type PlugShape = { readonly touches: PlugTouches; readonly absent: Float64Array; readonly own: readonly Instance[] };

/** A cylinder with its own local causes: the coupled ones in the order of the roster, the others by plug. */
export type Frame = { readonly shape: Shape; readonly coupled: readonly Instance[]; readonly own: readonly (readonly Instance[])[] };

/** The causes that are switched, as they stand at this very cylinder. */
export const switchedAt = ({ shape, coupled }: Frame): Instance[] => [...shape.shared.map(({ instance }) => instance), ...coupled];

type Plug = CylinderEvidence['plugs'][number];

const plugsReached = ({ plugs, cause }: Instance, evidence: CylinderEvidence): number =>
  cause.makes.length === 0 ? 0 : evidence.plugs.filter(({ key }) => plugs.includes(key)).length;

function absentInBase(switches: readonly Switch[], { key }: Plug, conditions: readonly Condition[]): Float64Array {
  const absent = Float64Array.from(conditions, (c) => 1 - c.leak);
  for (const { instance, base } of switches)
    if (instance.plugs.includes(key)) for (const { k, factor } of base.touches) absent[k] = (absent[k] as number) * factor;
  return absent;
}

/** The plug that an own cause acts on; the first where it acts on none. */
const plugOf = ({ plugs }: Instance, { plugs: holes }: CylinderEvidence): number => Math.max(0, holes.findIndex(({ key }) => plugs.includes(key)));

/**
 * @param shared the shared causes that reach the cylinder
 * @param local those of the cylinder and its plugs
 * @param alsoSwitched further local causes to switch one by one, for those who need to see them apart
 */
export type Framing = (
  shared: readonly Switch[], evidence: CylinderEvidence, local: readonly Instance[], alsoSwitched?: (instance: Instance) => boolean,
) => Frame;

type Standing = Pick<Shape, 'shared' | 'coupled'> & Pick<Frame, 'own'>;

function shapeOf({ shared, coupled, own }: Standing, { plugs }: CylinderEvidence, conditions: readonly Condition[]): Shape {
  const switches = [...shared, ...coupled];
  const roster = rosterOf(switches);
  return {
    shared,
    coupled,
    roster,
    sharedStates: shared.reduce((n, { others }) => n + others.length, 0),
    plugs: plugs.map((plug, p) => ({
      touches: plugTouches(roster, plug), absent: absentInBase(switches, plug, conditions), own: own[p] as readonly Instance[],
    })),
  };
}

/** Frames cylinders of one network; those with the same causes in the same places get the very same shape, so that what follows from it is worked out once. */
export function framing(conditions: readonly Condition[]): Framing {
  const [shapes, switched, local] = [new Map<string, Shape>(), new Map<Switch, number>(), new Map<string, number>()];
  return (shared, evidence, all, alsoSwitched = () => false) => {
    const couples = (i: Instance): boolean => plugsReached(i, evidence) > 1 || marksAny(i.cause, evidence) || alsoSwitched(i);
    const coupled = all.filter(couples);
    const rest = all.filter((i) => !coupled.includes(i));
    const own = evidence.plugs.map((_, p) => rest.filter((i) => plugOf(i, evidence) === p));
    const reach = ({ plugs }: Instance): string => evidence.plugs.map(({ key }) => (plugs.includes(key) ? '+' : '-')).join('');
    const alike = (i: Instance): string => `${once(local, `${i.cause.id} ${i.prior}`, () => local.size)}${reach(i)}`;
    const here = shared.map((one) => `${once(switched, one, () => switched.size)}${reach(one.instance)}`);
    const key = [here, coupled.map(alike), ...own.map((list) => list.map(alike))].join('/');
    const shape = once(shapes, key, () => shapeOf({ shared, coupled: coupled.map((i) => switchFor(i, conditions)), own }, evidence, conditions));
    return { shape, coupled, own };
  };
}

const quietOf = ({ id }: Pick<Cause, 'id'>, damping: Damping): number => damping.causes.get(id) ?? 1;

/** Chance that the causes present in their base states give none of the symptoms taken as absent. */
export const quietInBase = (switches: readonly Switch[], damping: Damping): number =>
  switches.reduce((p, { base, instance }) => (base.there ? p * quietOf(instance.cause, damping) : p), 1);

/** How much likelier each state is to give none of the symptoms taken as absent than the base state of its cause. */
function quieter(roster: Roster, damping: Damping): Float64Array {
  const { states, owners, switches } = roster;
  const weights = new Float64Array(states.length);
  const quiet = switches.map(({ instance }) => quietOf(instance.cause, damping));
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
  instances.map((instance) => ({ prior: instance.prior, quiet: quietOf(instance.cause, damping), passes: touchesOf(instance, conditions) }));

/** The weights of a cylinder's states against the base states of their causes; the priors of shared causes are left to the engine. */
export type CylinderWeights = { readonly base: number; readonly states: Float64Array };

/**
 * @param damping for all symptoms taken as absent
 * @param own for those of them that were felt on this cylinder alone
 */
export function cylinderWeights({ roster, shared, coupled, sharedStates }: Shape, damping: Damping, own: Damping): CylinderWeights {
  const states = quieter(roster, own);
  states.set(stateWeights(roster, damping).subarray(sharedStates), sharedStates);
  return { base: quietInBase(coupled, damping) * quietInBase(shared, own), states };
}
