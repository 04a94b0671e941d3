import { useId, type ReactNode } from 'react';
import { useText } from '../../text/index.ts';
import { sourceOf } from '../../ui/sources.ts';
import { entryHref } from './addresses.ts';
import styles from './page.module.css';

/** A part of an entry's page under its heading. */
export function Part({ title, about, children }: { title: string; about?: string; children: ReactNode }) {
  const id = useId();
  return (
    <section className={styles.part} aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      {about !== undefined && <p className={styles.soft}>{about}</p>}
      {children}
    </section>
  );
}

/** The documents that a page rests on, by their titles; on paper they take the place of what a mark opens. */
export function SourcesHere({ ids }: { ids: readonly string[] }) {
  const text = useText().knowledge;
  if (ids.length === 0) return null;
  return (
    <Part title={text.sourcesHere}>
      <dl className={styles.sources}>
        {ids.map((id) => <div key={id}><dt>{id}</dt><dd><a href={entryHref('sources', id)}>{sourceOf(id)?.title ?? id}</a></dd></div>)}
      </dl>
    </Part>
  );
}
