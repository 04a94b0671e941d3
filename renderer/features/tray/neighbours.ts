import type { EnginePlan } from '../../../core/domain/engine-plan.ts';
import { plugKey, type PlugPlace } from '../../../core/domain/plugs.ts';
import type { PlugReading, ReadingSheet, Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { plugAt } from '../../state/places.ts';
import { nearest, type Direction } from './nearest.ts';
import { isTipRead } from './questions.ts';

/** A plug that lies beside another in the engine and that somebody has read. */
export type Neighbour = { readonly place: PlugPlace; readonly tip: Tip };

/** The plug read just before lies to the left or above most often. */
const WAYS: readonly Direction[] = ['left', 'up', 'right', 'down'];

/** The read plugs that lie next to one, at most one each way. */
export function readNeighbours(plan: EnginePlan, sheet: ReadingSheet, { cylinder, position }: PlugPlace): readonly Neighbour[] {
  const here = plan.places.find((place) => place.cylinder === cylinder && place.position === position);
  if (here === undefined) return [];
  const beside = [...new Set(WAYS.map((way) => nearest(here, plan.places, way)))].filter((place) => place !== undefined);
  return beside.flatMap((place) => {
    const tip: PlugReading['tip'] = plugAt(sheet, plugKey(place.cylinder, place.position))?.tip;
    return tip !== undefined && isTipRead(tip) ? [{ place: { cylinder: place.cylinder, position: place.position }, tip }] : [];
  });
}
