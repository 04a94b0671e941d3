import type { ReactNode } from 'react';
import type { EngineRecord } from '../../shared/channels.ts';
import { useText } from '../text/index.ts';
import { BackGlyph } from '../ui/glyphs.tsx';
import styles from './engine-head.module.css';
import { ENGINE_PAGES, hrefOf, type EnginePage } from './route.ts';

type Props = {
  readonly record: EngineRecord;
  readonly page: EnginePage;
  /** What can be done on this page. */
  readonly children?: ReactNode;
};

/** Whose page this is, the way back to all engines, and the engine's other pages. */
export function EngineHead({ record: { id, engine }, page, children }: Props) {
  const { engines, shell } = useText();
  return (
    <header className={styles.head}>
      <a className={styles.back} href={hrefOf({ page: 'shelf' })}><BackGlyph />{shell.allEngines}</a>
      <div className={styles.names}>
        <h1>{engine.name ?? engines.unnamed}</h1>
        <p className={styles.about}>{engines.summary(engine)}</p>
      </div>
      <div className={styles.tools}>{children}</div>
      <nav className={styles.pages} aria-label={shell.enginePagesName}>
        {ENGINE_PAGES.map((each) => (
          <a key={each} className={styles.page} href={hrefOf({ page: each, id })} aria-current={each === page ? 'page' : undefined}>{shell.enginePages[each]}</a>
        ))}
      </nav>
    </header>
  );
}
