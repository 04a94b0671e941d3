import { useEffect, useState } from 'react';
import { Choice } from '../ui/choice.tsx';
import { Parts } from './parts.tsx';
import { Tips } from './tips.tsx';
import { Verdicts } from './verdicts.tsx';
import styles from './gallery.module.css';

const THEMES = ['light', 'dark'] as const;

/** Everything the page is made of, at one look. It belongs to the development build; its own words are not in the catalogue. */
export function Gallery() {
  const [theme, setTheme] = useState<(typeof THEMES)[number]>('light');
  useEffect(() => { document.documentElement.dataset.theme = theme; }, [theme]);
  return (
    <main className={styles.gallery}>
      <h1>Gallery</h1>
      <Choice label="Theme" options={THEMES} nameOf={String} value={theme} always onChange={(next) => { if (next !== undefined) setTheme(next); }} />
      <Verdicts />
      <Parts />
      <Tips />
    </main>
  );
}
