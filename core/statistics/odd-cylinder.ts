/** Which cylinder of a set differs from the rest, if the numbers can show it. */

export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const [upper = NaN, lower = NaN] = [sorted[half], sorted[half - 1]];
  return sorted.length % 2 === 1 ? upper : (lower + upper) / 2;
}

/** Median of the distances from the median. */
export function medianDistance(values: readonly number[]): number {
  const middle = medianOf(values);
  return medianOf(values.map((value) => Math.abs(value - middle)));
}

/** One standard deviation of normal readings is this many median distances. */
const DISTANCE_PER_DEVIATION = 0.6745;

/**
 * 0.6745·(value - median)/median distance. Source: Iglewicz and Hoaglin, How to Detect and Handle Outliers (1993). Grade: published.
 * @param repeatability of the gauge, one deviation, in the unit of the values; without it identical readings make any difference an outlier
 */
export function modifiedScore(value: number, values: readonly number[], repeatability = 0): number {
  const distance = Math.max(medianDistance(values), DISTANCE_PER_DEVIATION * repeatability);
  return (DISTANCE_PER_DEVIATION * (value - medianOf(values))) / distance;
}

/** Critical Q by number of values, 4 to 10. Source: Rorabacher, Anal. Chem. 63 (1991) 139, two-sided. Grade: published; 95 % at n = 4 to 9 memory. */
const CRITICAL: Record<90 | 95, readonly number[]> = {
  90: [0.765, 0.642, 0.56, 0.507, 0.468, 0.437, 0.412],
  95: [0.829, 0.71, 0.625, 0.568, 0.526, 0.493, 0.466],
};
/** Undefined outside 4 to 10 values. */
export const criticalQ = (count: number, percent: 90 | 95 = 90): number | undefined => CRITICAL[percent][count - 4];

/** Distance of an end value from its neighbour, as a share of the whole spread; 0 when all are equal. */
export function dixonQ(values: readonly number[], end: 'lowest' | 'highest'): number {
  const sorted = [...values].sort((a, b) => (end === 'lowest' ? a - b : b - a));
  const [first = NaN, second = NaN, last = NaN] = [sorted[0], sorted[1], sorted.at(-1)];
  return first === last ? 0 : (second - first) / (last - first);
}

export type Odd =
  | { readonly verdict: 'shown'; readonly index: number }
  /** The set differs too little, or is too small, for the test: this is not proof that all are alike. */
  | { readonly verdict: 'not shown' }
  | { readonly verdict: 'too few' };

const LARGEST_SCORE = 3.5;

/**
 * The one cylinder that differs. Needs four values; up to ten it must pass both tests, score and Q at 90 %, above ten the score alone.
 * One test a set, one outlier at most. Take whole banks apart first: a weak bank is not an outlier of the engine.
 */
export function oddCylinder(values: readonly number[], repeatability: number): Odd {
  if (values.length < 4) return { verdict: 'too few' };
  const scores = values.map((value) => modifiedScore(value, values, repeatability));
  const worst = Math.max(...scores.map(Math.abs));
  const index = scores.findIndex((score) => Math.abs(score) === worst);
  const q = dixonQ(values, (scores[index] ?? 0) < 0 ? 'lowest' : 'highest');
  const critical = criticalQ(values.length);
  return worst > LARGEST_SCORE && (critical === undefined || q > critical) ? { verdict: 'shown', index } : { verdict: 'not shown' };
}

/** Share of the air lost in a differential test, 0 to 1. @param held pressure held @param supply pressure supplied, same unit */
export const differentialLoss = (held: number, supply: number): number => 1 - held / supply;
