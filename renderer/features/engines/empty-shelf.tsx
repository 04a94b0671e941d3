import { hrefOf } from '../../app/route.ts';
import { navigate } from '../../app/use-route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button, ButtonLink } from '../../ui/button.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import styles from './empty-shelf.module.css';
import { ImportSheet } from './import-sheet.tsx';

/** What a newcomer sees: what the program is for, how it goes, and three ways to begin. */
export function EmptyShelf() {
  const { engines: { empty, import: importWords }, shell } = useText();
  const { openLibrary, tell } = useStore.getState();
  const isDemo = useStore((state) => state.info?.library.kind === 'demo');
  const openDemo = async (): Promise<void> => {
    const error = await openLibrary('demo');
    if (error === null) navigate({ page: 'shelf' });
    else tell({ text: shell.error(error), tone: 'problem' });
  };
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
        {!isDemo && <Button onClick={() => void openDemo()}>{empty.demo}</Button>}
        <ImportSheet label={importWords} />
      </div>
      <p className={styles.hint}>{isDemo ? '' : `${empty.demoHint} `}{empty.importHint}</p>
    </div>
  );
}
