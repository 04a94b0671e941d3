import type { Cure, Since } from '../../shared/formats/reading-sheet.v1.ts';
import type { Cause } from '../knowledge/types.ts';

type Place = { readonly cause: Pick<Cause, 'id' | 'scope'>; readonly cylinders: readonly number[] };

/** Whether a cure was made at this place: one that names cylinders must name all that the cause reaches, unless that is the engine. */
export const reaches = ({ cause, cylinders }: Cure, place: Place): boolean =>
  cause === place.cause.id && (cylinders === undefined || place.cause.scope === 'engine' || place.cylinders.every((n) => cylinders.includes(n)));

/** What was put right on this cylinder since the reading before; a cure without cylinders counts for all. */
export const curesOn = (since: Since | undefined, cylinder: number): readonly Cure[] =>
  (since?.done ?? []).filter(({ cylinders }) => cylinders === undefined || cylinders.includes(cylinder));
