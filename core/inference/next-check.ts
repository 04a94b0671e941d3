import type { NextCheck } from '../../shared/formats/findings.v1.ts';
import { inSentence } from '../domain/words.ts';
import { CYLINDER_FINDINGS } from '../knowledge/findings.ts';
import { STRENGTHS } from '../knowledge/strengths.ts';
import type { Cause, Check } from '../knowledge/types.ts';
import { once } from '../once.ts';
import { reportProbability, type Mark } from './appearance.ts';
import { applies } from './circumstances.ts';
import { switchedAt } from './cylinder.ts';
import type { Evidence, Observation } from './evidence.ts';
import { cylinderMark, cylinderRest } from './found.ts';
import type { Instance } from './network.ts';
import type { Solution } from './posterior.ts';
import type { Roster } from './roster.ts';
import { partsFor, weighing, worldProbabilities, type Solved, type SolvedCylinder } from './solved-cylinder.ts';
import { worldsFor } from './state-sets.ts';
import type { State, Switch } from './states.ts';

/** One possible state of a cylinder: the causes at work, and how likely. */
export type World = { readonly causes: readonly Instance[]; readonly probability: number };

/** Worlds less likely than this do not move a decision. */
const NEGLIGIBLE = 1e-5;
const MOST_WORLDS = 300;
/** A check must tell at least this much. */
const LEAST_GAIN = 0.01;

/**
 * Worlds told apart by what would be done about the plug as it looks: the cures of those causes that can have made it so. Two causes with one cure are one
 * decision; a second fault that has nothing to do with the look of the plug does not blur it.
 */
type Decided = {
  /** All causes at work in any world; a world names them by place. */
  readonly causes: readonly Cause[];
  readonly answers: readonly boolean[];
  readonly worlds: readonly { readonly causes: readonly number[]; readonly probability: number; readonly decision: number }[];
  readonly decisions: number;
};

function decided(worlds: readonly World[], answers: (cause: Cause) => boolean): Decided {
  const causes = [...new Set(worlds.flatMap((world) => world.causes.map(({ cause }) => cause)))];
  const places = new Map(causes.map((cause, at) => [cause, at]));
  const can = causes.map(answers);
  const numbers = new Map<string, number>();
  const told = worlds.map((world) => {
    const here = world.causes.map(({ cause }) => places.get(cause) as number);
    const key = [...new Set(here.filter((at) => can[at]).map((at) => (causes[at] as Cause).cure))].sort().join(' + ');
    const decision = numbers.get(key) ?? numbers.size;
    numbers.set(key, decision);
    return { causes: here, probability: world.probability, decision };
  });
  return { causes, answers: can, worlds: told, decisions: numbers.size };
}

/** Of the causes of a roster those that are there in a world of two states, -1 for none. */
function thereIn({ switches, states, owners }: Roster, instances: readonly Instance[], a: number, b: number): Instance[] {
  const stands = new Map([a, b].filter((v) => v >= 0).map((v) => [owners[v], states[v] as State]));
  return instances.filter((_, o) => (stands.get(o) ?? (switches[o] as Switch).base).there);
}

/** Local causes below this belief are left to the sums; the others are seen apart. */
const SEEN_APART = 0.005;

/** Places of the shared sets of a cylinder that are likely enough to move a decision. */
function likelySets(solved: Solved): number[] {
  const { set, shared } = solved.worlds;
  const p = new Float64Array(shared.first.length);
  worldProbabilities(solved).forEach((weight, w) => { p[set[w] as number] = (p[set[w] as number] as number) + weight; });
  return [...p.keys()].filter((s) => (p[s] as number) >= NEGLIGIBLE || (shared.first[s] as number) < 0);
}

const worldsKnown = new WeakMap<Solved, readonly World[]>();

/**
 * The likely states of one cylinder, every local cause of weight switched one by one; those of cylinders that stand and look alike are the very same,
 * with the causes of one of them.
 */
export function worldsOf(solution: Solution, number: number): readonly World[] {
  const cylinder = solution.cylinders.find(({ evidence }) => evidence.cylinder === number) as SolvedCylinder;
  return once(worldsKnown, cylinder.solved, () => likelyWorlds(solution, cylinder));
}

