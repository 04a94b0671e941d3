import type { ReactNode } from 'react';
import styles from './tag.module.css';
import { TickGlyph } from './glyphs.tsx';

type Props = {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly children: ReactNode;
  readonly disabled?: boolean;
  /** What a screen reader hears, where the word alone does not tell. */
  readonly label?: string;
};

/** A word that holds or not. */
export const Tag = ({ on, onChange, children, disabled = false, label }: Props) => (
  <button type="button" className={styles.tag} aria-pressed={on} aria-label={label} disabled={disabled} onClick={() => onChange(!on)}>
    {on && <TickGlyph />}{children}
  </button>
);
