import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { Button } from '../ui/button.tsx';
import { Notice } from '../ui/notice.tsx';
import { useHostPresence } from './host-presence.ts';
import styles from './library-trouble.module.css';

/** Says that the program behind the page has ended or was started anew, what becomes of what was entered, and how to go on. */
export function HostTrouble() {
  const { host, tryAgain } = useText().shell;
  const presence = useHostPresence();
  const { start, flushReading } = useStore.getState();
  const ready = useStore((state) => state.info !== null);
  if (presence === 'here') return null;
  return (
    <div className={styles.trouble}>
      <Notice tone="problem" title={host[presence].title}>
        <p>{host[presence].goOn}</p>
        <Button onClick={() => void (ready ? flushReading() : start())}>{tryAgain}</Button>
      </Notice>
    </div>
  );
}
