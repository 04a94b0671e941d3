import { useText } from '../../text/index.ts';
import styles from './key-hints.module.css';

/** The keys of the station, in one quiet line. */
export function KeyHints({ keys }: { keys: ReturnType<typeof useText>['tray']['keys'] }) {
  return (
    <footer className={styles.hints} aria-label={useText().tray.keysName}>
      {keys.map(({ keys: names, short }) => (
        <span key={short} className={styles.hint}>
          {names.map((name) => (name === '…' ? <span key={name}>…</span> : <kbd key={name}>{name}</kbd>))} {short}
        </span>
      ))}
    </footer>
  );
}
