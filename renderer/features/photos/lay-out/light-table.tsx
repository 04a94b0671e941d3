import { useEffect, useRef, useState, type DragEvent, type KeyboardEvent, type ReactNode } from 'react';
import { plugKey, type PlugPlace } from '../../../../core/domain/plugs.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import { usePlaces } from '../../../state/hooks.ts';
import { useText } from '../../../text/index.ts';
import { Button } from '../../../ui/button.tsx';
import { Choice } from '../../../ui/choice.tsx';
import { Said } from '../../../ui/said.tsx';
import { WhiteFilters } from '../light/common-white.tsx';
import { cylinderKeys, onPhotoKey } from './keys.ts';
import { byCapture } from './laying.ts';
import styles from './lay-out.module.css';
import { DRAGGED, PhotoCard } from './photo-card.tsx';
import { photosAt } from './steps.ts';
import { useLaying, type LayingOut } from './use-laying.ts';

const PHOTO = '[data-photo]';
const EACH = ['1', '2', '3'] as const;
const ARROWS: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 };

type CellProps = { readonly title: string; readonly shape: 'plug' | 'none'; readonly onDropped: (id: string) => void; readonly children: ReactNode };

/** Where photos can be laid. */
function Cell({ title, shape, onDropped, children }: CellProps) {
  const [over, setOver] = useState(false);
  const takes = (event: DragEvent): boolean => event.dataTransfer.types.includes(DRAGGED);
  return (
    <section className={styles.cell} data-shape={shape} data-over={over ? '' : undefined} aria-label={title}
      onDragOver={(event) => { if (takes(event)) { event.preventDefault(); setOver(true); } }} onDragLeave={() => setOver(false)}
      onDrop={(event) => { setOver(false); if (takes(event)) { event.preventDefault(); onDropped(event.dataTransfer.getData(DRAGGED)); } }}>
      <h2 className={styles.title}>{title}</h2>
      {children}
    </section>
  );
}

/** How to lay all that lie at no plug in one go. */
function LayAll({ laying, count }: { laying: LayingOut; count: number }) {
  const { layOut: words } = useText().photos;
  const [chosen, setChosen] = useState<(typeof EACH)[number]>();
  const each = chosen ?? (String(laying.suggestedEach) as (typeof EACH)[number]);
  return (
    <div className={styles.all}>
      <span>{words.unlaid(count)}</span>
      <Choice label={words.each} quietLabel always options={EACH} value={each} nameOf={(n) => words.eachOf(Number(n))} onChange={(next) => setChosen(next)} />
      <Button onClick={() => laying.layAll('capture', Number(each))}>{words.byCapture}</Button>
      <Button onClick={() => laying.layAll('name', Number(each))}>{words.byName}</Button>
    </div>
  );
}

/** Gives the focus back to a photo that was laid elsewhere. */
function useKeptFocus(photos: readonly PhotoRecord[]) {
  const table = useRef<HTMLDivElement>(null);
  const last = useRef<string | null>(null);
  useEffect(() => {
    if (last.current !== null && document.activeElement === document.body) table.current?.querySelector<HTMLElement>(`[data-photo="${last.current}"]`)?.focus();
  }, [photos]);
  return { table, onFocus: (target: EventTarget): void => { last.current = target instanceof HTMLElement ? target.dataset['photo'] ?? null : null; } };
}

/** The photos of a reading beside its plugs, in tray order. `corrected`: seen on the corrected white. */
export function LightTable({ photos, corrected }: { photos: readonly PhotoRecord[]; corrected: boolean }) {
  const { photos: { layOut: words }, tray } = useText();
  const places = usePlaces();
  const laying = useLaying(photos);
  const unlaid = photosAt(photos, null).toSorted(byCapture);
  const { table, onFocus } = useKeptFocus(photos);
  const [cylinder] = useState(cylinderKeys);
  const dropped = (place: PlugPlace | null) => (id: string): void => {
    const photo = photos.find((one) => one.id === id);
    if (photo !== undefined) laying.lay(photo, place);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const { target, key } = event;
    const photo = target instanceof HTMLElement ? photos.find(({ id }) => id === target.dataset['photo']) : undefined;
    if (photo === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    const step = ARROWS[key];
    const all = [...(table.current?.querySelectorAll<HTMLElement>(PHOTO) ?? [])];
    const most = Math.max(...places.map((place) => place.cylinder));
    if (step !== undefined) all[all.indexOf(target as HTMLElement) + step]?.focus();
    else if (!onPhotoKey(key, photo, places, laying, (digit) => cylinder(digit, most, event.timeStamp))) return;
    event.preventDefault();
  };
  return (
    <div ref={table} className={styles.table} onKeyDown={onKeyDown} onFocus={({ target }) => onFocus(target)}>
      {corrected && <WhiteFilters photos={photos} />}
      {unlaid.length > 0 && (
        <Cell title={words.nowhere} shape="none" onDropped={dropped(null)}>
          <LayAll laying={laying} count={unlaid.length} />
          <ul className={styles.cards}>
            {unlaid.map((photo) => <PhotoCard key={photo.id} photo={photo} large={false} place={words.nowhere} corrected={corrected} />)}
          </ul>
        </Cell>
      )}
      <div className={styles.plugs}>
        {places.map((place) => {
          const key = plugKey(place.cylinder, place.position);
          const here = photosAt(photos, key);
          return (
            <Cell key={key} title={tray.placeName(place)} shape="plug" onDropped={dropped(place)}>
              {here.length === 0 ? <p className={styles.empty}>{words.noPhoto}</p> : (
                <ul className={styles.cards}>
                  {here.map((photo, i) => <PhotoCard key={photo.id} photo={photo} large={i === 0} place={tray.placeName(place)} corrected={corrected} />)}
                </ul>
              )}
            </Cell>
          );
        })}
      </div>
      <p className={styles.keys} aria-hidden="true">{words.keys}</p>
      <Said><span role="status" aria-live="polite">{laying.saying}</span></Said>
    </div>
  );
}
