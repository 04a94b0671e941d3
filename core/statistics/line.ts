import { studentQuantile } from './student.ts';

export type Point = { readonly x: number; readonly y: number };

/** A least-squares line y = intercept + slope·x through at least three points. */
export type Line = {
  readonly slope: number;
  readonly intercept: number;
  /** Standard error of estimate, never below the floor it was fitted with. */
  readonly error: number;
  readonly count: number;
  readonly meanX: number;
  /** Sum of squared distances of x from its mean. */
  readonly spreadX: number;
};

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/**
 * Least squares. Undefined for fewer than three points, which leave no residual to judge by, or when all x are equal.
 * @param floor least believable error of one y: points may lie on a line by luck
 */
export function leastSquares(points: readonly Point[], floor = 0): Line | undefined {
  const count = points.length;
  const meanX = sum(points.map(({ x }) => x)) / count;
  const meanY = sum(points.map(({ y }) => y)) / count;
  const spreadX = sum(points.map(({ x }) => (x - meanX) ** 2));
  if (count < 3 || spreadX === 0) return undefined;
  const slope = sum(points.map(({ x, y }) => (x - meanX) * (y - meanY))) / spreadX;
  const intercept = meanY - slope * meanX;
  const squares = sum(points.map(({ x, y }) => (y - intercept - slope * x) ** 2));
  return { slope, intercept, count, meanX, spreadX, error: Math.max(floor, Math.sqrt(squares / (count - 2))) };
}

export type Interval = { readonly low: number; readonly middle: number; readonly high: number };

/**
 * Where the line, or one more point about it, should lie at x. Source: any textbook of regression, checked against Johnson, chapter 11.
 * @param of `mean` for the line itself, `next` for one more point
 * @param confidence 0 to 1, both sides together
 */
export function intervalAt(line: Line, x: number, of: 'mean' | 'next', confidence: number): Interval {
  const middle = line.intercept + line.slope * x;
  const share = 1 / line.count + (x - line.meanX) ** 2 / line.spreadX + (of === 'next' ? 1 : 0);
  const half = studentQuantile((1 + confidence) / 2, line.count - 2) * line.error * Math.sqrt(share);
  return { low: middle - half, middle, high: middle + half };
}
