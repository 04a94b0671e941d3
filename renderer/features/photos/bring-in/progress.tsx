import { useStore } from '../../../state/store.ts';
import { useText } from '../../../text/index.ts';
import { Button } from '../../../ui/button.tsx';
import styles from './bring-in.module.css';

/** How far the photos on their way are, and what is wrong with those that did not come in. */
export function Progress({ readingId }: { readingId: string }) {
  const { photos: { bringIn: words }, shell } = useText();
  const { stopIncoming, clearIncoming } = useStore.getState();
  const all = useStore((state) => state.incoming);
  const incoming = all.filter((one) => one.readingId === readingId);
  if (incoming.length === 0) return null;
  const underway = incoming.filter(({ state }) => state === 'waiting' || state === 'coming').length;
  const done = incoming.length - underway;
  const of = (state: (typeof incoming)[number]['state']): number => incoming.filter((one) => one.state === state).length;
  const troubled = incoming.filter(({ error }) => error !== undefined);
  if (underway === 0 && troubled.length === 0 && of('known') + of('stopped') === 0) return null;
  return (
    <section className={styles.progress} aria-label={words.onTheirWay}>
      <div className={styles.line}>
        <span role="status">{underway > 0 ? words.going(done, incoming.length) : words.ended({ in: of('in'), known: of('known'), stopped: of('stopped'), refused: of('refused') })}</span>
        {underway > 0 && <progress className={styles.bar} max={incoming.length} value={done} aria-label={words.onTheirWay} />}
        {underway > 0 ? <Button onClick={stopIncoming}>{words.stop}</Button> : <Button look="quiet" onClick={clearIncoming}>{words.putAway}</Button>}
      </div>
      {troubled.length > 0 && (
        <ul className={styles.refused}>
          {troubled.map(({ key, name, state, error }) => <li key={key}><strong>{name}</strong>{state !== 'refused' && ` ${words.addedBut}`} {error !== undefined && shell.error(error)}</li>)}
        </ul>
      )}
    </section>
  );
}
