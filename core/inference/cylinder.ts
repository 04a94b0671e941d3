import { CYLINDER_FINDINGS, HEALTHY_CYLINDER, type CylinderFindingName } from '../knowledge/findings.ts';
import type { Cause, Condition } from '../knowledge/types.ts';
import { markOf, plugFit, restProbability, type Mark, type PlugFit } from './appearance.ts';
import type { CylinderEvidence, Observation } from './evidence.ts';
import { flipsUpToTwo, type Flips } from './flips.ts';
import { strengthOf, type Instance } from './network.ts';
import { joinTouches, plugSum, Touched, type OwnCause, type PlugSum, type Touch } from './plug-sum.ts';
import type { Damping } from './symptoms.ts';

/** One cause as this cylinder feels it. `on`: present in the likeliest set before anything is seen. `touches`: by plug. */
type Switch = { readonly instance: Instance; readonly on: boolean; readonly touches: readonly (readonly Touch[])[] };
export type Actor = Switch & { readonly marks: readonly Mark[] };

/** The part of a cylinder that no observation changes: which shared causes reach it, in which sets, and what they touch. */
export type Frame = {
  readonly shared: readonly Switch[];
  readonly sets: readonly Flips[];
  readonly touches: readonly (readonly (readonly Touch[])[])[];
};

/**
 * Everything about one cylinder that does not change while causes are switched on and off. Local causes that couple (they act on two plugs, or mark
 * something found on the cylinder) are switched one by one; all others belong to one plug and are summed in closed form.
 */
export type Cylinder = {
  readonly evidence: CylinderEvidence;
  readonly shared: readonly Actor[];
  readonly coupled: readonly Actor[];
  /** The other local causes, by the plug they act on. */
  readonly own: readonly (readonly Instance[])[];
  readonly sharedSets: readonly Flips[];
  /** Coupled sets: none, each one, then pairs; at most two changes are counted, shared and coupled together. */
  readonly coupledSets: readonly Flips[];
  readonly sharedTouches: readonly (readonly (readonly Touch[])[])[];
  readonly coupledTouches: readonly (readonly (readonly Touch[])[])[];
  readonly fits: readonly PlugFit[];
  readonly absent: readonly Float64Array[];
  readonly rests: readonly number[];
  /** Worlds in a row: those of shared set s stand from starts[s] up to starts[s + 1]. */
  readonly starts: Uint32Array;
  /** Probability of what was found on the cylinder, by world. */
  readonly found: Float64Array;
};

const MOVED = 0.9;
/**
 * A fault moves with the part that carries it, and stays when another part is exchanged. Follows from what a swap is;
 * 1 in 10 swaps misleads (expert estimate).
 */
function triedLinks(cause: Cause, finding: CylinderFindingName): { is: string; p: number }[] {
  const [how, part] = finding.split(' ');
  if (cause.harmless || (how !== 'swap' && how !== 'known-good')) return [];
  const [yes, no] = how === 'swap' ? ['followed', 'stayed'] : ['cured', 'not cured'];
  return cause.part === part
    ? [
        { is: yes, p: MOVED },
        { is: no, p: 0.97 - MOVED },
      ]
    : [
        { is: no, p: 0.94 },
        { is: yes, p: 0.03 },
      ];
}

/** What a cause does to one finding on its cylinder. */
export function cylinderMark(cause: Cause, seen: Observation<CylinderFindingName>): Mark {
  const values: readonly string[] = CYLINDER_FINDINGS[seen.finding];
  const authored = markOf(
    cause.shows.filter((link) => link.finding === seen.finding),
    values,
    seen.weights,
  );
  return triedLinks(cause, seen.finding).reduce(
    (mark, { is, p }) => ({ mark: mark.mark + p, report: mark.report + p * (seen.weights[values.indexOf(is)] ?? 0) }),
    authored,
  );
}

/** P(report) with nothing wrong, for a finding on a cylinder. */
export const cylinderRest = (seen: Observation<CylinderFindingName>): number =>
  restProbability(
    seen.weights,
    CYLINDER_FINDINGS[seen.finding].map((v) => (HEALTHY_CYLINDER[seen.finding] as Readonly<Record<string, number>>)[v] ?? 0),
  );

const passesOf = (cause: Cause, conditions: readonly Condition[]): Touch[] =>
  cause.makes.map((link) => ({ k: conditions.findIndex((c) => c.id === link.condition), factor: 1 - strengthOf(link) }));

function switchFor(instance: Instance, plugs: CylinderEvidence['plugs'], conditions: readonly Condition[]): Switch {
  const on = instance.prior > 0.5;
  const passes = passesOf(instance.cause, conditions).map(({ k, factor }) => ({ k, factor: on ? 1 / factor : factor }));
  return { instance, on, touches: plugs.map((plug) => (instance.plugs.includes(plug.key) ? passes : [])) };
}

