import { useId, type ReactNode } from 'react';
import { UnfoldGlyph } from '../../ui/glyphs.tsx';
import styles from './section.module.css';

type Props = { readonly title: string; readonly summary: string; readonly open: boolean; readonly onToggle: () => void; readonly children: ReactNode };

/** A fold that a key can open from outside. */
export function Section({ title, summary, open, onToggle, children }: Props) {
  const id = useId();
  return (
    <section className={styles.section} data-open={open ? '' : undefined}>
      <h3 className={styles.heading}>
        <button type="button" className={styles.trigger} aria-expanded={open} aria-controls={id} onClick={onToggle}>
          <span className={styles.glyph}><UnfoldGlyph /></span>
          <span className={styles.title}>{title}</span>{' '}
          <span className={styles.summary}>{summary}</span>
        </button>
      </h3>
      <div id={id} hidden={!open}>{open && children}</div>
    </section>
  );
}
