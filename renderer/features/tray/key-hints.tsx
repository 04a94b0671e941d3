import { useText } from '../../text/index.ts';
import styles from './key-hints.module.css';

/** The keys of the station that no control shows, in one quiet line. */
export function KeyHints({ keys }: { keys: ReturnType<typeof useText>['tray']['keys'] }) {
  const { tray } = useText();
  const shown = [...keys.filter(({ short }) => short !== undefined), { keys: ['?'], short: tray.allKeys }];
  return (
    <footer className={styles.hints} aria-label={tray.keysName}>
      {shown.map(({ keys: names, short }) => (
        <span key={short} className={styles.hint}>
          {names.map((name) => (name === '…' ? <span key={name}>…</span> : <kbd key={name}>{name}</kbd>))} {short}
        </span>
      ))}
    </footer>
  );
}
