import { UNCERTAIN_NAMES, type Uncertain } from './uncertain.ts';

/** What is believed of the six uncertain numbers of one engine: a normal distribution, in units of each number's own standard deviation. */
export type Belief = {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  /** How many readings made it so; 0 is the model as it stands. */
  readonly readings: number;
};

/** Before any reading of the engine: nothing known beyond the widths themselves. */
export const PRIOR: Belief = {
  mean: UNCERTAIN_NAMES.map(() => 0), readings: 0,
  covariance: UNCERTAIN_NAMES.map((_, i) => UNCERTAIN_NAMES.map((__, j) => (i === j ? 1 : 0))),
};

/** By how many kelvin one standard deviation of each uncertain number moves a temperature. */
export type Slopes = Uncertain;

const slopeList = (slopes: Slopes): readonly number[] => UNCERTAIN_NAMES.map((name) => slopes[name]);
const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0);

/** Mean and variance, K and K², of how far the truth lies from the model at one point of running. */
export function offsetAt({ mean, covariance }: Belief, slopes: Slopes): { readonly mean: number; readonly variance: number } {
  const list = slopeList(slopes);
  return { mean: dot(list, mean), variance: dot(list, covariance.map((row) => dot(row, list))) };
}

/**
 * The belief after the offset at one point of running became known better: what it was before goes to what it is after, and the six numbers follow by
 * as much as they had to do with it. Exact for normal distributions (conditioning on a linear function).
 */
export function afterOffset(belief: Belief, slopes: Slopes, after: { readonly mean: number; readonly variance: number }): Belief {
  const before = offsetAt(belief, slopes);
  if (before.variance === 0) return { ...belief, readings: belief.readings + 1 };
  const gain = belief.covariance.map((row) => dot(row, slopeList(slopes)) / before.variance);
  return {
    mean: belief.mean.map((m, i) => m + (gain[i] ?? 0) * (after.mean - before.mean)),
    covariance: belief.covariance.map((row, i) => row.map((c, j) => c - (gain[i] ?? 0) * (gain[j] ?? 0) * (before.variance - after.variance))),
    readings: belief.readings + 1,
  };
}

/** The likeliest six numbers that move a temperature to a given number of standard deviations from its middle; 0 is the middle itself. */
export function drawAt(belief: Belief, slopes: Slopes, deviations: number): Uncertain {
  const list = slopeList(slopes);
  const deviation = Math.sqrt(offsetAt(belief, slopes).variance);
  const draw = belief.mean.map((m, i) => m + (deviations * dot(belief.covariance[i] ?? [], list)) / deviation);
  return Object.fromEntries(UNCERTAIN_NAMES.map((name, i) => [name, draw[i] ?? 0])) as Uncertain;
}
