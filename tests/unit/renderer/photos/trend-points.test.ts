import { describe, expect, it } from 'vitest';
import { trendPoints } from '../../../../renderer/features/photos/compare/trend-points.ts';
import type { ReadingSummary } from '../../../../shared/channels.ts';
import { measure, photo } from './photo.ts';

const reading = (id: string, date: string): ReadingSummary =>
  ({ id, engineId: 'e', title: '', date, state: 'kept', changedAt: '2026-03-14T09:00:00Z', plugsRead: 4, verdicts: [] });
const place = { cylinder: 3, position: 'only' as const };
const newestFirst = [
  { reading: reading('c', '2026-04-18'), photos: [photo({ place, measure: measure({ whiteReference: { kind: 'none' }, darkCoverage: 0.3 }) })] },
  { reading: reading('b', '2026-02-14'), photos: [photo({ place, measure: measure({ whiteReference: { kind: 'estimated', taken: 'bare metal', white: [1, 1, 1] } }) })] },
  { reading: reading('a', '2025-09-06'), photos: [photo({ place }), photo({ place: { cylinder: 1, position: 'only' } })] },
];

describe('the trend of one plug’s place', () => {
  const points = trendPoints(newestFirst, '3', 'end-on', new Map([['a', 0.65], ['c', 0.72]]));

  it('goes from the oldest reading to the newest', () => {
    expect(points.coverage.map(({ day, value }) => [day, value])).toEqual([['2025-09-06', 4], ['2026-02-14', 4], ['2026-04-18', 30]]);
    expect(points.gap.map(({ day, value }) => [day, value])).toEqual([['2025-09-06', 0.65], ['2026-04-18', 0.72]]);
  });

  it('has no colour of a photo without a white, and says which colours are firm', () => {
    expect(points.b.map(({ readingId, value, firm }) => [readingId, value, firm])).toEqual([['a', 18, true], ['b', 18, false]]);
  });

  it('takes only photos from the same side', () => {
    expect(trendPoints(newestFirst, '3', 'side', new Map()).coverage).toEqual([]);
  });
});
