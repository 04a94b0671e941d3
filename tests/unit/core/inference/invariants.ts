import type fc from 'fast-check';
import { conclude } from '../../../../core/inference/conclude.ts';
import { evidenceOf, type Evidence, type PlugEvidence } from '../../../../core/inference/evidence.ts';
import { networkFor, type Network } from '../../../../core/inference/network.ts';
import { plugBeliefs } from '../../../../core/inference/plug-belief.ts';
import { solverFor, type Solution } from '../../../../core/inference/posterior.ts';
import { judge } from '../../../../core/inference/verdict.ts';
import { PLUG_FINDINGS } from '../../../../core/knowledge/findings.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES, type FacetName } from '../../../../shared/vocabulary/tip.ts';
import { anySheet } from './any-sheet.ts';

/** What must hold of beliefs whatever is on the sheet, as laws of probability and not as knowledge of plugs. Each returns the breaches it finds, in words. */
/** The solver leaves out worlds that weigh together less than a hundred-thousandth, others for each sheet. */
const ROUNDING = 2e-5;

type Beliefs = ReadonlyMap<string, number>;

/** Belief in every cause at every place, and in every judgement on every plug. */
function beliefsOf({ network, evidence, belief, cylinders }: Solution): Beliefs {
  const instances = [...network.shared, ...[...network.local.values()].flat()];
  const causes = instances.map((instance): [string, number] => [instance.id, belief(instance)]);
  const judgements = evidence.cylinders.flatMap(({ plugs }, c) => {
    const here = plugBeliefs(cylinders[c]!);
    return plugs.flatMap(({ key }, p) => [...judge(here[p]!, KNOWLEDGE.conditions, true).beliefs].map(([verdict, b]): [string, number] => [`${key}: ${verdict}`, b]));
  });
  return new Map([...causes, ...judgements]);
}

const solve = (network: Network, evidence: Evidence): Beliefs => beliefsOf(solverFor(network)(evidence));
const beliefsFor = (sheet: ReadingSheet): Beliefs => {
  const evidence = evidenceOf(sheet);
  return solve(networkFor(KNOWLEDGE, evidence), evidence);
};

const differing = (one: Beliefs, other: Beliefs): string[] =>
  [...one].filter(([key, b]) => !(Math.abs(b - (other.get(key) ?? NaN)) < ROUNDING)).map(([key, b]) => `${key}: ${b} and ${other.get(key)}`);

const withSeen = (evidence: Evidence, key: string, seen: (plug: PlugEvidence) => PlugEvidence['seen']): Evidence => ({
  ...evidence,
  cylinders: evidence.cylinders.map((c) =>
    c.plugs.some((plug) => plug.key === key) ? { ...c, plugs: c.plugs.map((plug) => (plug.key === key ? { ...plug, seen: seen(plug) } : plug)) } : c,
  ),
});

const blank = (finding: FacetName): PlugEvidence['seen'][number] => ({
  path: 'nowhere', finding, value: 'none', sure: false, words: 'not observed', weights: PLUG_FINDINGS[finding].map(() => 1),
});

/** A facet nobody observed changes nothing: an observation that would be reported alike whatever is true leaves every belief where it is. */
export function unobservedChangesNothing(sheet: ReadingSheet): string[] {
  const evidence = evidenceOf(sheet);
  const network = networkFor(KNOWLEDGE, evidence);
  const plug = evidence.cylinders[0]!.plugs[0]!;
  const unseen = FACET_NAMES.filter((name) => !plug.seen.some((o) => o.finding === name));
  const more = withSeen(evidence, plug.key, ({ seen }) => [...seen, ...unseen.map(blank)]);
  return differing(solve(network, evidence), solve(network, more));
}

/**
 * More of the same evidence never lowers what it supports: a value read without doubt moves every belief at least as far, and the same way, as the same
 * value read with doubt. A doubted value is a fixed mixture of the sure value and no observation, so the belief under doubt lies between the other two.
 * The glance is left out: it gives way to the first detail by rule.
 */