const actor = (part: Switch, evidence: CylinderEvidence): Actor => ({
  ...part,
  marks: evidence.seen.map((seen) => cylinderMark(part.instance.cause, seen)),
});

const couples = ({ touches, marks }: Actor): boolean => touches.filter((list) => list.length > 0).length > 1 || marks.some((m) => m.mark > 0);

function absentBefore(actors: readonly Switch[], plug: number, conditions: readonly Condition[]): Float64Array {
  const absent = Float64Array.from(conditions, (c) => 1 - c.leak);
  for (const a of actors) if (a.on) for (const { k, factor } of a.touches[plug] ?? []) absent[k] = (absent[k] as number) / factor;
  return absent;
}

const touchesOf = (actors: readonly Switch[], sets: readonly Flips[], plugs: number): readonly (readonly (readonly Touch[])[])[] =>
  sets.map((flips) =>
    Array.from({ length: plugs }, (_, p) => flips.reduce<readonly Touch[]>((all, f) => joinTouches(all, actors[f]?.touches[p] ?? []), [])),
  );

/** @param shared the shared causes that reach this cylinder */
export function frameFor({ plugs }: CylinderEvidence, shared: readonly Instance[], conditions: readonly Condition[]): Frame {
  const switches = shared.map((instance) => switchFor(instance, plugs, conditions));
  const sets = flipsUpToTwo(switches.length);
  return { shared: switches, sets, touches: touchesOf(switches, sets, plugs.length) };
}

/** @param alsoSwitched further local causes to switch one by one, for those who need to see them apart */
export function cylinderFor(
  frame: Frame,
  evidence: CylinderEvidence,
  local: readonly Instance[],
  conditions: readonly Condition[],
  alsoSwitched: (instance: Instance) => boolean = () => false,
): Cylinder {
  const { plugs } = evidence;
  const here = frame.shared.map((part) => actor(part, evidence));
  const all = local.map((instance) => actor(switchFor(instance, plugs, conditions), evidence));
  const coupled = all.filter((a) => couples(a) || alsoSwitched(a.instance));
  const rest = all.filter((a) => !coupled.includes(a));
  const plugOf = (a: Actor): number =>
    Math.max(
      0,
      a.touches.findIndex((list) => list.length > 0),
    );
  const coupledSets = flipsUpToTwo(coupled.length);
  const cylinder = {
    evidence,
    shared: here,
    coupled,
    sharedSets: frame.sets,
    coupledSets,
    own: plugs.map((_, p) => rest.filter((a) => plugOf(a) === p).map((a) => a.instance)),
    sharedTouches: frame.touches,
    coupledTouches: touchesOf(coupled, coupledSets, plugs.length),
    fits: plugs.map((plug) => plugFit(plug, conditions)),
    absent: plugs.map((_, p) => absentBefore([...here, ...coupled], p, conditions)),
    rests: evidence.seen.map(cylinderRest),
    starts: startsFor(frame.sets, coupledSets, coupled.length),
  };
  return { ...cylinder, found: foundProbabilities(cylinder) };
}

const active = (actors: readonly Actor[], flips: Flips): Actor[] => actors.filter((a, i) => a.on !== flips.includes(i));

/** Marks on one finding under a set of causes: chance that none marks it, sum of the marks, and of their reports. */
class MarkSum {
  unmarked = 1;
  total = 0;
  report = 0;

  copy(from: MarkSum): void {
    this.unmarked = from.unmarked;
    this.total = from.total;
    this.report = from.report;
  }

  change({ marks, on }: Actor, finding: number, there = !on): void {
    const m = marks[finding];
    if (m === undefined || m.mark === 0) return;
    this.unmarked *= there ? 1 - m.mark : 1 / (1 - m.mark);
    this.total += there ? m.mark : -m.mark;
    this.report += there ? m.report : -m.report;
  }

  probability(rest: number): number {
    return this.total <= 1e-12 ? rest : this.unmarked * rest + (1 - this.unmarked) * (this.report / this.total);
  }
}

/** Probability of what was found on the cylinder, for every counted world. Symptoms do not bear on it. */
function foundProbabilities({ rests, shared, coupled, sharedSets, coupledSets, starts }: Omit<Cylinder, 'found'>): Float64Array {
  const found = new Float64Array(starts[sharedSets.length] as number).fill(1);
  const [base, under, sum] = [new MarkSum(), new MarkSum(), new MarkSum()];
  rests.forEach((rest, finding) => {
    base.copy(new MarkSum());
    for (const a of [...shared, ...coupled]) if (a.on) base.change(a, finding, true);
    for (let s = 0; s < sharedSets.length; s += 1) {
      under.copy(base);
      for (const f of sharedSets[s] as Flips) under.change(shared[f] as Actor, finding);
      const start = starts[s] as number;
      for (let at = start; at < (starts[s + 1] as number); at += 1) {
        sum.copy(under);
        for (const f of coupledSets[at - start] as Flips) sum.change(coupled[f] as Actor, finding);
        found[at] = (found[at] as number) * sum.probability(rest);
      }
    }
  });
  return found;
}