function likelyWorlds({ evidence, ground, belief, network }: Solution, { solved, evidence: here, frame: standing }: SolvedCylinder): World[] {
  const reaching = standing.shape.shared;
  const { knowledge, local } = network;
  const frame = ground.framed(reaching, here, local.get(here.cylinder) ?? [], (i) => belief(i) >= SEEN_APART);
  const { shape } = frame;
  const instances = switchedAt(frame);
  const weighty = instances.map((instance, o) => o < reaching.length || belief(instance) >= SEEN_APART);
  const places = likelySets(solved);
  const { first, second } = solved.worlds.shared;
  const sets = { first: Int16Array.from(places, (s) => first[s] as number), second: Int16Array.from(places, (s) => second[s] as number) };
  const seen = (v: number): boolean => weighty[shape.roster.owners[v] as number] === true;
  const worlds = worldsFor(shape, sets, (_, a, b) => (a < 0 || seen(a)) && seen(b));
  const { terms } = weighing(knowledge, ground.memory)(shape, here, worlds, partsFor(evidence));
  const outer = solved.outside();
  const outside = (): Float64Array[] => outer.map((list) => Float64Array.from(places, (s) => list[s] as number));
  const likely: World[] = [];
  worldProbabilities({ terms, worlds, outside }).forEach((probability, w) => {
    if (probability < NEGLIGIBLE) return;
    likely.push({ causes: thereIn(shape.roster, instances, worlds.first[w] as number, worlds.second[w] as number), probability });
  });
  const likeliest = likely.sort((a, b) => b.probability - a.probability).slice(0, MOST_WORLDS);
  const all = likeliest.reduce((sum, w) => sum + w.probability, 0);
  return likeliest.map((w) => ({ ...w, probability: w.probability / all }));
}

/** Entropy in bits of what would be done. */
export function decisionEntropy(worlds: readonly { readonly probability: number; readonly decision: number }[]): number {
  const by = new Map<number, number>();
  for (const { decision, probability } of worlds) by.set(decision, (by.get(decision) ?? 0) + probability);
  return [...by.values()].reduce((h, p) => (p > 0 ? h - p * Math.log2(p) : h), 0);
}

/** `chance`: of this outcome with these causes at work. */
type Outcome = { readonly name: string; readonly chance: (causes: readonly number[]) => number };

function findingOutcomes(finding: keyof typeof CYLINDER_FINDINGS, causes: readonly Cause[]): Outcome[] {
  const values: readonly string[] = CYLINDER_FINDINGS[finding];
  return values.map((value): Outcome => {
    const seen: Observation<typeof finding> = { path: '', finding, value, sure: true, words: '', weights: values.map((v) => (v === value ? 1 : 0)) };
    const rest = cylinderRest(seen);
    const marks = causes.map((cause) => cylinderMark(cause, seen));
    return { name: value, chance: (here) => reportProbability(rest, here.map((at) => marks[at] as Mark)) };
  });
}

function inspectionOutcomes(tells: Extract<Check['tells'], { looksFor: unknown }>, causes: readonly Cause[]): Outcome[] {
  const sought = causes.map(({ id }) => tells.looksFor.includes(id));
  const found = (here: readonly number[]): number => (here.some((at) => sought[at]) ? STRENGTHS[tells.finds] : STRENGTHS[tells.falselyFinds]);
  return [
    { name: 'found', chance: found },
    { name: 'not found', chance: (here) => 1 - found(here) },
  ];
}

/** Above this a cause is worth its cure. */
export const WORTH_A_CURE = 0.25;
/** What is less likely than this nothing points to. */
const STANDS_OUT = 0.15;

type Pointed = { readonly name: string; readonly belief: number };

/** What the worlds, weighed anew, point to. */
function leading({ causes, answers, worlds }: Decided, weights: Float64Array): Pointed | undefined {
  const by = new Map<string, number>();
  worlds.forEach(({ causes: here }, w) => {
    for (const at of here)
      if (answers[at]) {
        const { name } = causes[at] as Cause;
        by.set(name, (by.get(name) ?? 0) + (weights[w] as number));
      }
  });
  const [first] = [...by].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return first === undefined || first[1] < STANDS_OUT ? undefined : { name: first[0], belief: first[1] };
}

type Told = { readonly name: string; readonly chance: number; readonly points: Pointed | undefined };

/** What each outcome points to, in words; one that leaves the same cause short of its cure says so. Outcomes that say the same are told together. */
function toldTogether(outcomes: readonly Told[]): Map<string, { readonly names: string[]; chance: number }> {
  const worth = new Set(outcomes.flatMap(({ points }) => (points !== undefined && points.belief >= WORTH_A_CURE ? [points.name] : [])));
  const words = (points: Pointed | undefined): string => {
    if (points === undefined) return 'nothing that stands out';
    return `${inSentence(points.name)}${worth.has(points.name) && points.belief < WORTH_A_CURE ? ', though less likely' : ''}`;
  };
  const told = new Map<string, { readonly names: string[]; chance: number }>();
  for (const { name, chance, points } of outcomes) {
    const alike = once(told, words(points), () => ({ names: [], chance: 0 }));
    alike.names.push(name);
    alike.chance += chance;
  }
  return told;
}

function entropyOf({ worlds, decisions }: Decided, weights: Float64Array): number {
  const by = new Float64Array(decisions);
  worlds.forEach(({ decision }, w) => { by[decision] = (by[decision] as number) + (weights[w] as number); });
  return by.reduce((h, p) => (p > 0 ? h - p * Math.log2(p) : h), 0);
}

/** `turns`: whether two likely outcomes would lead to different cures, or one to a cure and one to none yet. */
type Gain = { readonly bits: number; readonly why: string; readonly turns: boolean };

/** An outcome less likely than this is not told and turns nothing. */
const LIKELY = 0.05;

