import { HEALTHY_CYLINDER, HEALTHY_PLUG, HEALTHY_SYMPTOM, CYLINDER_FINDINGS, PLUG_FINDINGS } from '../../../../core/knowledge/findings.ts';
import { STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import type { CylinderEvidence, Evidence, Observation } from '../../../../core/inference/evidence.ts';
import type { Instance, Network } from '../../../../core/inference/network.ts';

/**
 * A second, slow reading of the same model, written from its definition: every assignment of every cause and every condition is a world, its weight is the
 * product of its parts. Shares no code with the solver except the laid-out network and the evidence.
 */
type Shown = ReadonlySet<string>;
type World = { readonly causes: ReadonlyMap<Instance, Shown>; readonly conditions: ReadonlyMap<string, ReadonlySet<number>> };
export type Bounds = { readonly changes: number; readonly conditions: number };
export const SOLVER_BOUNDS: Bounds = { changes: 2, conditions: 2 };

const subsetsOf = <T>(items: readonly T[]): T[][] => items.reduce<T[][]>((all, item) => [...all, ...all.map((set) => [...set, item])], [[]]);

/** Effects that a cause of several cylinders shows in this engine or does not: those weaker than "usually". Where shown, they are shown as "usually". */
const traitsOf = ({ cause, cylinders }: Instance): { condition: string; chance: number }[] =>
  cylinders.length < 2
    ? []
    : cause.makes
        .filter((m) => STRENGTHS[m.strength] < STRENGTHS.usually)
        .map((m) => ({ condition: m.condition, chance: STRENGTHS[m.strength] / STRENGTHS.usually }));

/** Chance that the cause makes the condition on a plug, given the traits that it shows. */
function making(instance: Instance, traits: Shown, { condition, strength }: Instance['cause']['makes'][number]): number {
  if (!traitsOf(instance).some((trait) => trait.condition === condition)) return STRENGTHS[strength];
  return traits.has(condition) ? STRENGTHS.usually : 0;
}

/** Whether a cause stands otherwise than was likeliest before anything was seen: there or not, and the traits of one that was expected. */
function stands(instance: Instance, causes: World['causes']): boolean {
  const traits = causes.get(instance);
  if (instance.prior <= 0.5) return traits === undefined;
  return traits !== undefined && traitsOf(instance).every((trait) => traits.has(trait.condition) === trait.chance > 0.5);
}
const changed = (instances: readonly Instance[], causes: World['causes']): number => instances.filter((i) => !stands(i, causes)).length;

/** A local cause counts against the bound only where it reaches beyond one plug: to a second plug, or to something found on the cylinder. */
function reachesBeyond(instance: Instance, evidence: Evidence): boolean {
  const cylinder = evidence.cylinders.find((c) => instance.cylinders.includes(c.cylinder));
  const plugs = cylinder?.plugs.filter((plug) => instance.plugs.includes(plug.key)).length ?? 0;
  return (
    (instance.cause.makes.length > 0 && plugs > 1) ||
    (cylinder?.seen ?? []).some((seen) => instance.cause.shows.some((link) => link.finding === seen.finding))
  );
}

function admitted(network: Network, evidence: Evidence, set: World['causes'], bounds: Bounds): boolean {
  const shared = changed(network.shared, set);
  if (shared > bounds.changes) return false;
  return [...network.local].every(([cylinder, own]) => {
    const here = changed(
      network.shared.filter((i) => i.cylinders.includes(cylinder)),
      set,
    );
    return (
      here +
        changed(
          own.filter((i) => reachesBeyond(i, evidence)),
          set,
        ) <=
      bounds.changes
    );
  });
}

function shown(
  seen: Observation,
  sources: readonly { readonly is: string; readonly p: number }[][],
  healthy: Readonly<Record<string, number>>,
  values: readonly string[],
): number {
  const weigh = (p: (value: string) => number): number => values.reduce((sum, value, i) => sum + p(value) * (seen.weights[i] ?? 0), 0);
  const all = Object.values(healthy).reduce((a, b) => a + b, 0);
  const rest = weigh((value) => (healthy[value] ?? 0) / all);
  const marks = sources.map((links) => links.reduce((sum, link) => sum + link.p, 0));
  const unmarked = marks.reduce((p, m) => p * (1 - m), 1);
  const total = marks.reduce((a, b) => a + b, 0);
  if (total === 0) return rest;
  return (
    unmarked * rest +
    (1 - unmarked) *
      weigh(
        (value) =>
          sources
            .flat()
            .filter((link) => link.is === value)
            .reduce((sum, link) => sum + link.p, 0) / total,
      )
  );
}

const links = (
  list: readonly { readonly finding: string; readonly is: string; readonly strength: keyof typeof STRENGTHS }[],
  finding: string,
): { is: string; p: number }[] => list.filter((link) => link.finding === finding).map((link) => ({ is: link.is, p: STRENGTHS[link.strength] }));

function symptomAbsent(symptom: string, world: World, cylinder: CylinderEvidence | undefined, network: Network): number {
  const { conditions } = network.knowledge;
  const causes = [...world.causes.keys()].filter((i) => cylinder === undefined || i.cylinders.includes(cylinder.cylinder));
  const plugs = [...world.conditions].filter(([key]) => cylinder === undefined || cylinder.plugs.some((plug) => plug.key === key));
  const given = [...causes.map((i) => i.cause.gives), ...plugs.flatMap(([, set]) => [...set].map((k) => conditions[k]?.gives ?? []))]
    .flat()
    .filter((link) => link.symptom === symptom);
  return (1 - HEALTHY_SYMPTOM) * given.reduce((p, link) => p * (1 - STRENGTHS[link.strength]), 1);
}

const chanceOf = (instance: Instance, traits: Shown | undefined): number =>
  traits === undefined
    ? 1 - instance.prior
    : traitsOf(instance).reduce((p, trait) => p * (traits.has(trait.condition) ? trait.chance : 1 - trait.chance), instance.prior);

function weight(world: World, network: Network, evidence: Evidence, instances: readonly Instance[]): number {
  const { conditions } = network.knowledge;
  let w = instances.reduce((p, i) => p * chanceOf(i, world.causes.get(i)), 1);
  for (const cylinder of evidence.cylinders) {
    const causes = [...world.causes.keys()].filter((i) => i.cylinders.includes(cylinder.cylinder));
    for (const seen of cylinder.seen)
      w *= shown(
        seen,
        causes.map((i) => links(i.cause.shows, seen.finding)),
        HEALTHY_CYLINDER[seen.finding],
        CYLINDER_FINDINGS[seen.finding],
      );
    for (const symptom of cylinder.symptoms) w *= 1 - symptomAbsent(symptom, world, cylinder, network);
    for (const plug of cylinder.plugs) {
      const there = world.conditions.get(plug.key) ?? new Set();
      conditions.forEach((condition, k) => {
        const away = causes
          .filter((i) => i.plugs.includes(plug.key))
          .flatMap((i) => i.cause.makes.filter((m) => m.condition === condition.id).map((m) => making(i, world.causes.get(i) as Shown, m)))
          .reduce((p, made) => p * (1 - made), 1 - condition.leak);
        w *= there.has(k) ? 1 - away : away;
      });
      for (const seen of plug.seen)
        w *= shown(
          seen,
          [...there].map((k) => links(conditions[k]?.shows ?? [], seen.finding)),
          HEALTHY_PLUG[seen.finding],
          PLUG_FINDINGS[seen.finding],
        );
    }
  }
  for (const symptom of evidence.present) w *= 1 - symptomAbsent(symptom, world, undefined, network);
  for (const symptom of evidence.absent) w *= symptomAbsent(symptom, world, undefined, network);
  return w;
}

/** Every set of causes, each of them with every set of its traits. */
function waysToStand(instances: readonly Instance[]): World['causes'][] {
  return instances.reduce<World['causes'][]>((all, instance) => {
    const ways = subsetsOf(traitsOf(instance)).map((traits): Shown => new Set(traits.map(({ condition }) => condition)));
    return all.flatMap((causes) => [causes, ...ways.map((traits) => new Map([...causes, [instance, traits]]))]);
  }, [new Map()]);
}

export type BruteBeliefs = { readonly causes: ReadonlyMap<string, number>; readonly conditions: ReadonlyMap<string, number> };

/** Beliefs by summing over all worlds within the bounds. Keys: instance id; `plug key/condition id`. */
export function bruteForce(network: Network, evidence: Evidence, bounds: Bounds): BruteBeliefs {
  const instances = [...network.shared, ...[...network.local.values()].flat()];
  const plugs = evidence.cylinders.flatMap((c) => c.plugs.map((plug) => plug.key));
  const sets = subsetsOf(network.knowledge.conditions.map((_, k) => k)).filter((set) => set.length <= bounds.conditions);
  const arrangements = plugs.reduce<ReadonlyMap<string, ReadonlySet<number>>[]>(
    (all, key) => all.flatMap((map) => sets.map((set) => new Map([...map, [key, new Set(set)]]))),
    [new Map()],
  );
  const causes = new Map<string, number>(instances.map((i) => [i.id, 0]));
  const conditions = new Map<string, number>();
  let total = 0;
  for (const set of waysToStand(instances)) {
    if (!admitted(network, evidence, set, bounds)) continue;
    for (const arrangement of arrangements) {
      const w = weight({ causes: set, conditions: arrangement }, network, evidence, instances);
      total += w;
      for (const i of set.keys()) causes.set(i.id, (causes.get(i.id) ?? 0) + w);
      for (const [key, there] of arrangement)
        for (const k of there) {
          const name = `${key}/${network.knowledge.conditions[k]?.id}`;
          conditions.set(name, (conditions.get(name) ?? 0) + w);
        }
    }
  }
  const scaled = (map: ReadonlyMap<string, number>): Map<string, number> => new Map([...map].map(([key, w]) => [key, w / total]));
  return { causes: scaled(causes), conditions: scaled(conditions) };
}
