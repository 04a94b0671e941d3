import type { ReactNode } from 'react';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { ButtonLink, GlyphButton } from '../ui/button.tsx';
import { GearGlyph, KeysGlyph } from '../ui/glyphs.tsx';
import { Said } from '../ui/said.tsx';
import styles from './bar.module.css';
import { hrefOf } from './route.ts';

/** The program's mark: a tip seen from its end. */
const Mark = () => (
  <svg className={styles.mark} viewBox="0 0 32 32" aria-hidden="true">
    <circle cx="16" cy="17" r="11" /><circle cx="16" cy="17" r="5" className={styles.nose} /><path d="M16 2v11" />
  </svg>
);

/** The rail along the top of the bench. `children`: what a screen hangs on it. */
export function Bar({ children, onKeys }: { children?: ReactNode; onKeys: () => void }) {
  const text = useText();
  const demo = useStore((state) => state.info?.library.kind === 'demo');
  return (
    <header className={styles.bar}>
      <a className={styles.home} href={hrefOf({ page: 'shelf' })}><Mark />{children === undefined ? text.shell.name : <Said>{text.shell.allEngines}</Said>}</a>
      {demo && <a className={styles.demo} href={hrefOf({ page: 'settings' })}>{text.shell.demo}</a>}
      <div className={styles.middle}>{children}</div>
      <GlyphButton name={text.shell.shortcuts.open} onClick={onKeys}><KeysGlyph /></GlyphButton>
      <ButtonLink look="quiet" href={hrefOf({ page: 'settings' })} aria-label={text.shell.settings} title={text.shell.settings}><GearGlyph /></ButtonLink>
    </header>
  );
}
