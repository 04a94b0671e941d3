import { useEffect, useMemo, useRef, useState } from 'react';
import { hrefOf, SHELVES, type Shelf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Said } from '../../ui/said.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { useKeys } from '../../ui/use-keys.ts';
import { useTold } from '../../ui/use-told.ts';
import { entriesOf, found } from './entries.ts';
import { EntryList } from './entry-list.tsx';
import { EntryPage } from './entry-page.tsx';
import { Here } from './here.tsx';
import { Intro } from './intro.tsx';
import { LookingProvider, type Looking } from './looking.ts';
import styles from './screen.module.css';
import { spokenIn } from './spoken.ts';
import { Yours } from './yours.tsx';

type Props = { readonly shelf?: Shelf | undefined; readonly entry?: string | undefined; readonly line?: string | undefined };

/** The shelves side by side. What spoke in a reading stands there while one is open. */
function ShelfRow({ shelf }: { shelf: Shelf | undefined }) {
  const text = useText().knowledge;
  const reading = useStore((state) => state.reading?.id);
  const shown = SHELVES.filter((each) => each !== 'here' || reading !== undefined || shelf === 'here');
  return (
    <nav className={styles.shelves} aria-label={text.shelvesName}>
      {shown.map((each) => (
        <a key={each} className={styles.shelf} aria-current={each === shelf ? 'page' : undefined}
          href={hrefOf({ page: 'knowledge', shelf: each, ...(each === 'here' && reading !== undefined && { entry: reading }) })}>{text.shelves[each]}</a>
      ))}
    </nav>
  );
}

/** The page begins at its top with every entry, unless a line of it is named, which brings itself into view. */
function useTopOf(address: string, line: string | undefined): void {
  const shown = useRef(address);
  useEffect(() => {
    if (shown.current !== address && line === undefined) window.scrollTo(0, 0);
    shown.current = address;
  }, [address, line]);
}

function ShelfPage({ shelf, entry }: { shelf: Shelf | undefined; entry: string | undefined }) {
  if (shelf === 'yours') return <Yours />;
  if (shelf === 'here') return <Here id={entry} />;
  return shelf === undefined || entry === undefined ? <Intro /> : <EntryPage shelf={shelf} id={entry} />;
}

/** All that the program judges by: lists to look up in, and one entry at a time with its reasons and sources. */
export function KnowledgeScreen({ shelf, entry, line }: Props) {
  const text = useText();
  const words = text.knowledge;
  const knowledge = useStore((state) => state.taught.knowledge);
  const findings = useStore((state) => state.reading?.findings ?? null);
  const told = useTold();
  const entries = entriesOf(knowledge, text, told);
  const looking = useMemo((): Looking => ({ knowledge, line, spoken: spokenIn(findings) }), [knowledge, line, findings]);
  const [typed, setTyped] = useState('');
  const side = useRef<HTMLDivElement>(null);
  useKeys({ '/': () => side.current?.querySelector('input')?.focus() });
  useTopOf(`${shelf} ${entry}`, line);
  const searching = typed.trim() !== '';
  const list = searching ? found(typed, entries) : entries.filter((each) => each.shelf === (shelf ?? 'looks'));
  const alone = shelf === 'yours' || shelf === 'here';
  const shown = entry ?? (shelf === undefined ? undefined : entries.find((each) => each.shelf === shelf)?.id);
  return (
    <LookingProvider value={looking}>
      <h1><Said>{words.place}</Said></h1>
      <ShelfRow shelf={shelf} />
      <div className={styles.columns} data-alone={alone ? '' : undefined}>
        {!alone && (
          <div ref={side} className={styles.side}>
            <TextField label={words.find} hint={searching ? words.found(list.length) : words.findHint} value={typed} onChange={setTyped} />
            <EntryList entries={list} shelf={shelf ?? 'looks'} shown={shown} grouped={searching} />
          </div>
        )}
        <article className={styles.page}>
          <ShelfPage shelf={shelf} entry={shown} />
          <p className={styles.about}>{words.about}</p>
        </article>
      </div>
    </LookingProvider>
  );
}
