import type { ReactNode } from 'react';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { ButtonLink, GlyphButton } from '../ui/button.tsx';
import { ErrandsGlyph, GearGlyph, KeysGlyph } from '../ui/glyphs.tsx';
import { Said } from '../ui/said.tsx';
import styles from './bar.module.css';
import { hrefOf, PLACES, type Route } from './route.ts';

/** The program's mark: a tip seen from its end. */
const Mark = () => (
  <svg className={styles.mark} viewBox="0 0 32 32" aria-hidden="true">
    <circle cx="16" cy="17" r="11" /><circle cx="16" cy="17" r="5" className={styles.nose} /><path d="M16 2v11" />
  </svg>
);

/** The sheets that the bar opens over the bench. */
export type Sheets = { readonly onKeys: () => void; readonly onErrands: () => void };

/** The ways to the places of the program; with only one place the mark leads there. */
function Places({ page }: { page: Route['page'] }) {
  const text = useText();
  if (PLACES.length < 2) return null;
  return (
    <nav className={styles.places} aria-label={text.shell.placesName}>
      {PLACES.map((place) => (
        <a key={place} className={styles.place} href={hrefOf({ page: place })} aria-current={place === page ? 'page' : undefined}>{text.shell.places[place]}</a>
      ))}
    </nav>
  );
}

/** The rail along the top of the bench. `children`: what a screen hangs on it in place of the ways to other places. */
export function Bar({ page, children, onKeys, onErrands }: Sheets & { page: Route['page']; children?: ReactNode }) {
  const text = useText();
  const demo = useStore((state) => state.info?.library.kind === 'demo');
  return (
    <header className={styles.bar}>
      <a className={styles.home} href={hrefOf({ page: 'shelf' })}><Mark />{children === undefined ? text.shell.name : <Said>{text.shell.allEngines}</Said>}</a>
      {demo && <a className={styles.demo} href={hrefOf({ page: 'settings' })}>{text.shell.demo}</a>}
      <div className={styles.middle}>{children ?? <Places page={page} />}</div>
      <GlyphButton name={text.shell.errands.open} onClick={onErrands}><ErrandsGlyph /></GlyphButton>
      <GlyphButton name={text.shell.shortcuts.open} onClick={onKeys}><KeysGlyph /></GlyphButton>
      <ButtonLink look="quiet" href={hrefOf({ page: 'settings' })} aria-label={text.shell.settings} title={text.shell.settings}><GearGlyph /></ButtonLink>
    </header>
  );
}
