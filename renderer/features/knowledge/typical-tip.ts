import type { PlugFindingName } from '../../../core/knowledge/findings.ts';
import { STRENGTHS } from '../../../core/knowledge/strengths.ts';
import type { Appearance, Condition } from '../../../core/knowledge/types.ts';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { FACET_NAMES, type FacetName } from '../../../shared/vocabulary/tip.ts';
import { TIP_PARTS, type TipPart } from '../../ui/drawn-tip/index.ts';

const isFacet = (name: PlugFindingName): name is FacetName => (FACET_NAMES as readonly string[]).includes(name);
const byStrength = (a: Appearance, b: Appearance): number => STRENGTHS[b.strength] - STRENGTHS[a.strength];

/** A tip as the condition shows it most often: of each facet the value with the strongest word. What is seen less than often is left undrawn. */
export function typicalTip({ shows }: Pick<Condition, 'shows'>): Tip {
  const strongest = [...shows].sort(byStrength).filter(({ finding, strength }) => isFacet(finding) && STRENGTHS[strength] >= STRENGTHS.often);
  return Object.fromEntries([...strongest].reverse().map(({ finding, is }) => [finding, is]));
}

export type PartShown = { readonly part: TipPart | 'measured'; readonly shows: readonly Appearance[] };

/** What the condition shows, part by part in the order in which one looks; within a part by facet, the strongest word first. */
export function shownByPart({ shows }: Pick<Condition, 'shows'>): readonly PartShown[] {
  const inOrder = (facets: readonly PlugFindingName[]): Appearance[] =>
    facets.flatMap((facet) => shows.filter(({ finding }) => finding === facet).sort(byStrength));
  const parts = (Object.entries(TIP_PARTS) as [TipPart, readonly FacetName[]][]).map(([part, facets]): PartShown => ({ part, shows: inOrder(facets) }));
  const rest = [...new Set(shows.map(({ finding }) => finding).filter((finding) => !isFacet(finding)))];
  return [...parts, { part: 'measured' as const, shows: inOrder(rest) }].filter((each) => each.shows.length > 0);
}
