export type Triple = readonly [number, number, number];

/** Three rows of three. */
export type Matrix = readonly [Triple, Triple, Triple];

const dot = (row: Triple, [x, y, z]: Triple): number => row[0] * x + row[1] * y + row[2] * z;

export const applied = ([first, second, third]: Matrix, vector: Triple): Triple => [dot(first, vector), dot(second, vector), dot(third, vector)];

/** The matrix that does what `second` does after what `first` did. */
export function after(second: Matrix, first: Matrix): Matrix {
  const columns = [0, 1, 2].map((i): Triple => [first[0][i] ?? 0, first[1][i] ?? 0, first[2][i] ?? 0]);
  const row = (r: Triple): Triple => [dot(r, columns[0] ?? r), dot(r, columns[1] ?? r), dot(r, columns[2] ?? r)];
  return [row(second[0]), row(second[1]), row(second[2])];
}

export const scaled = (matrix: Matrix, factor: number): Matrix => matrix.map(([a, b, c]) => [a * factor, b * factor, c * factor]) as unknown as Matrix;

export const diagonal = ([a, b, c]: Triple): Matrix => [[a, 0, 0], [0, b, 0], [0, 0, c]];
