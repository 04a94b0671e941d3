import { OpenLibrary } from '../../app/open-library.tsx';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import styles from './empty-shelf.module.css';
import { ImportSheet } from './import-sheet.tsx';

/** What a newcomer sees: what the program is for, how it goes, and three ways to begin. */
export function EmptyShelf() {
  const { engines: { empty, import: importWords } } = useText();
  const isDemo = useStore((state) => state.info?.library.kind === 'demo');
  return (
    <div className={styles.empty}>
      <h1>{empty.title}</h1>
      <p className={styles.lead}>{empty.lead}</p>
      <ul className={styles.tips}>
        {empty.tips.map(({ tip, words }) => (
          <li key={words} className={styles.tip}><DrawnTip tip={tip} view="end" size={132} seed={words} title="" /><span>{words}</span></li>
        ))}
      </ul>
      <ol className={styles.steps}>
        {empty.steps.map(({ what, how }, i) => (
          <li key={what} className={styles.step}>
            <span className={styles.count} aria-hidden="true">{i + 1}</span>
            <h2>{what}</h2>
            <p>{how}</p>
          </li>
        ))}
      </ol>
      <div className={styles.ways}>
        <ButtonLink look="main" href={hrefOf({ page: 'engine-new' })}>{empty.addFirst}</ButtonLink>
        {!isDemo && <OpenLibrary kind="demo" words={empty.demo} />}
        <ImportSheet label={importWords} />
      </div>
      <p className={styles.hint}>{isDemo ? '' : `${empty.demoHint} `}{empty.importHint}</p>
    </div>
  );
}
