import type { NextCheck } from '../../shared/formats/findings.v1.ts';
import { inSentence } from '../domain/words.ts';
import { CYLINDER_FINDINGS } from '../knowledge/findings.ts';
import { STRENGTHS } from '../knowledge/strengths.ts';
import type { Check } from '../knowledge/types.ts';
import { reportProbability, type Mark } from './appearance.ts';
import { applies } from './circumstances.ts';
import { cylinderMark, cylinderRest, type Actor } from './cylinder.ts';
import type { CylinderEvidence, Evidence, Observation } from './evidence.ts';
import type { Flips } from './flips.ts';
import type { Instance } from './network.ts';
import { prepare, type Solution } from './posterior.ts';
import { forEachWorld, type SolvedCylinder } from './solved-cylinder.ts';
import { signedSubsets } from './symptoms.ts';

/** One possible state of a cylinder: the causes at work, how likely, and what would be done about it. */
export type World = { readonly causes: readonly Instance[]; readonly probability: number; readonly decision: string };

/** Worlds less likely than this do not move a decision. */
const NEGLIGIBLE = 1e-5;
const MOST_WORLDS = 300;
/** A check must tell at least this much. */
const LEAST_GAIN = 0.01;

/** Two causes with the same cure are one decision; harmless causes ask for none. */
const decisionOf = (causes: readonly Instance[]): string => [...new Set(causes.filter((i) => !i.cause.harmless).map((i) => i.cause.cure))].sort().join(' + ');

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
    worlds.push({ causes, probability, decision: decisionOf(causes) });
  });
  const likely = worlds.sort((a, b) => b.probability - a.probability).slice(0, MOST_WORLDS);
  const all = likely.reduce((sum, w) => sum + w.probability, 0);
  return likely.map((w) => ({ ...w, probability: w.probability / all }));
}

/** Entropy in bits of what would be done. */
export function decisionEntropy(worlds: readonly { readonly probability: number; readonly decision: string }[]): number {
  const by = new Map<string, number>();
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
    const markFor = (i: Instance): Mark => { const m = marks.get(i.cause.id) ?? cylinderMark(i.cause, seen); marks.set(i.cause.id, m); return m; };
    return { name: value, chance: (world) => reportProbability(rest, world.causes.map(markFor).filter((m) => m.mark > 0)) };
  });
}

function inspectionOutcomes(tells: Extract<Check['tells'], { looksFor: unknown }>): Outcome[] {
  const found = (world: World): number => (world.causes.some((i) => tells.looksFor.includes(i.cause.id)) ? STRENGTHS[tells.finds] : STRENGTHS[tells.falselyFinds]);
  return [{ name: 'found', chance: found }, { name: 'not found', chance: (world) => 1 - found(world) }];
}

function leading(worlds: readonly World[]): string {
  const by = new Map<string, number>();
  for (const { causes, probability } of worlds) for (const { cause } of causes) if (!cause.harmless) by.set(cause.name, (by.get(cause.name) ?? 0) + probability);
  const [first] = [...by].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return first === undefined || first[1] < 0.15 ? 'nothing wrong here' : inSentence(first[0]);
}

type Gain = { readonly bits: number; readonly why: string };

/** Expected drop of the decision's entropy when the check is made. */
function gainOf(outcomes: readonly Outcome[], worlds: readonly World[]): Gain {
  const before = decisionEntropy(worlds);
  let after = 0;
  const told: string[] = [];
  for (const { name, chance } of outcomes) {
    const weighed = worlds.map((w) => ({ ...w, probability: w.probability * chance(w) }));
    const p = weighed.reduce((sum, w) => sum + w.probability, 0);
    if (p < 1e-9) continue;
    const then = weighed.map((w) => ({ ...w, probability: w.probability / p }));
    after += p * decisionEntropy(then);
    if (p >= 0.08) told.push(`"${name}" (${Math.round(100 * p)} %) would point to ${leading(then)}`);
  }
  return { bits: Math.max(0, before - after), why: `${told.join('; ')}.` };
}

const made = (check: Check, cylinder: number, evidence: Evidence): boolean =>
  'finding' in check.tells && evidence.cylinders.some((c) => c.cylinder === cylinder && c.seen.some((o) => 'finding' in check.tells && o.finding === check.tells.finding));

/** A swap needs a second cylinder to swap with. */
const possible = (check: Check, evidence: Evidence): boolean =>
  applies(check.needs, evidence.sheet) && !('finding' in check.tells && check.tells.finding.startsWith('swap') && evidence.cylinders.length < 2);

/** Checks for one cylinder, the most telling a minute first. */
export function nextChecks(checks: readonly Check[], worlds: readonly World[], cylinder: number, evidence: Evidence, scope: Check['scope'], most: number): NextCheck[] {
  return checks
    .filter((check) => check.scope === scope && possible(check, evidence) && !made(check, cylinder, evidence))
    .map((check): NextCheck => {
      const { bits, why } = gainOf('finding' in check.tells ? findingOutcomes(check.tells.finding) : inspectionOutcomes(check.tells), worlds);
      return { id: check.id, name: check.name, ...(scope === 'cylinder' ? { cylinder } : {}), gainBits: Math.round(bits * 1000) / 1000, effortMinutes: check.minutes, why: `${check.how} ${why}` };
    })
    .filter((check) => check.gainBits >= LEAST_GAIN)
    .sort((a, b) => b.gainBits / b.effortMinutes - a.gainBits / a.effortMinutes || (a.id < b.id ? -1 : 1))
    .slice(0, most);
}
