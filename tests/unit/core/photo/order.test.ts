import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { medianOf, quantileOf, spreadAround } from '../../../../core/photo/order.ts';

describe('quantiles', () => {
  it('are those of the sorted numbers, in between linear', () => {
    const anyNumbers = fc.float32Array({ minLength: 1, maxLength: 60, noNaN: true, min: -1000, max: 1000 });
    fc.assert(fc.property(anyNumbers, fc.double({ min: 0, max: 1, noNaN: true }), (numbers, share) => {
      const sorted = numbers.slice().sort();
      const at = share * (sorted.length - 1);
      const [low, high] = [sorted[Math.floor(at)]!, sorted[Math.ceil(at)]!];
      expect(quantileOf(numbers.slice(), share)).toBeCloseTo(low + (at - Math.floor(at)) * (high - low), 3);
    }));
  });
  it('are worked by hand: the median of 5, 1, 4, 2 is 3; of none there is none', () => {
    expect(medianOf(Float32Array.of(5, 1, 4, 2))).toBe(3);
    expect(medianOf(new Float32Array(0))).toBeNaN();
    expect(spreadAround(Float32Array.of(1, 2, 3, 4, 5), 3)).toBeCloseTo(1.4826, 6);
  });
});
