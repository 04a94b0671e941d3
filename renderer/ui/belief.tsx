import { beliefGrade } from '../../core/domain/grades.ts';
import { useText } from '../text/index.ts';
import { formatBelief } from '../text/numbers.ts';
import styles from './belief.module.css';

/** A belief as a word, a quiet bar and a number. `bar` leaves the word and the number to the words around it. */
export function Belief({ value, show = 'all' }: { value: number; show?: 'all' | 'bar' }) {
  const text = useText().findings;
  const bar = (
    <svg className={styles.bar} viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
      <rect className={styles.track} width="100" height="8" />
      <rect className={styles.fill} width={Math.round(value * 100)} height="8" />
    </svg>
  );
  if (show === 'bar') return bar;
  return <span className={styles.belief}><span>{text.beliefs[beliefGrade(value)]}</span>{bar}<span>{formatBelief(value)}</span></span>;
}
