/** Evenly spaced directions of a full turn, with their doubled angles for ellipses. */
export type Directions = {
  readonly count: number;
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  readonly cosTwice: Float64Array;
  readonly sinTwice: Float64Array;
};

export function directions(count: number): Directions {
  const turn = (of: (angle: number) => number): Float64Array => Float64Array.from({ length: count }, (_, i) => of((2 * Math.PI * i) / count));
  return { count, cos: turn(Math.cos), sin: turn(Math.sin), cosTwice: turn((t) => Math.cos(2 * t)), sinTwice: turn((t) => Math.sin(2 * t)) };
}
