/** Arithmetic of the small charts: a scale from values to places, and lines through points. */
export type Point = readonly [x: number, y: number];

/** A scale that maps `from` to `start` and `to` to `end`; values outside are held at the ends. */
export const scale = (from: number, to: number, start: number, end: number) => (value: number): number =>
  start + ((Math.min(Math.max(value, Math.min(from, to)), Math.max(from, to)) - from) / (to - from)) * (end - start);

/** The same by powers of ten; values above 0. */
export const logScale = (from: number, to: number, start: number, end: number) => {
  const even = scale(Math.log10(from), Math.log10(to), start, end);
  return (value: number): number => even(Math.log10(value));
};

export const line = (points: readonly Point[]): string => points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');

/** The area between two lines over the same places. */
export const between = (low: readonly Point[], high: readonly Point[]): string => (low.length === 0 ? '' : `${line([...low, ...[...high].reverse()])}Z`);
