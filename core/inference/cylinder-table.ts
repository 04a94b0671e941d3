import { CYLINDER_FINDINGS, HEALTHY_CYLINDER, type CylinderFindingName } from '../knowledge/findings.ts';
import type { Cause, Condition } from '../knowledge/types.ts';
import { markOf, plugFit, reportProbability, restProbability, type Mark, type PlugFit } from './appearance.ts';
import type { CylinderEvidence, Observation } from './evidence.ts';
import { flipsUpToTwo, type Flips } from './flips.ts';
import { strengthOf, type Instance } from './network.ts';
import { joinTouches, likelihoodAfter, plugState, type PlugState, type Touch } from './plug-state.ts';
import type { Damping } from './symptoms.ts';

/** One cause as this cylinder feels it. `on`: present in the likeliest set before anything is seen. */
type Actor = { readonly instance: Instance; readonly on: boolean; readonly touches: readonly (readonly Touch[])[]; readonly marks: readonly Mark[] };

/** Everything about one cylinder that does not change while causes are switched on and off. */
export type Cylinder = {
  readonly evidence: CylinderEvidence;
  readonly shared: readonly Actor[];
  readonly local: readonly Actor[];
  readonly sharedSets: readonly Flips[];
  /** Local sets: none, each one, then pairs. Beside a shared change only none and each one are counted. */
  readonly localSets: readonly Flips[];
  readonly fits: readonly PlugFit[];
  readonly absent: readonly Float64Array[];
  readonly rests: readonly number[];
};

const MOVED = 0.9;
/** A fault moves with the part that carries it, and stays when another part is exchanged. Follows from what a swap is; 1 in 10 swaps misleads (expert estimate). */
function triedLinks(cause: Cause, finding: CylinderFindingName): { is: string; p: number }[] {
  const [how, part] = finding.split(' ');
  if (cause.harmless || (how !== 'swap' && how !== 'known-good')) return [];
  const [yes, no] = how === 'swap' ? ['followed', 'stayed'] : ['cured', 'not cured'];
  return cause.part === part ? [{ is: yes, p: MOVED }, { is: no, p: 0.97 - MOVED }] : [{ is: no, p: 0.94 }, { is: yes, p: 0.03 }];
}

export function cylinderMark(cause: Cause, seen: Observation<CylinderFindingName>): Mark {
  const values: readonly string[] = CYLINDER_FINDINGS[seen.finding];
  const authored = markOf(cause.shows.filter((link) => link.finding === seen.finding), values, seen.weights);
  return triedLinks(cause, seen.finding).reduce((mark, { is, p }) => ({ mark: mark.mark + p, report: mark.report + p * (seen.weights[values.indexOf(is)] ?? 0) }), authored);
}

function actor(instance: Instance, evidence: CylinderEvidence, conditions: readonly Condition[]): Actor {
  const on = instance.prior > 0.5;
  const touches = evidence.plugs.map((plug) => (instance.plugs.includes(plug.key)
    ? instance.cause.makes.map((link) => {
      const factor = 1 - strengthOf(link);
      return { k: conditions.findIndex((c) => c.id === link.condition), factor: on ? 1 / factor : factor };
    })
    : []));
  return { instance, on, touches, marks: evidence.seen.map((seen) => cylinderMark(instance.cause, seen)) };
}

function absentBefore(actors: readonly Actor[], plug: number, conditions: readonly Condition[]): Float64Array {
  const absent = Float64Array.from(conditions, (c) => 1 - c.leak);
  for (const a of actors) if (a.on) for (const { k, factor } of a.touches[plug] ?? []) absent[k] = (absent[k] as number) / factor;
  return absent;
}

export function cylinderFor(evidence: CylinderEvidence, shared: readonly Instance[], local: readonly Instance[], conditions: readonly Condition[]): Cylinder {
  const here = shared.filter((i) => i.cylinders.includes(evidence.cylinder)).map((i) => actor(i, evidence, conditions));
  const own = local.map((i) => actor(i, evidence, conditions));
  return {
    evidence,
    shared: here,
    local: own,
    sharedSets: flipsUpToTwo(here.length),
    localSets: flipsUpToTwo(own.length),
    fits: evidence.plugs.map((plug) => plugFit(plug, conditions)),
    absent: evidence.plugs.map((_, p) => absentBefore([...here, ...own], p, conditions)),
    rests: evidence.seen.map((seen) => restProbability(seen.weights, CYLINDER_FINDINGS[seen.finding].map((v) => (HEALTHY_CYLINDER[seen.finding] as Readonly<Record<string, number>>)[v] ?? 0))),
  };
}

