import type { PlugReading, Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS, type FacetName } from '../../../shared/vocabulary/tip.ts';
import { TIP_PARTS, type Question, type TipPart } from '../../ui/drawn-tip/index.ts';

/** Asked first of every plug: what tells most for the least looking. */
export const QUICK: readonly Question[] = ['overall', 'noseColour', 'noseSurface', 'deposit', 'coverage'];

/** Every part with its facets. */
export const FACETS_OF = Object.entries(TIP_PARTS) as readonly (readonly [TipPart, readonly FacetName[]])[];

/** The rest, part by part. */
export const LATER: readonly (readonly [part: TipPart, questions: readonly FacetName[]])[] =
  FACETS_OF.map(([part, facets]) => [part, facets.filter((facet) => !QUICK.includes(facet))]);

/** Every question in the order in which they are asked. */
export const SEQUENCE: readonly Question[] = [...QUICK, ...LATER.flatMap(([, facets]) => facets)];

export const FIRST: Question = 'overall';

export const partOf = (question: Question): TipPart | undefined => LATER.find(([, facets]) => (facets as readonly Question[]).includes(question))?.[0];

export const valuesOf = (question: Question): readonly string[] => (question === 'overall' ? OVERALL : TIP_FACETS[question]);

/** The question so many steps on; it stays at the ends. */
export function stepped(question: Question, steps: number): Question {
  const at = Math.min(SEQUENCE.length - 1, Math.max(0, SEQUENCE.indexOf(question) + steps));
  return SEQUENCE[at] ?? question;
}

export const FACETS_IN_ALL = FACET_NAMES.length;
export const enteredFacets = (tip: Tip | undefined): number => FACET_NAMES.filter((facet) => tip?.[facet] !== undefined).length;
/** Somebody said something of this tip, be it no more than at a glance. */
export const isTipRead = (tip: Tip | undefined): boolean => tip?.overall !== undefined || enteredFacets(tip) > 0;
/** Somebody looked at this plug or measured it; without that a verdict on it would only be a guess from its neighbours. */
export const isPlugRead = (plug: PlugReading | undefined): boolean => isTipRead(plug?.tip) || plug?.measured !== undefined;
