import type { ReadingSheet, Tip } from '../../shared/formats/reading-sheet.v1.ts';
import type { FacetName } from '../../shared/vocabulary/tip.ts';
import type { TipSign } from '../../shared/vocabulary/heat.ts';

/** A facet that was seen and not doubted. */
const seen = <F extends FacetName>(tip: Tip, facet: F): Tip[F] => ((tip.unsure ?? []).includes(facet) ? undefined : tip[facet]);

const isBare = (tip: Tip): boolean => ['bare', 'fine powder'].includes(seen(tip, 'noseSurface') ?? '');

/** Dry soot lies on the nose. */
const isSooty = (tip: Tip): boolean => seen(tip, 'deposit') === 'dry soot' || seen(tip, 'noseSurface') === 'matt soot';

/** The nose is clean while soot lies deep down where it is cooler: the nose burnt its own away. A clean nose alone proves nothing. */
const isCleaned = (tip: Tip): boolean =>
  ['thin', 'wide'].includes(seen(tip, 'sootRing') ?? '') && isBare(tip) && ['none', 'light dusting'].includes(seen(tip, 'deposit') ?? '');

const isMelted = (tip: Tip): boolean => seen(tip, 'centreElectrode') === 'melted' || seen(tip, 'groundElectrode') === 'melted';

/**
 * What the tips of a set show about their temperature at the running they were pulled from. A sign counts when more than half of the tips looked at show
 * it: one odd tip tells of its cylinder, not of the plug. Nothing after an engine that was not warm, or idled before it was stopped. Grade: judgement.
 */
export function tipSigns({ conditions = {}, plugs }: ReadingSheet): readonly Exclude<TipSign, 'known good'>[] {
  const { duty, stop, warm } = conditions;
  if (warm === false || (stop !== 'clean cut' && duty !== 'idle')) return [];
  const tips = plugs.flatMap(({ tip }) => (tip !== undefined && (tip.noseSurface ?? tip.deposit ?? tip.centreElectrode) !== undefined ? [tip] : []));
  const most = (shows: (tip: Tip) => boolean): boolean => 2 * tips.filter(shows).length > tips.length;
  const hard = duty === 'full load';
  return [
    ...(most(isSooty) ? ['soot kept' as const] : []),
    ...(most(isCleaned) ? ['self-cleaned' as const] : []),
    ...(hard && most(isBare) ? ['not blistered' as const] : []),
    ...(most((tip) => seen(tip, 'noseSurface') === 'blistered') ? ['blistered' as const] : []),
    ...(most(isMelted) ? ['melted' as const] : []),
  ];
}
