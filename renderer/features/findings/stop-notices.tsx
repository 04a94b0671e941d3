import type { Findings } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { useTold } from '../../ui/use-told.ts';
import { entryHref } from '../knowledge/index.ts';
import styles from './stop-notices.module.css';

/** Rules that outrank every belief. Unmissable by word and by shape: an eight-sided sign and a heavy frame. */
export function StopNotices({ stop }: { stop: Findings['stop'] }) {
  const text = useText().findings;
  const told = useTold();
  if (stop.length === 0) return null;
  return (
    <section className={styles.stop} aria-labelledby="findings-stop">
      <svg className={styles.sign} viewBox="0 0 48 48" aria-hidden="true"><path d="M15 2h18l13 13v18L33 46H15L2 33V15z" /><path className={styles.bar} d="M12 24h24" /></svg>
      <div>
        <h2 id="findings-stop">{text.stop}</h2>
        <p className={styles.about}>{text.stopAbout}</p>
        <ul className={styles.rules}>
          {stop.map(({ rule, cylinder, why }) => (
            <li key={`${rule} ${cylinder}`}>
              {told.sentence(why)} <a className={styles.look} href={entryHref('stops', rule)} aria-label={text.lookUpLine(told.sentence(why))}>{text.lookUp}</a>
            </li>
          ))}
        </ul>
      </div>
    </section>
  );
}
