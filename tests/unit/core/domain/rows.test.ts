import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cylinderRows, endsAndMiddle } from '../../../../core/domain/rows.ts';
import { anyEngine } from '../../../fixtures/any-engine.ts';

describe('cylinder rows', () => {
  it('hold every cylinder of any engine exactly once', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      const placed = cylinderRows(engine).flatMap((row) => row.cylinders);
      expect([...placed].sort((a, b) => a - b)).toEqual(Array.from({ length: engine.cylinders }, (_, i) => i + 1));
    }));
  });

  it('keep cylinders that the recorded banks forgot in a row of their own', () => {
    expect(cylinderRows({ use: 'road', cylinders: 6, layout: 'vee', banks: [[1, 2, 3]] })).toEqual([
      { cylinders: [1, 2, 3], derived: false }, { cylinders: [4, 5, 6], derived: true },
    ]);
  });
});

describe('ends and middle', () => {
  it('are 1 and 4 against 2 and 3 in a straight four', () => {
    expect(endsAndMiddle({ use: 'road', cylinders: 4, layout: 'inline' })).toEqual({ ends: [1, 4], middle: [2, 3] });
  });

  it('are told apart in each bank of a vee', () => {
    expect(endsAndMiddle({ use: 'road', cylinders: 6, layout: 'vee' })).toEqual({ ends: [1, 5, 2, 6], middle: [3, 4] });
  });

  it.each(['single', 'radial'] as const)('do not exist in a %s engine', (layout) => {
    expect(endsAndMiddle({ use: 'aircraft', cylinders: layout === 'single' ? 1 : 9, layout })).toEqual({ ends: [], middle: [] });
  });

  it('do not exist in a twin', () => {
    expect(endsAndMiddle({ use: 'road', cylinders: 2, layout: 'inline' })).toEqual({ ends: [], middle: [] });
  });
});
