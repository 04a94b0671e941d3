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

type Fit = { readonly single: Float64Array; readonly pair: Float64Array };

function marksOf({ finding, weights }: Observation<PlugFindingName>, conditions: readonly Condition[]): readonly Mark[] {
  const values: readonly string[] = PLUG_FINDINGS[finding];
  return conditions.map((c) =>
    markOf(
      c.shows.filter((link) => link.finding === finding),
      values,
      weights,
    ),
  );
}

/** Multiplies in how much better each set explains the report than no condition does. Conditions that are silent on the finding change nothing. */
function multiplyIn({ single, pair }: Fit, seen: Observation<PlugFindingName>, conditions: readonly Condition[]): void {
  const n = conditions.length;
  const rest = restProbability(seen.weights, healthyWeights(seen.finding));
  const marks = marksOf(seen, conditions);
  for (let i = 0; i < n; i += 1) {
    const a = marks[i] as Mark;
    if (a.mark === 0) continue;
    const alone = reportProbability(rest, [a]) / rest;
    single[i] = (single[i] as number) * alone;
    for (let j = 0; j < n; j += 1) {
      const b = marks[j] as Mark;
      if (j === i || (b.mark > 0 && j < i)) continue;
      const factor = b.mark > 0 ? reportProbability(rest, [a, b]) / rest : alone;
      pair[i * n + j] = (pair[i * n + j] as number) * factor;
      pair[j * n + i] = pair[i * n + j] as number;
    }
  }
}

const known = new WeakMap<readonly Condition[], WeakMap<PlugEvidence['seen'], PlugFit>>();

/** The fit of every set of conditions to what was seen on one plug, scaled so that the best is 1. Worked out once for the same list of observations. */
export function plugFit({ seen }: PlugEvidence, conditions: readonly Condition[]): PlugFit {
  const fits = known.get(conditions) ?? new WeakMap<PlugEvidence['seen'], PlugFit>();
  known.set(conditions, fits);
  const fit = fits.get(seen) ?? fitTo(seen, conditions);
  fits.set(seen, fit);
  return fit;
}

function fitTo(seen: PlugEvidence['seen'], conditions: readonly Condition[]): PlugFit {
  const n = conditions.length;
  const fit = { single: new Float64Array(n).fill(1), pair: new Float64Array(n * n).fill(1) };
  for (const one of seen) multiplyIn(fit, one, conditions);
  let best = 1;
  for (let i = 0; i < n; i += 1) for (let j = 0; j < n; j += 1) best = Math.max(best, (i === j ? fit.single[i] : fit.pair[i * n + j]) as number);
  return { none: 1 / best, single: fit.single.map((v) => v / best), pair: fit.pair.map((v) => v / best) };
}