export function surerMovesFurther(sheet: ReadingSheet): string[] {
  const places = sheet.plugs.flatMap(({ tip = {} }, index) => FACET_NAMES.filter((name) => tip[name] !== undefined).map((name) => ({ index, name })));
  const [place] = places;
  if (place === undefined) return [];
  const [without, doubted, sure] = (['without', 'doubted', 'sure'] as const).map((how) => beliefsFor(readAs(sheet, place, how))) as [Beliefs, Beliefs, Beliefs];
  return [...doubted].flatMap(([key, b]) => {
    const ends = [without.get(key) ?? NaN, sure.get(key) ?? NaN];
    return b >= Math.min(...ends) - ROUNDING && b <= Math.max(...ends) + ROUNDING ? [] : [`${key}: ${ends[0]} without, ${b} in doubt, ${ends[1]} for sure`];
  });
}

function readAs(sheet: ReadingSheet, { index, name }: { index: number; name: FacetName }, how: 'without' | 'doubted' | 'sure'): ReadingSheet {
  const plugs = sheet.plugs.map((plug, i) => {
    if (i !== index) return plug;
    const { unsure = [], overall: _glance, ...facets } = plug.tip ?? {};
    const others = unsure.filter((doubt) => doubt !== name);
    const kept = Object.fromEntries(Object.entries(facets).filter(([key]) => how !== 'without' || key !== name));
    return { ...plug, tip: { ...kept, unsure: how === 'doubted' ? [...others, name] : others } };
  });
  return { ...sheet, plugs };
}

/** Cylinders that stand alike: no neighbours, no ends of a row, no shared part short of the whole engine. */
const symmetric = ({ ignition: _wired, layout: _rows, ...engine }: ReadingSheet['engine']): ReadingSheet['engine'] => ({ ...engine, layout: 'radial', adjacent: [] });

/** Turning the cylinders' numbers by one turns the beliefs with them, and nothing else. */
export function relabellingRelabels(sheet: ReadingSheet): string[] {
  const n = sheet.engine.cylinders;
  const turned = (cylinder: number): number => (cylinder % n) + 1;
  const straight: ReadingSheet = { ...sheet, engine: symmetric(sheet.engine) };
  const moved: ReadingSheet = {
    ...straight,
    plugs: straight.plugs.map((plug) => ({ ...plug, cylinder: turned(plug.cylinder) })),
    symptoms: (straight.symptoms ?? []).map((s) => (s.cylinder === undefined ? s : { ...s, cylinder: turned(s.cylinder) })),
    cylinderChecks: (straight.cylinderChecks ?? []).map((check) => ({ ...check, cylinder: turned(check.cylinder) })),
  };
  const one = conclude(straight, KNOWLEDGE).judged;
  const other = conclude(moved, KNOWLEDGE).judged;
  return one.flatMap(({ plug, judgement }) => {
    const there = other.find(({ plug: { place } }) => place.cylinder === turned(plug.place.cylinder) && place.position === plug.place.position);
    return there === undefined ? [`${plug.key} is gone`] : differing(judgement.beliefs, there.judgement.beliefs).map((words) => `${plug.key} ${words}`);
  });
}

/** Plugs that all look normal, nothing else said: every plug read is called normal, and no fault is believed above what it was believed before. */
export function healthyStaysHealthy(sheet: ReadingSheet): string[] {
  const { plugs, symptoms: _felt, cylinderChecks: _found, ...rest } = sheet;
  const healthy: ReadingSheet = { ...rest, plugs: plugs.map(({ cylinder, position }) => ({ cylinder, ...(position ? { position } : {}), tip: { overall: 'looks normal' } })) };
  const { judged, solution } = conclude(healthy, KNOWLEDGE);
  const { shared, local } = solution.network;
  const raised = [...shared, ...[...local.values()].flat()].filter((i) => !i.cause.harmless && solution.belief(i) > i.prior + ROUNDING);
  return [
    ...judged.filter(({ plug, judgement }) => plug.reading !== undefined && judgement.verdict !== 'normal').map(({ plug, judgement }) => `${plug.key}: ${judgement.verdict}`),
    ...raised.map((i) => `${i.id}: ${solution.belief(i)}, before ${i.prior}`),
  ];
}

/** A sheet with no circumstance recorded: one of them may be the fault itself, seen by somebody. */
export const plainSheet: fc.Arbitrary<ReadingSheet> = anySheet.map(({ conditions: _said, ...sheet }) => sheet);
