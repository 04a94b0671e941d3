import { useId, useState, type KeyboardEvent, type Ref } from 'react';
import { useText } from '../../text/index.ts';
import { TipSample, type Sample } from '../../ui/drawn-tip/index.ts';
import { matches, type Match } from './search.ts';
import styles from './find-value.module.css';

/** Type a word, take a value of whatever question it belongs to. */
export function FindValue({ inputRef, onTake, onLeave }: { inputRef: Ref<HTMLInputElement>; onTake: (match: Match) => void; onLeave: () => void }) {
  const { tray } = useText();
  const id = useId();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const found = matches(typed, (question) => tray.questions[question], tray.valueName);
  const open = typed.trim() !== '';
  const take = (match: Match | undefined): void => {
    if (match === undefined) return;
    setTyped('');
    onTake(match);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'ArrowDown') setAt((i) => Math.min(found.length - 1, i + 1));
    else if (event.key === 'ArrowUp') setAt((i) => Math.max(0, i - 1));
    else if (event.key === 'Enter') take(found[at]);
    else if (event.key === 'Escape') { setTyped(''); onLeave(); }
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className={styles.find}>
      <label htmlFor={id} className={styles.label}>{tray.entry.search}<kbd aria-hidden="true">/</kbd></label>
      <input ref={inputRef} id={id} className={styles.input} type="text" role="combobox" autoComplete="off" placeholder={tray.entry.searchHint} value={typed}
        aria-expanded={open} aria-controls={`${id}-list`} aria-autocomplete="list" aria-activedescendant={open && found.length > 0 ? `${id}-${at}` : undefined}
        onChange={(event) => { setTyped(event.target.value); setAt(0); }} onKeyDown={onKeyDown} onBlur={() => setTyped('')} />
      <ul id={`${id}-list`} role="listbox" aria-label={tray.entry.search} className={styles.list} hidden={!open}>
        {found.map((match, i) => (
          <li key={`${match.question} ${match.value}`} id={`${id}-${i}`} role="option" aria-selected={i === at} className={styles.match}
            onPointerDown={(event) => { event.preventDefault(); take(match); }}>
            <TipSample sample={{ facet: match.question, value: match.value } as Sample} size={34} />
            <span><b>{tray.valueName(match.value)}</b> <span className={styles.of}>{tray.questions[match.question]}</span></span>
          </li>
        ))}
        {open && found.length === 0 && <li className={styles.none}>{tray.entry.noMatch}</li>}
      </ul>
    </div>
  );
}
