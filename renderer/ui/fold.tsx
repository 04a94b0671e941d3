import { Collapsible } from 'radix-ui';
import { useState, type ReactNode } from 'react';
import styles from './fold.module.css';
import { UnfoldGlyph } from './glyphs.tsx';

type Props = { readonly title: string; readonly summary?: string; readonly startOpen?: boolean; readonly children: ReactNode };

/** A part of a screen that can be folded away; `summary` says what is in it while it is closed. */
export function Fold({ title, summary, startOpen = false, children }: Props) {
  const [open, setOpen] = useState(startOpen);
  return (
    <Collapsible.Root open={open} onOpenChange={setOpen} className={styles.fold}>
      <h3 className={styles.heading}>
        <Collapsible.Trigger className={styles.trigger}>
          <span className={styles.glyph}><UnfoldGlyph /></span>
          <span>{title}</span>
          {!open && summary !== undefined && <span className={styles.summary}>{summary}</span>}
        </Collapsible.Trigger>
      </h3>
      <Collapsible.Content className={styles.content}>{children}</Collapsible.Content>
    </Collapsible.Root>
  );
}
