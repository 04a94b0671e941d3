import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { PlugKey } from '../domain/plugs.ts';
import { CURE_TRUST, UNCLEANED } from '../knowledge/cures.ts';
import { STRENGTHS } from '../knowledge/strengths.ts';
import type { Cause } from '../knowledge/types.ts';
import { reaches } from './cures-done.ts';
import { heatStepsTaken } from './heat-step-taken.ts';

export type Place = { readonly cause: Cause; readonly cylinders: readonly number[]; readonly plugs: readonly PlugKey[] };
/** What a cure takes from the prior odds of its cause, as a factor below 1. */
export type Treatment = { readonly words: string; readonly factor: number; readonly because: string; readonly source: string; readonly about: string };

/** Nothing on these plugs is from before the work. */
export const freshPlugs = ({ conditions }: ReadingSheet): boolean => (conditions?.tags ?? []).some((tag) => tag === 'plugs new' || tag === 'plugs cleaned');

/** Every plug of the place went one way since the reading before, the way that cures this cause. */
function steppedTheRightWay({ cause, plugs }: Place, sheet: ReadingSheet): boolean {
  if (cause.heatStep === undefined) return false;
  const way = cause.heatStep === 'hotter' ? 1 : -1;
  const taken = heatStepsTaken(sheet);
  return plugs.length > 0 && plugs.every((key) => (taken.get(key) ?? 0) * way > 0);
}

/**
 * A cause that was put right has its prior odds multiplied by one minus the trust in its cure. What is seen now counts once, as at any reading;
 * nothing seen before is counted again. So the same picture after a cure can only speak against the cause that was cured.
 * @returns nothing when the cause was not put right here
 */
export function treatmentOf(place: Place, sheet: ReadingSheet): Treatment | undefined {
  const { kind } = place.cause;
  if (sheet.since === undefined || kind === 'harmless') return undefined;
  const { done = [], tried = [], reading } = sheet.since;
  const now = done.some((cure) => reaches(cure, place)) || steppedTheRightWay(place, sheet);
  if (!now && !tried.some((cure) => reaches(cure, place))) return undefined;
  const { holds, because, source } = CURE_TRUST[kind];
  const full = !now || freshPlugs(sheet);
  const cured = STRENGTHS[holds] * (full ? 1 : UNCLEANED);
  const when = reading.date === undefined ? 'the reading before' : `the reading of ${reading.date.slice(0, 10)}`;
  return {
    words: `put right ${now ? 'since' : 'before'} ${when}`,
    factor: 1 - cured,
    because: full ? because : `${because} The plugs were neither cleaned nor renewed, so it counts for half.`,
    source,
    about: now ? 'since.done' : 'since.tried',
  };
}
