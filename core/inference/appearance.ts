import { HEALTHY_PLUG, type PlugFindingName, PLUG_FINDINGS } from '../knowledge/findings.ts';
import { once } from '../once.ts';
import type { Condition } from '../knowledge/types.ts';
import type { Observation, PlugEvidence } from './evidence.ts';
import { strengthOf } from './network.ts';

/**
 * How well each set of at most two conditions explains what was seen on one plug, up to a constant factor.
 * `pair` is a symmetric K×K matrix, row by row; its diagonal holds `single` again.
 */
export type PlugFit = { readonly none: number; readonly single: Float64Array; readonly pair: Float64Array };

/** A source marks a finding with probability `mark`; together with marking, the report seen has probability `report`. */
export type Mark = { readonly mark: number; readonly report: number };

/**
 * The marking model, which for a finding of two values is the noisy-OR with leak: each source marks the finding independently; unmarked it
 * looks as on a sound part; marked by several, it shows one of them in proportion to their marks.
 * @param rest probability of the report on a sound part
 */
export function reportProbability(rest: number, marks: readonly Mark[]): number {
  let unmarked = 1;
  let total = 0;
  let report = 0;
  for (const m of marks) {
    unmarked *= 1 - m.mark;
    total += m.mark;
    report += m.report;
  }
  return total === 0 ? rest : unmarked * rest + (1 - unmarked) * (report / total);
}

/** Probability of the report with nothing wrong. */
export function restProbability(weights: readonly number[], healthy: readonly number[]): number {
  const sum = healthy.reduce((a, b) => a + b, 0);
  return healthy.reduce((p, h, i) => p + (h / sum) * (weights[i] ?? 0), 0);
}

/** What one source does to one finding: the sum of its strengths, and the part of it that would be reported as seen. */
export function markOf(
  links: readonly { readonly is: string; readonly strength: Parameters<typeof strengthOf>[0]['strength'] }[],
  values: readonly string[],
  weights: readonly number[],
): Mark {
  let mark = 0;
  let report = 0;
  for (const link of links) {
    const p = strengthOf(link);
    mark += p;
    report += p * (weights[values.indexOf(link.is)] ?? 0);
  }
  return { mark, report };
}

const healthyWeights = (finding: PlugFindingName): number[] => {
  const rest: Readonly<Record<string, number>> = HEALTHY_PLUG[finding];
  return PLUG_FINDINGS[finding].map((value) => rest[value] ?? 0);
};

/**
 * How much better each set of conditions explains one report than no condition does, K×K row by row: pairs, and on the diagonal each one alone.
 * Conditions that are silent on the finding change nothing.
 */
type Factors = Float64Array;

function factorsOf({ finding, weights }: Observation<PlugFindingName>, conditions: readonly Condition[]): Factors {
  const n = conditions.length;
  const values: readonly string[] = PLUG_FINDINGS[finding];
  const rest = restProbability(weights, healthyWeights(finding));
  const marks = conditions.map((c) =>
    markOf(
      c.shows.filter((link) => link.finding === finding),
      values,
      weights,
    ),
  );
  const alone = marks.map((m) => reportProbability(rest, [m]) / rest);
  const factors = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      const [a, b] = [marks[i] as Mark, marks[j] as Mark];
      const both = a.mark > 0 && b.mark > 0 && i !== j;
      const factor = both ? reportProbability(rest, [a, b]) / rest : (alone[a.mark > 0 ? i : j] as number);
      factors[i * n + j] = factor;
      factors[j * n + i] = factor;
    }
  return factors;
}

const factorsKnown = new WeakMap<readonly Condition[], WeakMap<readonly number[], Factors>>();

/** Worked out once for the same weights: those of a value read off a list are the same list everywhere. */
function factorsFor(seen: Observation<PlugFindingName>, conditions: readonly Condition[]): Factors {
  return once(once(factorsKnown, conditions, () => new WeakMap<readonly number[], Factors>()), seen.weights, () => factorsOf(seen, conditions));
}

/**
 * The fit of every set of conditions to what was seen on one plug, scaled so that the best is 1.
 * @param whole the fit to all that was seen, and what of it is left aside; the scale is then left as it is
 */
export function plugFit(seen: PlugEvidence['seen'], conditions: readonly Condition[], whole?: { readonly fit: PlugFit; readonly seen: PlugEvidence['seen'] }): PlugFit {
  return whole === undefined ? fitTo(seen, conditions) : fitWithout(whole.fit, whole.seen.filter((o) => !seen.includes(o)), conditions);
}

function fitTo(seen: PlugEvidence['seen'], conditions: readonly Condition[]): PlugFit {
  const n = conditions.length;
  const all = new Float64Array(n * n).fill(1);
  for (const one of seen) {
    const factors = factorsFor(one, conditions);
    for (let at = 0; at < all.length; at += 1) all[at] = (all[at] as number) * (factors[at] as number);
  }
  let best = 1;
  for (const fit of all) if (fit > best) best = fit;
  for (let at = 0; at < all.length; at += 1) all[at] = (all[at] as number) / best;
  return { none: 1 / best, single: Float64Array.from({ length: n }, (_, k) => all[k * n + k] as number), pair: all };
}

/** Takes some of the reports out of a fit again; up to a constant factor. */
function fitWithout(whole: PlugFit, gone: PlugEvidence['seen'], conditions: readonly Condition[]): PlugFit {
  const n = conditions.length;
  const pair = Float64Array.from(whole.pair);
  for (const one of gone) {
    const factors = factorsFor(one, conditions);
    for (let at = 0; at < pair.length; at += 1) pair[at] = (pair[at] as number) / (factors[at] as number);
  }
  return { none: whole.none, single: Float64Array.from({ length: n }, (_, k) => pair[k * n + k] as number), pair };
}
