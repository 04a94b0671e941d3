/** Solves linear equations given as rows with their right side last, by elimination with pivoting; nothing if they do not determine the answer. */
export function solved(equations: readonly (readonly number[])[]): number[] | undefined {
  const rows = equations.map((row) => [...row]);
  const n = rows.length;
  for (let column = 0; column < n; column += 1) {
    const pivot = rows.slice(column).reduce((best, row, i) => (Math.abs(row[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0) ? column + i : best), column);
    [rows[column], rows[pivot]] = [rows[pivot] ?? [], rows[column] ?? []];
    const top = rows[column] ?? [];
    const head = top[column] ?? 0;
    if (Math.abs(head) < 1e-12) return undefined;
    rows.forEach((row, i) => {
      if (i === column) return;
      const factor = (row[column] ?? 0) / head;
      for (let j = column; j <= n; j += 1) row[j] = (row[j] ?? 0) - factor * (top[j] ?? 0);
    });
  }
  return rows.map((row, i) => (row[n] ?? 0) / (row[i] ?? 1));
}
