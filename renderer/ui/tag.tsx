import type { ReactNode } from 'react';
import styles from './tag.module.css';
import { TickGlyph } from './glyphs.tsx';

/** A word that holds or not. */
export const Tag = ({ on, onChange, children, disabled = false }: { on: boolean; onChange: (on: boolean) => void; children: ReactNode; disabled?: boolean }) => (
  <button type="button" className={styles.tag} aria-pressed={on} disabled={disabled} onClick={() => onChange(!on)}>
    {on && <TickGlyph />}{children}
  </button>
);
