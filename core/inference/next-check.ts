import type { NextCheck } from '../../shared/formats/findings.v1.ts';
import { inSentence } from '../domain/words.ts';
import { CYLINDER_FINDINGS } from '../knowledge/findings.ts';
import { STRENGTHS } from '../knowledge/strengths.ts';
import type { Cause, Check } from '../knowledge/types.ts';
import { reportProbability, type Mark } from './appearance.ts';
import { applies } from './circumstances.ts';
import { cylinderMark, cylinderRest, type Actor } from './cylinder.ts';
import type { CylinderEvidence, Evidence, Observation } from './evidence.ts';
import type { Flips } from './flips.ts';
import type { Instance } from './network.ts';
import { prepare, type Solution } from './posterior.ts';
import { forEachWorld, type SolvedCylinder } from './solved-cylinder.ts';
import { signedSubsets } from './symptoms.ts';

/** One possible state of a cylinder: the causes at work, and how likely. */
export type World = { readonly causes: readonly Instance[]; readonly probability: number };
/** A world with what would be done about it, as a number: worlds with the same number ask for the same cure. */
type Decided = World & { readonly decision: number };

/** Worlds less likely than this do not move a decision. */
const NEGLIGIBLE = 1e-5;
const MOST_WORLDS = 300;
/** A check must tell at least this much. */
const LEAST_GAIN = 0.01;

/**
 * The decision is what to do about the plug as it looks: the cures of those causes that can have made it so. Two causes with one cure are one decision;
 * a second fault that has nothing to do with the look of the plug does not blur it.
 */
function decided(worlds: readonly World[], answers: (cause: Cause) => boolean): Decided[] {
  const numbers = new Map<string, number>();
  return worlds.map((world) => {
    const key = [...new Set(world.causes.filter((i) => answers(i.cause)).map((i) => i.cause.cure))].sort().join(' + ');
    const decision = numbers.get(key) ?? numbers.size;
    numbers.set(key, decision);
    return { ...world, decision };
  });
}

const chosen = (actors: readonly Actor[], flips: Flips): Instance[] => actors.filter((a, n) => a.on !== flips.includes(n)).map((a) => a.instance);

/** Local causes below this belief are left to the sums; the others are seen apart. */
const SEEN_APART = 0.005;

/** The likely states of one cylinder, every local cause of weight switched one by one. */
export function worldsOf({ evidence, belief, network, cylinders }: Solution, number: number): World[] {
  const at = evidence.cylinders.findIndex((c) => c.cylinder === number);
  const solved = cylinders[at] as SolvedCylinder;
  const parts = signedSubsets(evidence.present, evidence.absent);
  const { cylinder, terms } = prepare(network, solved.frame, evidence.cylinders[at] as CylinderEvidence, parts, (i) => belief(i) >= SEEN_APART);
  const worlds: World[] = [];
  forEachWorld({ terms, outside: solved.outside }, (s, t, probability) => {
    if (probability < NEGLIGIBLE) return;
    const causes = [...chosen(cylinder.shared, cylinder.sharedSets[s] as Flips), ...chosen(cylinder.coupled, cylinder.coupledSets[t] as Flips)];
    worlds.push({ causes, probability });
  });
  const likely = worlds.sort((a, b) => b.probability - a.probability).slice(0, MOST_WORLDS);
  const all = likely.reduce((sum, w) => sum + w.probability, 0);
  return likely.map((w) => ({ ...w, probability: w.probability / all }));
}

/** Entropy in bits of what would be done. */
export function decisionEntropy(worlds: readonly { readonly probability: number; readonly decision: number }[]): number {
  const by = new Map<number, number>();
  for (const { decision, probability } of worlds) by.set(decision, (by.get(decision) ?? 0) + probability);
  return [...by.values()].reduce((h, p) => (p > 0 ? h - p * Math.log2(p) : h), 0);
}

type Outcome = { readonly name: string; readonly chance: (world: World) => number };

function findingOutcomes(finding: keyof typeof CYLINDER_FINDINGS): Outcome[] {
  const values: readonly string[] = CYLINDER_FINDINGS[finding];
  return values.map((value): Outcome => {
    const seen: Observation<typeof finding> = { path: '', finding, value, sure: true, words: '', weights: values.map((v) => (v === value ? 1 : 0)) };
    const rest = cylinderRest(seen);
    const marks = new Map<string, Mark>();
    const markFor = (i: Instance): Mark => {
      const m = marks.get(i.cause.id) ?? cylinderMark(i.cause, seen);
      marks.set(i.cause.id, m);
      return m;
    };
    return {
      name: value,
      chance: (world) =>
        reportProbability(
          rest,
          world.causes.map(markFor).filter((m) => m.mark > 0),
        ),
    };
  });
}

