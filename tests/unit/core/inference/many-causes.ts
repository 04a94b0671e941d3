import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { solverFor, type Solution } from '../../../../core/inference/posterior.ts';
import { HEALTHY_CYLINDER, HEALTHY_PLUG, HEALTHY_SYMPTOM } from '../../../../core/knowledge/findings.ts';
import { PRIORS, STRENGTHS, type Prior, type Strength } from '../../../../core/knowledge/strengths.ts';
import type { Cause } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { product } from './small-plug.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

/*
 * An engine with many shared causes, so small otherwise that every set of them can be weighed by a formula: each makes the one condition "soot" by noisy-OR
 * (Pearl 1988), some give a misfire, and each cylinder has two causes of its own that show in its spark, a likely and an unlikely one.
 */
const LEAK = 0.01;
const CYLINDERS = [1, 2, 3, 4];
const SOOTY = [1, 2];
const LAST = 4;
const PRIOR_WORDS = Object.keys(PRIORS) as Prior[];
const grounds = { because: 'made up for a test', source: 'common practice' };

const ruledOut: Cause['moved'] = [{ by: { tag: 'choke sticking' }, how: 'ruled out', ...grounds }];

/** @param unlikely whether all of them were ruled out, not every second one */
export const manyCauses = (many: number, unlikely = false): Cause[] => Array.from({ length: many }, (_, i) => cause(`c${String(i).padStart(2, '0')}`, {
  scope: i === 7 ? 'mixture group' : 'engine', prior: PRIOR_WORDS[i % 4]!, makes: [makes('soot', i % 3 === 0 ? 'usually' : 'almost always')],
  moved: unlikely || i % 2 === 1 ? ruledOut : [],
  gives: i % 5 === 0 ? [{ symptom: 'misfire', strength: 'usually', ...grounds }] : [],
}));
const weakSpark = (strength: Strength): Cause['shows'] => [{ finding: 'spark', is: 'weak', strength, ...grounds }];
const tappet = cause('tappet', { scope: 'cylinder', shows: weakSpark('sometimes') });
const valve = cause('valve', { scope: 'cylinder', prior: 'occasional', shows: weakSpark('often'), moved: ruledOut });

const soot = condition('soot', { leak: LEAK, shows: [shows('deposit', 'dry soot', 'usually')] });

export type Felt = 'felt' | 'absent' | 'not asked';
const sheetFor = (felt: Felt): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4, mixture: { kind: 'carburettor', groups: [[1, 2, 3], [4]] } },
  plugs: CYLINDERS.map((cylinder) => ({ cylinder, tip: { deposit: SOOTY.includes(cylinder) ? 'dry soot' : 'none' } })),
  conditions: { tags: ['choke sticking'] },
  cylinderChecks: CYLINDERS.map((cylinder) => ({ cylinder, spark: 'weak' })),
  symptoms: felt === 'felt' ? [{ what: 'misfire' }] : [], symptomsAbsent: felt === 'absent' ? ['misfire'] : [],
});

const GROUP = manyCauses(8)[7]!;

export const sum = (list: readonly number[]): number => list.reduce((all, x) => all + x, 0);
const healthy = (of: Readonly<Record<string, number>>, value: string): number => of[value]! / sum(Object.values(of));
const p = (strength: Strength): number => STRENGTHS[strength];
export const odds = ({ prior, moved }: Cause): number => (PRIORS[prior] / (1 - PRIORS[prior])) / (moved.length > 0 ? 300 : 1);
export const chance = (one: Cause): number => odds(one) / (1 + odds(one));

/** A weak spark with these causes of the cylinder at work; each of them shows it or nothing, so that it is a noisy-OR. */
const weak = (own: readonly Cause[]): number =>
  1 - (1 - healthy(HEALTHY_CYLINDER.spark, 'weak')) * product(own.map(({ shows: [shown] }) => 1 - p(shown!.strength)));

/** What is seen on one cylinder with these shared causes at work, and with its own ones in every way; `fixed`: its valve there. */
function seenOn(cylinder: number, causes: readonly Cause[], fixed: boolean): number {
  const here = causes.filter(({ scope }) => scope === 'engine' || cylinder !== LAST);
  // The carburettor of the last cylinder feeds no other, so its cause belongs to that plug and is summed there.
  const fed = cylinder === LAST ? 1 - chance(GROUP) * p(GROUP.makes[0]!.strength) : 1;
  const clean = (1 - LEAK) * fed * product(here.map(({ makes: [made] }) => 1 - p(made!.strength)));
  const value = SOOTY.includes(cylinder) ? 'dry soot' : 'none';
  const rest = healthy(HEALTHY_PLUG.deposit, value);
  const plug = clean * rest + (1 - clean) * (0.3 * rest + (value === 'dry soot' ? 0.7 : 0));
  // Two changes at most at any cylinder.
  const own = [[], [tappet], [valve], [tappet, valve]].filter((set) => here.length + set.length <= 2 && (!fixed || set.includes(valve)));
  return plug * sum(own.map((set) => product(set.map(odds)) * weak(set)));
}

/** Weight of a set of shared causes against that of none, all that their own causes can be summed; `fixed`: the valve of cylinder 1 there. */
export function weightOf(set: readonly Cause[], felt: Felt, fixed = false): number {
  const quiet = (1 - HEALTHY_SYMPTOM) * product(set.map(({ gives }) => (gives.length > 0 ? 0.3 : 1)));
  const all = product(set.map(odds)) * product(CYLINDERS.map((c) => seenOn(c, set, fixed && c === 1)));
  return all * { felt: 1 - quiet, absent: quiet, 'not asked': 1 }[felt];
}

/** The first state of the valve at a cylinder that all these causes reach: after theirs and the tappet's. */
export const valveAfter = (causes: readonly Cause[]): number => causes.length + 1;

export const setsOf = (causes: readonly Cause[]): Cause[][] =>
  [[], ...causes.map((one) => [one]), ...causes.flatMap((one, i) => causes.slice(i + 1).map((other) => [one, other]))];

export function solved(causes: readonly Cause[], felt: Felt): Solution {
  const evidence = evidenceOf(sheetFor(felt));
  return solverFor(networkFor(knowledge([soot], [...causes, tappet, valve]), evidence))(evidence);
}
/** The sets that were counted, by their causes. */
export const counted = ({ counted: { sets }, network }: Solution): string[] =>
  Array.from(sets.first, (a, s) => [a, sets.second[s]!].filter((v) => v >= 0).map((v) => network.shared[v]!.cause.id).join('+'));
export const nameOf = (set: readonly Cause[]): string => set.map(({ id }) => id).join('+');

export const many = manyCauses(50);
export const few = manyCauses(20);
