/**
 * Unknowns of as many linear equations. Each row holds the coefficients and, last, the right-hand side.
 * The largest coefficient of the first unknown is the pivot; that unknown is eliminated from the others, which are solved the same way.
 * A singular system gives numbers that are not finite; callers test for that.
 */
export function solveLinear(rows: readonly (readonly number[])[]): readonly number[] {
  const [first] = rows;
  if (first === undefined) return [];
  const pivot = rows.reduce((best, row) => (Math.abs(row[0] ?? 0) > Math.abs(best[0] ?? 0) ? row : best), first);
  const lead = pivot[0] ?? 0;
  const rest = rows.filter((row) => row !== pivot).map((row) => {
    const factor = (row[0] ?? 0) / lead;
    return row.slice(1).map((value, i) => value - factor * (pivot[i + 1] ?? 0));
  });
  const others = solveLinear(rest);
  const known = others.reduce((sum, x, i) => sum + x * (pivot[i + 1] ?? 0), 0);
  return [((pivot.at(-1) ?? 0) - known) / lead, ...others];
}
