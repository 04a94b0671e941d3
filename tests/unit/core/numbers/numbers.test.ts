import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../../core/numbers/normal.ts';
import { solveLinear } from '../../../../core/numbers/solve-linear.ts';

describe('the normal distribution', () => {
  it.each([[0, 0.5], [1, 0.8413447], [1.6448536, 0.95], [-1.96, 0.0249979], [-3, 0.0013499]])('lies below %f with %f (Abramowitz and Stegun, table 26.1, from memory)', (z, share) => {
    expect(Math.abs(normalBelow(z) - share)).toBeLessThan(1e-6);
  });
});

describe('linear equations', () => {
  it('are solved by the numbers that were put in', () => {
    const cell = fc.double({ min: -10, max: 10, noNaN: true });
    const five = { minLength: 5, maxLength: 5 };
    fc.assert(fc.property(fc.array(fc.array(cell, five), five), fc.array(cell, five), (cells, x) => {
      const dominant = cells.map((row, i) => row.map((value, j) => (i === j ? value + 100 : value)));
      const rows = dominant.map((row) => [...row, row.reduce((sum, value, j) => sum + value * x[j]!, 0)]);
      solveLinear(rows).forEach((value, i) => { expect(value).toBeCloseTo(x[i]!, 9); });
    }));
  });

  it('need a pivot: a first coefficient of zero is no hindrance', () => {
    expect(solveLinear([[0, 2, 4], [3, 0, 9]])).toEqual([3, 2]);
  });
});
