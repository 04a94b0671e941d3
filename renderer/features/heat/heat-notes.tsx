import { useState } from 'react';
import { answerOf } from '../../../core/heat/spark-answer.ts';
import type { HeatEntryRecord } from '../../../shared/channels-heat.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatInstant } from '../../text/numbers.ts';
import { Button } from '../../ui/button.tsx';
import { TextField } from '../../ui/text-field.tsx';
import type { HeatBench } from './bench.ts';
import styles from './heat.module.css';
import { useHeatWords } from './use-words.ts';
import { useRemoval } from './use-removal.ts';

type NoteRecord = HeatEntryRecord & { readonly entry: Extract<HeatEntryRecord['entry'], { readonly kind: 'note' }> };
const isNote = (record: HeatEntryRecord): record is NoteRecord => record.entry.kind === 'note';

/** Settings worth keeping, with what was thought of them; they stay with the engine. */
export function HeatNotes({ id, engine, setting, learned, record, onTry }: HeatBench) {
  const { heat: { notes }, shell } = useText();
  const words = useHeatWords();
  const { addHeatEntry, tell } = useStore.getState();
  const remove = useRemoval(notes.removed);
  const [text, setText] = useState('');
  const kept = record.entries.filter(isNote);
  const keep = async (): Promise<void> => {
    const answer = answerOf(engine, setting, learned.belief);
    const said = answer.ok ? notes.said(words.running(setting), words.tips(answer.value.tip), words.kilovolts(answer.value.demand)) : words.running(setting);
    const error = await addHeatEntry(id, { kind: 'note', note: text.trim() === '' ? said : `${text.trim()}\n${said}`, setting });
    if (error === null) setText('');
    else tell({ text: shell.error(error), tone: 'problem' });
  };
  return (
    <section className={styles.block} aria-label={notes.title}>
      <h2>{notes.title}</h2>
      <TextField label={notes.label} hint={notes.hint} limit={3000} value={text} onChange={setText} />
      <div><Button onClick={() => void keep()}>{notes.keep}</Button></div>
      {kept.length === 0 ? <p className={styles.soft}>{notes.none}</p> : (
        <ul className={styles.notes}>
          {[...kept].reverse().map(({ id: noteId, createdAt, entry }) => (
            <li key={noteId}>
              <p className={styles.noteText}>{entry.note}</p>
              <div className={styles.line}>
                <span className={styles.soft}>{formatInstant(createdAt)}</span>
                <Button look="quiet" onClick={() => onTry({ setting: entry.setting })}>{notes.use}</Button>
                <Button look="quiet" onClick={() => void remove(noteId)}>{notes.remove}</Button>
              </div>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
