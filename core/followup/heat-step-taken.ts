import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { plugKey, type PlugKey } from '../domain/plugs.ts';
import { numberWords, sentenceStart } from '../domain/words.ts';

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

/** What was done to the heat value since the reading before; undefined when nothing was. */
export function heatStepSentence(sheet: ReadingSheet): string | undefined {
  const taken = [...heatStepsTaken(sheet)];
  const [first] = taken;
  if (first === undefined) return heatValueChanged(sheet) ? 'The heat value was changed since the reading before; by how many steps is not noted at both readings.' : undefined;
  const steps = first[1];
  const even = taken.length === sheet.plugs.length && taken.every(([, other]) => other === steps);
  const size = (n: number): string => `${numberWords(Math.abs(n))} ${Math.abs(n) === 1 ? 'step' : 'steps'} ${n > 0 ? 'hotter' : 'colder'}`;
  const words = even
    ? `every plug stands ${size(steps)} than at the reading before`
    : `since the reading before: ${taken.map(([key, n]) => `cylinder ${key} ${size(n)}`).join(', ')}`;
  const judged = Math.abs(steps) > 1 ? 'More than one step at once cannot be judged step by step.' : 'This reading judges that step; no second one follows from it.';
  return `${sentenceStart(words)}. ${judged}`;
}
