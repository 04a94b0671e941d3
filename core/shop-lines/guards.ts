import type { Findings } from '../../shared/formats/findings.v1.ts';
import { RISKS, type Risk } from '../../shared/vocabulary/verdicts.ts';

type Heat = Findings['heat'];

const HELD = 'Lines of your own would have led to a hotter step; the program’s own knowledge does not allow it, and it decides.';

/**
 * The heat step where lines of a workshop take part: never hotter than the program's own knowledge advises without them, and after all that
 * either of the two asks for first.
 */
export function guardedHeat(withLines: Heat, without: Heat): Heat {
  if (withLines.step > without.step) return { ...without, why: [HELD, ...without.why] };
  if (withLines.step < without.step) return withLines;
  return { ...withLines, first: [...new Set([...withLines.first, ...without.first])], cautions: [...new Set([...withLines.cautions, ...without.cautions])] };
}

/** The graver of two risks: lines of a workshop raise a warning, they never take one away. */
export const graver = (a: Risk, b: Risk): Risk => RISKS[Math.max(RISKS.indexOf(a), RISKS.indexOf(b))] as Risk;
