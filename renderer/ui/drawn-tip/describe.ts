import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import type { FacetName } from '../../../shared/vocabulary/tip.ts';
import type { Text } from '../../text/index.ts';
import { TIP_PARTS, type TipPart } from './parts.ts';

const PARTS = Object.entries(TIP_PARTS) as [TipPart, readonly FacetName[]][];

/** The drawing in words: what was observed, part by part, and what was not. */
export function describeTip(tip: Tip, words: Text['tray']['tip']): string {
  const said = (facet: FacetName): string[] => {
    const value = tip[facet];
    return value === undefined ? [] : [words.fact(facet, value, tip.unsure?.includes(facet) ?? false)];
  };
  const observed = PARTS.flatMap(([part, facets]) => {
    const facts = facets.flatMap(said);
    return facts.length === 0 ? [] : [words.ofPart(part, facts)];
  });
  const glance = tip.overall === undefined ? [] : [words.atAGlance(tip.overall)];
  if (observed.length + glance.length === 0) return words.nothing;
  const missing = PARTS.filter(([, facets]) => facets.every((facet) => tip[facet] === undefined)).map(([part]) => part);
  return [...glance, ...observed, ...(missing.length === 0 ? [] : [words.notObserved(missing)])].join(' ');
}
