import type { PlugFindings } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { formatBelief } from '../../text/numbers.ts';
import styles from './thermal.module.css';

const STATES = ['tooCold', 'inWindow', 'tooHot'] as const;

/** Whether the tip was too cold, in its window or too hot: three words with their shares, the likeliest in bold, over one bar from cold to hot. */
export function Thermal({ thermal }: { thermal: PlugFindings['thermal'] }) {
  const text = useText().findings;
  const likeliest = STATES.reduce((best, state) => (thermal[state] > thermal[best] ? state : best));
  return (
    <div className={styles.thermal}>
      <svg className={styles.bar} viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
        <rect className={styles.inWindow} width="100" height="8" />
        <rect className={styles.tooCold} width={100 * thermal.tooCold} height="8" />
        <rect className={styles.tooHot} x={100 * (1 - thermal.tooHot)} width={100 * thermal.tooHot} height="8" />
      </svg>
      <ul className={styles.words}>
        {STATES.map((state) => <li key={state} data-likeliest={state === likeliest || undefined}>{text.thermals[state]} {formatBelief(thermal[state])}</li>)}
      </ul>
    </div>
  );
}
