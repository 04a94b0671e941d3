import { describe, expect, it } from 'vitest';
import { gapSets } from '../../../../core/wear/gap-record.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';

const sheet = (conditions: ReadingSheet['conditions'], gaps: readonly number[], gapNewMm?: number): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, date: '2026-01-05', engine: { use: 'road', cylinders: 2 }, conditions,
  plugs: gaps.map((gapMm, i) => ({ cylinder: i + 1, measured: { gapMm }, fitted: { electrode: 'nickel', ...(gapNewMm !== undefined && { gapNewMm }) } })),
});

describe('the sets of plugs in an engine’s record', () => {
  it('take the mean gap of each reading, and the gap when new as the first', () => {
    expect(gapSets([sheet({ distanceKm: 10_000 }, [0.7, 0.8], 0.65), sheet({ distanceKm: 20_000 }, [0.8, 0.82], 0.65)])).toEqual([{
      unit: '1000 km', metal: 'nickel', newGap: 0.65, until: '2026-01-05', readings: [{ at: 0, gap: 0.65 }, { at: 10, gap: 0.75 }, { at: 20, gap: 0.81 }],
    }]);
  });

  it('begin anew with new plugs, with a running length that fell, and with another unit', () => {
    const lengths = (sheets: readonly ReadingSheet[]): readonly number[] => gapSets(sheets).map(({ readings }) => readings.length);
    expect(lengths([sheet({ distanceKm: 900 }, [0.7]), sheet({ distanceKm: 1000, tags: ['plugs new'] }, [0.7])])).toEqual([1, 1]);
    expect(lengths([sheet({ distanceKm: 900 }, [0.7]), sheet({ distanceKm: 100 }, [0.7])])).toEqual([1, 1]);
    expect(lengths([sheet({ distanceKm: 900 }, [0.7]), sheet({ hours: 1000 }, [0.7])])).toEqual([1, 1]);
  });

  it('hold nothing from a reading without a gap or without its running length', () => {
    expect(gapSets([sheet({}, [0.7]), sheet({ hours: 5 }, [])])).toEqual([]);
  });
});
