import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { plugKey, type PlugKey } from '../domain/plugs.ts';

const stepsOf = (plugs: ReadingSheet['plugs']): ReadonlyMap<PlugKey, number> =>
  new Map(plugs.flatMap(({ cylinder, position, fitted: { heatStepsFromSpecified: steps } = {} }): [PlugKey, number][] => (
    steps === undefined ? [] : [[plugKey(cylinder, position), steps]]
  )));

/**
 * How many steps hotter (positive) or colder (negative) each plug now stands than at the reading before, where both readings say; plugs that
 * stand as before are left out.
 */
export function heatStepsTaken({ since, plugs }: ReadingSheet): ReadonlyMap<PlugKey, number> {
  const before = stepsOf(since?.reading.plugs ?? []);
  return new Map([...stepsOf(plugs)].flatMap(([key, steps]): [PlugKey, number][] => {
    const change = steps - (before.get(key) ?? steps);
    return change === 0 ? [] : [[key, change]];
  }));
}

/** The heat value was changed since the reading before, be it by a number of steps that was noted or by one that was not. */
export const heatValueChanged = (sheet: ReadingSheet): boolean =>
  sheet.since !== undefined && (heatStepsTaken(sheet).size > 0 || (sheet.conditions?.tags ?? []).includes('heat step changed'));
