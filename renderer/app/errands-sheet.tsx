import { useId, useState, type KeyboardEvent } from 'react';
import { useText } from '../text/index.ts';
import { Dialog } from '../ui/dialog.tsx';
import { errandsFor, useErrands, type Errand } from './errands.ts';
import styles from './errands-sheet.module.css';

function Finder({ onDo, onKeys }: { onDo: (errand: Errand) => void; onKeys: () => void }) {
  const { errands: words } = useText().shell;
  const id = useId();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const found = errandsFor(typed, useErrands(onKeys));
  const move = (next: number): void => {
    setAt(next);
    document.getElementById(`${id}-${next}`)?.scrollIntoView({ block: 'nearest' });
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const errand = found[at];
    if (event.key === 'ArrowDown') move(Math.min(found.length - 1, at + 1));
    else if (event.key === 'ArrowUp') move(Math.max(0, at - 1));
    else if (event.key === 'Enter' && errand !== undefined) onDo(errand);
    else return;
    event.preventDefault();
  };
  return (
    <>
      <input className={styles.input} type="text" role="combobox" autoComplete="off" aria-label={words.find} placeholder={words.hint} value={typed}
        aria-expanded={true} aria-controls={`${id}-list`} aria-autocomplete="list" aria-activedescendant={found.length > 0 ? `${id}-${at}` : undefined}
        autoFocus onChange={(event) => { setTyped(event.target.value); setAt(0); }} onKeyDown={onKeyDown} />
      <ul id={`${id}-list`} role="listbox" aria-label={words.title} className={styles.list}>
        {found.map((errand, i) => (
          <li key={errand.words} id={`${id}-${i}`} role="option" aria-selected={i === at} className={styles.errand} onPointerMove={() => setAt(i)} onClick={() => onDo(errand)}>
            <span>{errand.words}</span>{errand.keys !== undefined && <kbd>{errand.keys}</kbd>}
          </li>
        ))}
      </ul>
      <p role="status" className={styles.none}>{found.length === 0 ? words.none : ''}</p>
    </>
  );
}

/** Everything that can be done, to be found by its words. */
export function ErrandsSheet({ open, onOpenChange, onKeys }: { open: boolean; onOpenChange: (open: boolean) => void; onKeys: () => void }) {
  const { errands: words } = useText().shell;
  /** Runs once the sheet is gone and the focus is back, as if a key had been pressed on the bench. */
  const run = (errand: Errand): void => {
    onOpenChange(false);
    setTimeout(errand.run);
  };
  return <Dialog title={words.title} open={open} onOpenChange={onOpenChange}><Finder onDo={run} onKeys={onKeys} /></Dialog>;
}
