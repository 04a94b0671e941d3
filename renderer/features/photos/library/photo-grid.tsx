import { useVirtualizer } from '@tanstack/react-virtual';
import { memo, useEffect, type KeyboardEvent } from 'react';
import type { PhotoCard } from '../../../../shared/channels-photo.ts';
import { photoAddress } from '../../../app/photo-door.ts';
import { hrefOf } from '../../../app/route.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { useRoom } from '../../../ui/use-room.ts';
import styles from './library.module.css';
import type { PhotoLibrary } from './use-library.ts';

/** A place in the grid, CSS pixels. */
const CELL = { width: 168, height: 188 };
const SUPPOSED = { width: 1200, height: 600 };
/** Rows drawn beyond those in view, so that a quick turn of the wheel does not show bare ground. */
const BEYOND = 3;

const Card = memo(({ card, index }: { card: PhotoCard | undefined; index: number }) => {
  const { photos: { library: words, layOut }, tray, engines: { unnamed } } = useText();
  const engine = useStore((state) => state.engines.find(({ id }) => id === card?.engineId)?.engine.name);
  if (card === undefined) return <span className={styles.card} />;
  const { id, name, place, readingId } = card;
  const where = place === null ? layOut.nowhere : tray.placeName(place);
  return (
    <a className={styles.card} data-index={index} href={hrefOf({ page: 'reading', id: readingId, station: 'photos', field: id })} aria-label={words.open(name, engine ?? unnamed, where)} title={name}>
      <img src={photoAddress(id, 'small')} alt="" decoding="async" draggable={false} />
      <span className={styles.engine}>{engine ?? unnamed}</span>{' '}
      <span className={styles.where}>{where}</span>
    </a>
  );
});

const STEPS: Readonly<Record<string, (columns: number) => number>> = {
  ArrowLeft: () => -1, ArrowRight: () => 1, ArrowUp: (columns) => -columns, ArrowDown: (columns) => columns,
};

/** Any number of photos, of which only those in view are drawn. Arrow keys go from photo to photo. */
export function PhotoGrid({ library, total }: { library: PhotoLibrary; total: number }) {
  const { library: words } = useText().photos;
  const [scroller, room] = useRoom<HTMLDivElement>(SUPPOSED);
  const columns = Math.max(1, Math.floor(room.width / CELL.width));
  // eslint-disable-next-line react-hooks/incompatible-library -- the virtualizer draws anew by itself; nothing here is memoised
  const rows = useVirtualizer({
    count: Math.ceil(total / columns), getScrollElement: () => scroller.current, estimateSize: () => CELL.height, overscan: BEYOND, initialRect: SUPPOSED,
  });
  const drawn = rows.getVirtualItems();
  const [first, last] = [(drawn[0]?.index ?? 0) * columns, Math.min(total - 1, ((drawn.at(-1)?.index ?? 0) + 1) * columns - 1)];
  const { need, cardAt } = library;
  useEffect(() => { need(first, last); }, [need, first, last]);
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = STEPS[event.key]?.(columns);
    const from = event.target instanceof HTMLElement ? Number(event.target.dataset['index']) : NaN;
    const to = from + (step ?? 0);
    if (step === undefined || Number.isNaN(to) || to < 0 || to >= total) return;
    event.preventDefault();
    rows.scrollToIndex(Math.floor(to / columns));
    requestAnimationFrame(() => scroller.current?.querySelector<HTMLElement>(`[data-index="${to}"]`)?.focus({ preventScroll: true }));
  };
  return (
    <div ref={scroller} className={styles.scroller} tabIndex={0} role="region" aria-label={words.title} onKeyDown={onKeyDown}>
      <div className={styles.all} style={{ height: rows.getTotalSize() }}>
        {drawn.map(({ index, start }) => (
          <div key={index} className={styles.row} style={{ transform: `translateY(${start}px)`, gridTemplateColumns: `repeat(${columns}, minmax(0, 1fr))` }}>
            {Array.from({ length: Math.min(columns, total - index * columns) }, (_, i) => index * columns + i)
              .map((at) => <Card key={at} index={at} card={cardAt(at)} />)}
          </div>
        ))}
      </div>
    </div>
  );
}