const active = (actors: readonly Actor[], flips: Flips): Actor[] => actors.filter((a, i) => a.on !== flips.includes(i));

/** Probability of what was found on the cylinder under these causes. */
export function findingsProbability(cylinder: Cylinder, shared: Flips, local: Flips): number {
  if (cylinder.rests.length === 0) return 1;
  const causes = [...active(cylinder.shared, shared), ...active(cylinder.local, local)];
  return cylinder.rests.reduce((p, rest, f) => p * reportProbability(rest, causes.flatMap((c) => { const m = c.marks[f]; return m && m.mark > 0 ? [m] : []; })), 1);
}

/** Weight of a change of this cause: how much likelier the changed state is than the one before, symptoms counted. */
export function flipWeight({ instance, on }: Pick<Actor, 'instance' | 'on'>, damping: Damping): number {
  const weight = (instance.prior / (1 - instance.prior)) * (damping.causes.get(instance.cause.id) ?? 1);
  return on ? 1 / weight : weight;
}

/** Chance that the causes present before any change give none of the symptoms taken as absent. */
export const quietBefore = (actors: readonly Pick<Actor, 'instance' | 'on'>[], damping: Damping): number =>
  actors.reduce((p, { instance, on }) => (on ? p * (damping.causes.get(instance.cause.id) ?? 1) : p), 1);

export const flippedTouches = (actors: readonly Actor[], flips: Flips, plug: number): readonly Touch[] =>
  flips.reduce<readonly Touch[]>((all, f) => joinTouches(all, actors[f]?.touches[plug] ?? []), []);

/** The plugs of the cylinder under one set of shared causes. */
export function statesUnder(cylinder: Cylinder, shared: Flips, damping: Damping): PlugState[] {
  return cylinder.fits.map((fit, p) => {
    const absent = Float64Array.from(cylinder.absent[p] as Float64Array);
    for (const { k, factor } of flippedTouches(cylinder.shared, shared, p)) absent[k] = (absent[k] as number) * factor;
    return plugState(fit, absent, damping.conditions);
  });
}

/** How many local sets are counted beside this many shared changes. */
export const localSetsBeside = (cylinder: Cylinder, shared: Flips): number => (shared.length === 0 ? cylinder.localSets.length : 1 + cylinder.local.length);

/** Chance that the shared causes of this set give none of the cylinder's own symptoms taken as absent. */
const quietUnder = (cylinder: Cylinder, shared: Flips, own: Damping): number =>
  active(cylinder.shared, shared).reduce((p, { instance }) => p * (own.causes.get(instance.cause.id) ?? 1), 1);

/**
 * Weight of every counted (shared set, local set), local priors included, shared priors not: one row a shared set.
 * @param damping for all symptoms taken as absent
 * @param own for those of them that were felt on this cylinder alone
 */
export function cylinderTable(cylinder: Cylinder, damping: Damping, own: Damping): Float64Array[] {
  const weights = cylinder.local.map((a) => flipWeight(a, damping));
  const before = quietBefore(cylinder.local, damping);
  const touches = cylinder.fits.map((_, p) => cylinder.localSets.map((set) => flippedTouches(cylinder.local, set, p)));
  return cylinder.sharedSets.map((shared) => {
    const states = statesUnder(cylinder, shared, damping);
    const row = new Float64Array(localSetsBeside(cylinder, shared));
    const quiet = before * quietUnder(cylinder, shared, own);
    for (let t = 0; t < row.length; t += 1) {
      const local = cylinder.localSets[t] as Flips;
      let weight = quiet * findingsProbability(cylinder, shared, local);
      for (const f of local) weight *= weights[f] as number;
      for (let p = 0; p < states.length; p += 1) weight *= likelihoodAfter(states[p] as PlugState, cylinder.fits[p] as PlugFit, damping.conditions, touches[p]?.[t] ?? []);
      row[t] = weight;
    }
    return row;
  });
}