function inspectionOutcomes(tells: Extract<Check['tells'], { looksFor: unknown }>): Outcome[] {
  const found = (world: World): number =>
    world.causes.some((i) => tells.looksFor.includes(i.cause.id)) ? STRENGTHS[tells.finds] : STRENGTHS[tells.falselyFinds];
  return [
    { name: 'found', chance: found },
    { name: 'not found', chance: (world) => 1 - found(world) },
  ];
}

function leading(worlds: readonly World[], answers: (cause: Cause) => boolean): string {
  const by = new Map<string, number>();
  for (const { causes, probability } of worlds)
    for (const { cause } of causes) if (answers(cause)) by.set(cause.name, (by.get(cause.name) ?? 0) + probability);
  const [first] = [...by].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return first === undefined || first[1] < 0.15 ? 'nothing wrong here' : inSentence(first[0]);
}

/** `turns`: whether two likely outcomes would lead to different cures. */
type Gain = { readonly bits: number; readonly why: string; readonly turns: boolean };

/** An outcome less likely than this is not told and turns nothing. */
const LIKELY = 0.05;

/** Expected drop of the decision's entropy when the check is made. */
function gainOf(outcomes: readonly Outcome[], worlds: readonly Decided[], answers: (cause: Cause) => boolean): Gain {
  const before = decisionEntropy(worlds);
  let after = 0;
  const told = new Map<string, { readonly names: string[]; chance: number }>();
  for (const { name, chance } of outcomes) {
    const weighed = worlds.map((w) => ({ ...w, probability: w.probability * chance(w) }));
    const p = weighed.reduce((sum, w) => sum + w.probability, 0);
    if (p < 1e-9) continue;
    const then = weighed.map((w) => ({ ...w, probability: w.probability / p }));
    after += p * decisionEntropy(then);
    if (p < LIKELY) continue;
    const points = leading(then, answers);
    const alike = told.get(points) ?? { names: [], chance: 0 };
    alike.names.push(`"${name}"`);
    alike.chance += p;
    told.set(points, alike);
  }
  const words = [...told].map(([points, { names, chance }]) => `${names.join(' or ')} (${Math.round(100 * chance)} %) would point to ${points}`);
  return {
    bits: Math.max(0, before - after),
    why: `${words.join('; ')}.`,
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
  return reads.length > 0 && plugs.length > 0 && plugs.every((plug) => plug.seen.some(({ finding }) => reads.includes(finding)));
}

/** A swap needs a second cylinder to swap with, and a comparison one to compare with. */
const NEEDS_ANOTHER: readonly string[] = ['swap plug', 'swap lead', 'swap coil', 'swap injector', 'speedDropWhenCut', 'exhaustTemperature'];
const possible = (check: Check, evidence: Evidence): boolean =>
  applies(check.needs, evidence.sheet) && (evidence.cylinders.length > 1 || !('finding' in check.tells && NEEDS_ANOTHER.includes(check.tells.finding)));

export type Question = {
  readonly checks: readonly Check[];
  readonly worlds: readonly World[];
  /** Whether a cause can have made the plug look as it does. */
  readonly answers: (cause: Cause) => boolean;
  readonly cylinder: number;
  readonly evidence: Evidence;
  readonly scope: Check['scope'];
};

const MOST_CHECKS = 4;
/** Every check costs this much beside its own time: fetching the tool, clearing the way. Minutes, expert estimate. */
const OVERHEAD = 5;

/** Bits a minute. */
export const worth = ({ gainBits, effortMinutes }: Pick<NextCheck, 'gainBits' | 'effortMinutes'>): number => gainBits / (effortMinutes + OVERHEAD);

/** Checks for one cylinder, the most telling a minute first. */
export function nextChecks({ checks, worlds, answers, cylinder, evidence, scope }: Question): NextCheck[] {
  const choices = decided(worlds, answers);
  return checks
    .filter((check) => check.scope === scope && possible(check, evidence) && !made(check, cylinder, evidence))
    .map((check) => ({
      check,
      gain: gainOf('finding' in check.tells ? findingOutcomes(check.tells.finding) : inspectionOutcomes(check.tells), choices, answers),
    }))
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
