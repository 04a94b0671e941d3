import { useText } from '../../text/index.ts';
import styles from './empty-log.module.css';

/** How to come to a reading that tells something, where there is none yet. */
export function EmptyLog() {
  const { empty } = useText().engines.page;
  return (
    <div className={styles.empty}>
      <p>{empty.lead}</p>
      <ol className={styles.steps}>{empty.steps.map((step) => <li key={step}>{step}</li>)}</ol>
      <p className={styles.caution}>{empty.caution}</p>
    </div>
  );
}
