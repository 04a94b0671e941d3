import { useEffect, useRef, type KeyboardEvent } from 'react';
import type { Condition } from '../../../core/knowledge/types.ts';
import type { Shelf } from '../../app/route.ts';
import { useText } from '../../text/index.ts';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { entryHref } from './addresses.ts';
import type { Entry } from './entries.ts';
import styles from './list.module.css';
import { useLooking } from './looking.ts';
import { typicalTip } from './typical-tip.ts';

const tips = new WeakMap<Condition, ReturnType<typeof typicalTip>>();
function tipOf(condition: Condition): ReturnType<typeof typicalTip> {
  const tip = tips.get(condition) ?? typicalTip(condition);
  tips.set(condition, tip);
  return tip;
}

/** Up and down go from entry to entry. */
function onArrow(event: KeyboardEvent<HTMLElement>): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step === undefined || !(event.target instanceof HTMLElement)) return;
  const links = [...event.currentTarget.querySelectorAll<HTMLElement>('a')];
  const next = links[links.indexOf(event.target) + step];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
}

/** Scrolls the list, and nothing else, until its entry is seen. */
function intoView(link: HTMLElement): void {
  const list = link.closest('nav');
  if (list === null) return;
  const [of, within] = [link.getBoundingClientRect(), list.getBoundingClientRect()];
  if (of.top < within.top || of.bottom > within.bottom) list.scrollTop += of.top - within.top - list.clientHeight / 3;
}

function Item({ entry, here }: { entry: Entry; here: boolean }) {
  const { knowledge: { conditions } } = useLooking();
  const condition = entry.shelf === 'looks' ? conditions.find(({ id }) => id === entry.id) : undefined;
  const link = useRef<HTMLAnchorElement>(null);
  useEffect(() => { if (here && link.current !== null) intoView(link.current); }, [here]);
  return (
    <li>
      <a ref={link} className={styles.item} href={entryHref(entry.shelf, entry.id)} aria-current={here ? 'page' : undefined}>
        {condition !== undefined && <span className={styles.tip}><DrawnTip tip={tipOf(condition)} view="end" size={40} seed={condition.id} title="" /></span>}
        {entry.shelf === 'sources' && entry.group !== '' && <span className={styles.code}>{entry.group}</span>}
        <span>{entry.name}</span>
      </a>
    </li>
  );
}

type Props = { readonly entries: readonly Entry[]; readonly shelf: Shelf; readonly shown: string | undefined; readonly grouped: boolean };

/** Entries under the names of their groups, in the order in which they come. */
export function EntryList({ entries, shelf, shown, grouped }: Props) {
  const text = useText().knowledge;
  const groupOf = (entry: Entry): string => (grouped ? text.shelves[entry.shelf] : entry.shelf === 'sources' ? '' : entry.group);
  const groups = [...new Set(entries.map(groupOf))];
  return (
    <nav className={styles.list} aria-label={grouped ? text.find : text.listOf(text.shelves[shelf])} onKeyDown={onArrow}>
      {groups.map((group) => (
        <div key={group}>
          {group !== '' && <h3 className={styles.group}>{group}</h3>}
          <ul>{entries.filter((entry) => groupOf(entry) === group).map((entry) => <Item key={`${entry.shelf} ${entry.id}`} entry={entry} here={entry.shelf === shelf && entry.id === shown} />)}</ul>
        </div>
      ))}
    </nav>
  );
}
