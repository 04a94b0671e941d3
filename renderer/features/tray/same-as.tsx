import { useText } from '../../text/index.ts';
import { Menu, type MenuItem } from '../../ui/menu.tsx';
import type { Neighbour } from './neighbours.ts';
import { takeFrom } from './deeds.ts';
import styles from './entry-head.module.css';
import { FACETS_OF } from './questions.ts';
import type { Hand } from './use-hand.ts';

/** Takes the whole tip of a neighbour, or one part of it, over to the plug at hand. */
export function SameAs({ hand }: { hand: Hand }) {
  const { entry: words, placeName, parts } = useText().tray;
  const itemsOf = (neighbour: Neighbour): readonly MenuItem[] => [
    { words: words.sameTip(placeName(neighbour.place)), onSelect: () => takeFrom(hand, neighbour) },
    ...FACETS_OF.filter(([, facets]) => facets.some((facet) => neighbour.tip[facet] !== undefined)).map(([part, facets]): MenuItem => (
      { words: words.samePart(placeName(neighbour.place), parts[part]), onSelect: () => takeFrom(hand, neighbour, facets) })),
  ];
  return <Menu look="plain" words={words.sameAs} name={words.sameAs} className={styles.deed} disabled={hand.neighbours.length === 0} items={hand.neighbours.flatMap(itemsOf)} />;
}