/** At most two changes are counted, shared and coupled together: where the worlds of each shared set begin in a table. */
function startsFor(sharedSets: readonly Flips[], coupledSets: readonly Flips[], coupled: number): Uint32Array {
  const starts = new Uint32Array(sharedSets.length + 1);
  const widths = [coupledSets.length, 1 + coupled, 1];
  sharedSets.forEach((flips, s) => { starts[s + 1] = (starts[s] as number) + (widths[flips.length] ?? 1); });
  return starts;
}

type Switched = Pick<Switch, 'instance' | 'on'>;
const quietOf = ({ instance }: Switched, damping: Damping): number => damping.causes.get(instance.cause.id) ?? 1;

/** How much likelier the changed state of a cause is than the one before, symptoms counted. */
export function flipWeight(a: Switched, damping: Damping): number {
  const weight = (a.instance.prior / (1 - a.instance.prior)) * quietOf(a, damping);
  return a.on ? 1 / weight : weight;
}

/** Chance that the causes present before any change give none of the symptoms taken as absent. */
export const quietBefore = (actors: readonly Switched[], damping: Damping): number =>
  actors.reduce((p, a) => (a.on ? p * quietOf(a, damping) : p), 1);

/** Chance that the shared causes of this set give none of the cylinder's own symptoms taken as absent. */
const quietUnder = (cylinder: Cylinder, shared: Flips, own: Damping): number =>
  own.key === '' ? 1 : active(cylinder.shared, shared).reduce((p, a) => p * quietOf(a, own), 1);

export const ownCauses = (instances: readonly Instance[], damping: Damping, conditions: readonly Condition[]): OwnCause[] =>
  instances.map(({ cause, prior }) => ({ prior, quiet: damping.causes.get(cause.id) ?? 1, passes: passesOf(cause, conditions) }));

export const plugSums = (cylinder: Cylinder, damping: Damping, conditions: readonly Condition[]): PlugSum[] =>
  cylinder.fits.map((fit, p) =>
    plugSum(fit, damping.conditions, cylinder.absent[p] as Float64Array, ownCauses(cylinder.own[p] ?? [], damping, conditions)),
  );

/** All touches of one plug in one world. */
export const touchesIn = (cylinder: Cylinder, shared: number, coupled: number, plug: number): readonly Touch[] =>
  joinTouches(cylinder.sharedTouches[shared]?.[plug] ?? [], cylinder.coupledTouches[coupled]?.[plug] ?? []);

/** Values on every counted (shared set, coupled set). */
export type Table = { readonly values: Float64Array; readonly starts: Uint32Array };

/** Weights of the coupled sets alone, symptoms counted. */
function coupledWeights({ coupled, coupledSets }: Cylinder, damping: Damping): Float64Array {
  const weights = coupled.map((a) => flipWeight(a, damping));
  const before = quietBefore(coupled, damping);
  return Float64Array.from(coupledSets, (flips) => flips.reduce((w, f) => w * (weights[f] as number), before));
}

/**
 * Weight of every counted (shared set, coupled set), local priors included, shared priors not.
 * @param damping for all symptoms taken as absent
 * @param own for those of them that were felt on this cylinder alone
 */
export function cylinderTable(cylinder: Cylinder, sums: readonly PlugSum[], damping: Damping, own: Damping): Table {
  const { sharedSets, sharedTouches, coupledTouches, starts, found } = cylinder;
  const weights = coupledWeights(cylinder, damping);
  const touched = sums.map((sum) => new Touched(sum));
  const values = new Float64Array(found.length);
  for (let s = 0; s < sharedSets.length; s += 1) {
    const quiet = quietUnder(cylinder, sharedSets[s] as Flips, own);
    for (let p = 0; p < touched.length; p += 1) (touched[p] as Touched).touch(sharedTouches[s]?.[p] ?? []);
    const start = starts[s] as number;
    for (let at = start; at < (starts[s + 1] as number); at += 1) {
      let weight = quiet * (found[at] as number) * (weights[at - start] as number);
      for (let p = 0; p < touched.length; p += 1) weight *= Math.max(0, (touched[p] as Touched).after(coupledTouches[at - start]?.[p] ?? []));
      values[at] = weight;
    }
  }
  return { values, starts };
}
