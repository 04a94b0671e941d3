import type { PlugKey } from '../../../../core/domain/plugs.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { photosAt } from '../lay-out/steps.ts';
import type { PhotographedReading } from './use-engine-photos.ts';

export const QUANTITIES = ['lightness', 'a', 'b', 'coverage', 'gap'] as const;
export type TrendQuantity = (typeof QUANTITIES)[number];

/** One value at one reading. `firm`: on a white that was pointed out, or measured by hand. */
export type TrendPoint = { readonly readingId: string; readonly day: string; readonly value: number; readonly firm: boolean };

type Seen = { readonly [Q in Exclude<TrendQuantity, 'gap'>]?: number } & { readonly firm: boolean };

/** What one photo adds: colours only where there is a white, the dark share wherever it was measured (percent). */
function seenIn({ measure, colour }: PhotoRecord): Seen {
  const { regions, whiteReference, darkCoverage } = measure ?? {};
  const nose = colour === 'yes' && whiteReference !== undefined && whiteReference.kind !== 'none' ? regions?.nose?.lab : undefined;
  return {
    firm: whiteReference?.kind === 'patch',
    ...(nose !== undefined && { lightness: nose[0] ?? 0, a: nose[1] ?? 0, b: nose[2] ?? 0 }),
    ...(darkCoverage !== undefined && { coverage: 100 * darkCoverage }),
  };
}

/** How a plug's place changed from reading to reading, the oldest first. `gaps`: the gap measured at a reading (mm), by its id. */
export function trendPoints(readings: readonly PhotographedReading[], plug: PlugKey, view: PhotoRecord['view'], gaps: ReadonlyMap<string, number>):
  Readonly<Record<TrendQuantity, readonly TrendPoint[]>> {
  const days = readings.toReversed().map(({ reading, photos }) => {
    const photo = photosAt(photos, plug).find((one) => one.view === view);
    return { readingId: reading.id, day: (reading.date ?? reading.changedAt).slice(0, 10), seen: photo && seenIn(photo), gap: gaps.get(reading.id) };
  });
  const of = (quantity: TrendQuantity): readonly TrendPoint[] => days.flatMap(({ readingId, day, seen, gap }) => {
    const value = quantity === 'gap' ? gap : seen?.[quantity];
    return value === undefined ? [] : [{ readingId, day, value, firm: quantity === 'gap' || quantity === 'coverage' || seen?.firm === true }];
  });
  return { lightness: of('lightness'), a: of('a'), b: of('b'), coverage: of('coverage'), gap: of('gap') };
}
