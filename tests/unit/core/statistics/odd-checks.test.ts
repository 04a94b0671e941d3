import { describe, expect, it } from 'vitest';
import { oddCylinders } from '../../../../core/statistics/odd-checks.ts';
import type { CylinderCheck } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';

const engine = (cylinders: number, banks?: number[][]): Engine => ({ use: 'road', cylinders, ...(banks && { banks }) });
const compression = (...values: readonly number[]): CylinderCheck[] => values.map((compressionKPa, i) => ({ cylinder: i + 1, compressionKPa }));

describe('the odd cylinder', () => {
  it('is shown where it falls far below three that agree', () => {
    expect(oddCylinders(compression(1200, 1210, 600, 1190), engine(4))).toEqual([{ check: 'compression', count: 4, verdict: 'shown', cylinder: 3 }]);
  });

  it('is not shown at a tenth below among four: so few cannot tell (Dixon Q 90 % at n = 4 is 0.765, Rorabacher 1991)', () => {
    expect(oddCylinders(compression(1200, 1230, 1090, 1190), engine(4))).toEqual([{ check: 'compression', count: 4, verdict: 'not shown' }]);
  });

  it('is not asked for with three values, and needs at least two to be spoken of', () => {
    expect(oddCylinders(compression(1200, 1200, 600), engine(4))).toEqual([{ check: 'compression', count: 3, verdict: 'too few' }]);
    expect(oddCylinders(compression(1200), engine(4))).toEqual([]);
  });

  it('is no whole weak bank, but is found inside one', () => {
    const banks = [[1, 2, 3, 4], [5, 6, 7, 8]];
    const [weak] = oddCylinders(compression(1200, 1210, 1190, 1205, 1000, 1010, 990, 1005), engine(8, banks));
    expect(weak?.verdict).toBe('not shown');
    const [inside] = oddCylinders(compression(1200, 1210, 1190, 1205, 1000, 1010, 600, 1005), engine(8, banks));
    expect(inside).toMatchObject({ verdict: 'shown', cylinder: 7 });
  });

  it('is looked for in air loss and exhaust temperature as well', () => {
    const checks: CylinderCheck[] = [1, 2, 3, 4, 5, 6].map((cylinder) => ({
      cylinder, differential: { heldKPa: cylinder === 2 ? 300 : 520 + cylinder, supplyKPa: 550 }, egtC: cylinder === 5 ? 560 : 700 + cylinder,
    }));
    expect(oddCylinders(checks, engine(6))).toEqual([
      { check: 'differential', count: 6, verdict: 'shown', cylinder: 2 }, { check: 'exhaust', count: 6, verdict: 'shown', cylinder: 5 },
    ]);
  });
});
