import { useEffect, useRef, useState } from 'react';
import type { Annotation, PhotoRecord } from '../../../../shared/channels-photo.ts';
import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { Button, GlyphButton } from '../../../ui/button.tsx';
import { CloseGlyph } from '../../../ui/glyphs.tsx';
import { TextField } from '../../../ui/text-field.tsx';
import { MARK_KINDS, type MarkKind } from './drawing.tsx';
import styles from './marks.module.css';

/** Keeps another list of marks with the photo, and tells when that failed. */
export function useMarks(photo: PhotoRecord): (next: readonly Annotation[]) => void {
  const { shell } = useText();
  const { markPhoto, tell } = useStore.getState();
  return (next) => void markPhoto(photo.id, next).then((error) => { if (error !== null) tell({ text: shell.error(error), tone: 'problem' }); });
}

/** The words of a mark; kept when the field is left or Enter pressed. */
function Words({ label, words, onKeep }: { label: string; words: string; onKeep: (words: string) => void }) {
  const [typed, setTyped] = useState(words);
  const keep = (): void => { if (typed !== words) onKeep(typed); };
  return (
    <div onBlur={keep} onKeyDown={(event) => { if (event.key === 'Enter') keep(); }}>
      <TextField label={label} value={typed} limit={300} onChange={setTyped} />
    </div>
  );
}

type Props = { readonly photo: PhotoRecord; readonly kind: MarkKind | undefined; readonly onKind: (kind: MarkKind | undefined) => void };

/** What is marked in the picture, each with its words. A new mark gets the focus, so that its words can be typed at once. */
export function MarkList({ photo, kind, onKind }: Props) {
  const { marks: words } = useText().photos;
  const keep = useMarks(photo);
  const { annotations } = photo;
  const list = useRef<HTMLUListElement>(null);
  const before = useRef(annotations.length);
  useEffect(() => {
    if (annotations.length > before.current) list.current?.querySelector<HTMLElement>('li:last-child input')?.focus();
    before.current = annotations.length;
  }, [annotations.length]);
  const changed = (at: number, mark?: Annotation): Annotation[] => annotations.flatMap((each, i) => (i !== at ? each : mark ?? []));
  return (
    <>
      <div className={styles.tools}>
        {MARK_KINDS.map((each) => (
          <Button key={each} aria-pressed={each === kind} onClick={() => onKind(each === kind ? undefined : each)}>{words.kinds[each]}</Button>
        ))}
      </div>
      <p className={styles.soft}>{kind === undefined ? words.help : words.how[kind]}</p>
      <ul ref={list} className={styles.list}>
        {annotations.map((mark, i) => (
          <li key={`${i} ${mark.words}`} className={styles.mark}>
            <Words label={words.wordsOf(mark.kind, i + 1)} words={mark.words} onKeep={(next) => keep(changed(i, { ...mark, words: next }))} />
            <GlyphButton name={words.remove(mark.kind, i + 1)} onClick={() => keep(changed(i))}><CloseGlyph /></GlyphButton>
          </li>
        ))}
      </ul>
    </>
  );
}
