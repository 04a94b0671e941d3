import { ownerOf } from '../../../core/knowledge/line-keys.ts';
import type { Knowledge } from '../../../core/knowledge/types.ts';
import { hrefOf, type Shelf } from '../../app/route.ts';

export const entryHref = (shelf: Shelf, id: string): string => hrefOf({ page: 'knowledge', shelf, entry: id });

export const wordHref = (word: string): string => entryHref('words', word);

/** The shelf on which an id stands; undefined when nothing has it. Causes and conditions share their ids, the others are asked in order. */
function shelfOf(id: string, { causes, conditions, checks, stopRules, barsOnHotter, contradictions, cautions }: Knowledge): Shelf | undefined {
  const lists: readonly (readonly [Shelf, readonly { readonly id: string }[]])[] = [
    ['causes', causes], ['looks', conditions], ['checks', checks], ['stops', stopRules], ['bars', barsOnHotter], ['contradictions', contradictions], ['cautions', cautions],
  ];
  return lists.find(([, list]) => list.some((each) => each.id === id))?.[0];
}

/** Where a line of the knowledge stands, by its key. */
export function lineHref(key: string, knowledge: Knowledge): string {
  const owner = ownerOf(key);
  const shelf = shelfOf(owner, knowledge);
  return shelf === undefined ? hrefOf({ page: 'knowledge' }) : hrefOf({ page: 'knowledge', shelf, entry: owner, ...(key !== owner && { line: key }) });
}
