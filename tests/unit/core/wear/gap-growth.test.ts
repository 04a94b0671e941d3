import { describe, expect, it } from 'vitest';
import { intervalAt, leastSquares, type Line } from '../../../../core/statistics/line.ts';
import { studentQuantile } from '../../../../core/statistics/student.ts';
import { inchToMm, mileToKm } from '../../../../core/units.ts';
import { DEFAULT_GROWTH, gapForecast, gapInterval } from '../../../../core/wear/gap-growth.ts';
import type { Inch, Mile } from '../../../../shared/quantities.ts';
import { checkAgainstOutside, inputsOf } from '../../../fixtures/check-values.ts';

function line(id: string): Line {
  const { x, y } = inputsOf(id) as unknown as { x: readonly number[]; y: readonly number[] };
  return leastSquares(x.map((one, i) => ({ x: one, y: y[i]! })))!;
}
const interval = (id: string, of: 'mean' | 'next', end: 'low' | 'high') => (): number => intervalAt(line(id), inputsOf(id).x0!, of, 0.95)[end];

describe('gap growth against the outside', () => {
  checkAgainstOutside('D', {
    D01: () => DEFAULT_GROWTH.nickel.high, // the row quotes the source with the fastest growth; the default is a range that takes in the slower ones too
    D02: () => inchToMm(inputsOf('D02').inch as Inch) / (mileToKm(inputsOf('D02').miles as Mile) / 1000),
    D03: () => line('D03').slope, D04: () => line('D04').intercept, D05: () => line('D05').error,
    D06: interval('D06', 'mean', 'low'), D07: interval('D07', 'mean', 'high'), D08: interval('D08', 'next', 'low'), D09: interval('D09', 'next', 'high'),
    D10: interval('D10', 'next', 'low'), D11: interval('D11', 'next', 'high'),
    D12: () => studentQuantile(inputsOf('D12').p!, inputsOf('D12').df!),
  });
});

describe('the forecast of a gap', () => {
  const steady = [0, 10, 20, 30, 40].map((at) => ({ at, gap: 0.8 + 0.006 * at }));

  it('finds the day of a gap that grows evenly, worked by hand: 0.8 + 0.006 per 1000 km reaches 1.1 at 50', () => {
    const { from, early, likely, late } = gapForecast(steady, 1.1, 'nickel');
    expect(from).toBe('record');
    expect(likely).toBeCloseTo(50, 0);
    expect(early!).toBeLessThan(likely!);
    expect(late!).toBeGreaterThan(likely!);
  });

  it('says that two points give no interval', () => {
    const forecast = gapForecast(steady.slice(0, 2), 1.1, 'nickel');
    expect(gapInterval(steady.slice(0, 2), 20)).toBeUndefined();
    expect(forecast.from).toBe('default');
    expect(forecast.notes).toEqual(['two readings']);
    expect(forecast.early).toBeCloseTo(10 + 0.24 / DEFAULT_GROWTH.nickel.high, 9);
  });

  it('says when the late end is not bounded, as with three readings that scatter', () => {
    const { late, notes } = gapForecast([{ at: 0, gap: 0.8 }, { at: 10, gap: 0.9 }, { at: 20, gap: 0.84 }], 1.2, 'nickel');
    expect(late).toBeUndefined();
    expect(notes[0]).toBe('no late bound');
  });

  it('is wide with three points: at least 12.7 gauge errors to either side, whatever luck put them on a line', () => {
    const { low, high } = gapInterval(steady.slice(0, 3), 20)!;
    expect((high - low) / 2).toBeGreaterThan(12.7 * 0.02);
  });

  it('has nothing to say without a reading', () => {
    expect(gapForecast([], 1, 'iridium')).toEqual({
      from: 'default', early: undefined, likely: undefined, late: undefined, notes: ['no reading'],
    });
  });
});
