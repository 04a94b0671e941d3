import { plugKey } from '../../../../core/domain/plugs.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import type { PhotoMeasure } from '../../../../shared/formats/photo-measure.v1.ts';
import { usePlug } from '../../../state/hooks.ts';
import type { PhotoFinding, ReadingAction } from '../../../state/reading-action.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { formatBelief } from '../../../text/numbers.ts';
import { Button } from '../../../ui/button.tsx';
import { TickGlyph } from '../../../ui/glyphs.tsx';
import { Tag } from '../../../ui/tag.tsx';
import styles from './measures.module.css';

type Suggested = PhotoMeasure['suggests'][number];

/** Enters a value in the open reading; it can be taken back from the photos as well as from the plugs. */
function useTake(): (action: ReadingAction) => void {
  const { act, undo, redo, notePhotoStep } = useStore.getState();
  const now = () => useStore.getState().reading?.history.now;
  return (action) => {
    const before = now();
    act(action);
    const after = now();
    if (after === before) return;
    const stepping = (from: typeof after, step: () => void) => async () => { if (now() === from) step(); return null; };
    notePhotoStep({ back: stepping(after, undo), again: stepping(before, redo) });
  };
}

function Suggestion({ suggested, plug }: { suggested: Suggested; plug: string }) {
  const { photos: { measures: words }, tray } = useText();
  const take = useTake();
  const { tip, photo: counted = [] } = usePlug(plug) ?? {};
  const entered = tip?.[suggested.facet];
  const counts = counted.find((found) => found.facet === suggested.facet);
  const { facet, value, belief, because } = suggested;
  const found: PhotoFinding = { facet, value, belief };
  const question = tray.questions[facet];
  const name = tray.valueName(value);
  return (
    <li className={styles.suggestion}>
      <span>{question}: <span className={styles.value}>{name}</span> <span className={styles.soft}>{words.belief(formatBelief(belief))}</span></span>
      <span className={styles.deeds}>
        {entered === value
          ? <span className={styles.entered}><TickGlyph />{words.entered}</span>
          : <Button aria-label={words.takeOf(question, name)} onClick={() => take({ type: 'tip', plug, facet, value } as ReadingAction)}>{words.take}</Button>}
        <Tag on={counts !== undefined} label={words.countOf(question, name)}
          onChange={(on) => take({ type: 'photo', plug, found, on })}>{words.count}</Tag>
      </span>
      {counts !== undefined && (counts.value !== value || counts.belief !== belief) && (
        <span className={styles.against}>{words.countsAs(tray.valueName(counts.value), formatBelief(counts.belief))}</span>
      )}
      {entered !== undefined && entered !== value && <span className={styles.against}>{words.against(tray.valueName(entered))}</span>}
      <span className={styles.because}>{because}</span>
    </li>
  );
}

/** What the picture speaks for, value by value. Nothing is entered without the person's yes. */
export function Suggestions({ photo: { place, measure } }: { photo: PhotoRecord }) {
  const { measures: words } = useText().photos;
  const suggests = measure?.suggests ?? [];
  if (place === null) return <p>{words.layFirst}</p>;
  if (suggests.length === 0) return <p>{words.suggestsNothing}</p>;
  return (
    <>
      <p className={styles.help}>{words.countHelp}</p>
      <ul className={styles.suggestions}>
        {suggests.map((suggested) => <Suggestion key={suggested.facet} suggested={suggested} plug={plugKey(place.cylinder, place.position)} />)}
      </ul>
    </>
  );
}
