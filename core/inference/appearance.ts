import { HEALTHY_PLUG, type PlugFindingName, PLUG_FINDINGS } from '../knowledge/findings.ts';
import type { Condition } from '../knowledge/types.ts';
import type { Observation, PlugEvidence } from './evidence.ts';
import { strengthOf } from './network.ts';

/**
 * How well each set of at most two conditions explains what was seen on one plug, up to a constant factor.
 * `pair` is a symmetric K×K matrix, row by row; its diagonal is not used.
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

function multiplyIn(
  fit: { none: number; single: Float64Array; pair: Float64Array },
  seen: Observation<PlugFindingName>,
  conditions: readonly Condition[],
): void {
  const values: readonly string[] = PLUG_FINDINGS[seen.finding];
  const rest = restProbability(seen.weights, healthyWeights(seen.finding));
  const marks = conditions.map((c) =>
    markOf(
      c.shows.filter((link) => link.finding === seen.finding),
      values,
      seen.weights,
    ),
  );
  const n = conditions.length;
  fit.none *= rest;
  marks.forEach((a, i) => {
    fit.single[i] = (fit.single[i] ?? 0) * reportProbability(rest, [a]);
    for (let j = i + 1; j < n; j += 1) {
      const factor = reportProbability(rest, [a, marks[j] as Mark]);
      fit.pair[i * n + j] = (fit.pair[i * n + j] ?? 0) * factor;
      fit.pair[j * n + i] = fit.pair[i * n + j] ?? 0;
    }
  });
}

/** The fit of every set of conditions to one plug, scaled so that the best is 1. */
export function plugFit(plug: PlugEvidence, conditions: readonly Condition[]): PlugFit {
  const n = conditions.length;
  const fit = { none: 1, single: new Float64Array(n).fill(1), pair: new Float64Array(n * n).fill(1) };
  for (const seen of plug.seen) multiplyIn(fit, seen, conditions);
  const best = Math.max(fit.none, ...fit.single, ...fit.pair.filter((_, i) => Math.floor(i / n) !== i % n));
  return { none: fit.none / best, single: fit.single.map((v) => v / best), pair: fit.pair.map((v) => v / best) };
}
