import { Collapsible } from 'radix-ui';
import { useState, type ReactNode } from 'react';
import styles from './fold.module.css';
import { UnfoldGlyph } from './glyphs.tsx';

type Props = {
  readonly title: string;
  readonly summary?: string;
  readonly startOpen?: boolean;
  readonly level?: 2 | 3;
  readonly keepOpen?: boolean;
  readonly children: ReactNode;
};

/** A part of a screen that can be folded away; `summary` says what is in it while it is closed. `keepOpen`: something in it has to be seen. */
export function Fold({ title, summary, startOpen = false, level = 3, keepOpen = false, children }: Props) {
  const [open, setOpen] = useState(startOpen);
  if (keepOpen && !open) setOpen(true);
  const Heading = `h${level}` as const;
  return (
    <Collapsible.Root open={open} onOpenChange={setOpen} className={styles.fold}>
      <Heading className={styles.heading}>
        <Collapsible.Trigger className={styles.trigger}>
          <span className={styles.glyph}><UnfoldGlyph /></span>
          <span>{title}</span>
          {!open && summary !== undefined && <span className={styles.summary}>{summary}</span>}
        </Collapsible.Trigger>
      </Heading>
      <Collapsible.Content className={styles.content}>{children}</Collapsible.Content>
    </Collapsible.Root>
  );
}