/** Expected drop of the decision's entropy when the check is made. */
function gainOf(outcomes: readonly Outcome[], choices: Decided): Gain {
  const { worlds } = choices;
  const before = entropyOf(choices, Float64Array.from(worlds, ({ probability }) => probability));
  let after = 0;
  const likely: Told[] = [];
  for (const { name, chance } of outcomes) {
    const weights = Float64Array.from(worlds, ({ causes, probability }) => probability * chance(causes));
    const p = weights.reduce((sum, w) => sum + w, 0);
    if (p < 1e-9) continue;
    for (let w = 0; w < weights.length; w += 1) weights[w] = (weights[w] as number) / p;
    after += p * entropyOf(choices, weights);
    if (p >= LIKELY) likely.push({ name, chance: p, points: leading(choices, weights) });
  }
  const told = toldTogether(likely);
  const words = [...told].map(([points, { names, chance }]) => `${names.join(' or ')} (${Math.round(100 * chance)} %): ${points}`);
  return {
    bits: Math.max(0, before - after),
    why: `If ${words.join('; if ')}.`,
    turns: told.size > 1,
  };
}

const made = (check: Check, cylinder: number, evidence: Evidence): boolean =>
  seenOnPlugs(check, evidence) ||
  ('finding' in check.tells &&
    evidence.cylinders.some((c) => c.cylinder === cylinder && c.seen.some((o) => 'finding' in check.tells && o.finding === check.tells.finding)));

/** Whether what the check reads on a plug was noted of every plug that was read. */
function seenOnPlugs({ reads = [] }: Check, { cylinders }: Evidence): boolean {
  const plugs = cylinders.flatMap((c) => c.plugs).filter((plug) => plug.seen.length > 0);
  return plugs.length > 0 && plugs.every((plug) => plug.seen.some(({ finding }) => reads.includes(finding)));
}

/** A swap needs a second cylinder to swap with, and a comparison one to compare with. */
const NEEDS_ANOTHER: readonly string[] = ['swap plug', 'swap lead', 'swap coil', 'swap injector', 'speedDropWhenCut', 'exhaustTemperature'];
/** Whether a check can be made on this engine. */
export const possible = (check: Check, evidence: Evidence): boolean =>
  applies(check.needs, evidence.sheet) && (evidence.cylinders.length > 1 || !('finding' in check.tells && NEEDS_ANOTHER.includes(check.tells.finding)));

type Choices = Decided & { readonly gains: Map<Check, Gain> };

const chosen = new WeakMap<readonly World[], Map<string, Choices>>();

/** The same question about the same worlds is weighed once. */
function choicesFor(worlds: readonly World[], answers: (cause: Cause) => boolean): Choices {
  const causes = new Set(worlds.flatMap((world) => world.causes.map(({ cause }) => cause)));
  const key = [...causes].filter(answers).map(({ id }) => id).join();
  const known = once(chosen, worlds, () => new Map<string, Choices>());
  return once(known, key, () => ({ ...decided(worlds, answers), gains: new Map<Check, Gain>() }));
}

const gainIn = (choices: Choices, check: Check): Gain =>
  once(choices.gains, check, () =>
    gainOf('finding' in check.tells ? findingOutcomes(check.tells.finding, choices.causes) : inspectionOutcomes(check.tells, choices.causes), choices));

export type Question = {
  readonly checks: readonly Check[];
  readonly worlds: readonly World[];
  /** Whether a cause can have made the plug look as it does. */
  readonly answers: (cause: Cause) => boolean;
  readonly cylinder: number;
  readonly evidence: Evidence;
  readonly scope: Check['scope'];
};

/** So many checks are offered at a place at most. */
export const MOST_CHECKS = 4;
/** Every check costs this much beside its own time: fetching the tool, clearing the way. Minutes, expert estimate. */
const OVERHEAD = 5;

/** Bits a minute. */
export const worth = ({ gainBits, effortMinutes }: Pick<NextCheck, 'gainBits' | 'effortMinutes'>): number => gainBits / (effortMinutes + OVERHEAD);

/** Checks for one cylinder, the most telling a minute first. */
export function nextChecks({ checks, worlds, answers, cylinder, evidence, scope }: Question): NextCheck[] {
  const choices = choicesFor(worlds, answers);
  return checks
    .filter((check) => check.scope === scope && possible(check, evidence) && !made(check, cylinder, evidence))
    .map((check) => ({ check, gain: gainIn(choices, check) }))
    .filter(({ gain }) => gain.turns && gain.bits >= LEAST_GAIN)
    .map(({ check, gain }): NextCheck => ({
      id: check.id,
      name: check.name,
      ...(scope === 'cylinder' ? { cylinder } : {}),
      gainBits: Math.round(gain.bits * 1000) / 1000,
      effortMinutes: check.minutes,
      why: `${check.how} ${gain.why}`,
    }))
    .sort((a, b) => worth(b) - worth(a) || (a.id < b.id ? -1 : 1))
    .slice(0, MOST_CHECKS);
}
