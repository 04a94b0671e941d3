import type { Band } from '../../../core/band.ts';
import { scale } from './chart.ts';
import styles from './heat.module.css';

const WIDTH = 220;
const across = scale(200, 1100, 0, WIDTH);

/** A band before and after a reading, thin above thick; the words beside it say the values. */
export function BandBar({ before, after }: { before: Band<number>; after: Band<number> }) {
  return (
    <svg className={styles.bandBar} viewBox={`0 0 ${WIDTH} 26`} width={WIDTH} height="26" aria-hidden="true">
      <line className={styles.bandRule} x1="0" x2={WIDTH} y1="25" y2="25" />
      <line className={styles.bandBefore} x1={across(before.low)} x2={across(before.high)} y1="6" y2="6" />
      <line className={styles.bandAfter} x1={across(after.low)} x2={across(after.high)} y1="16" y2="16" />
    </svg>
  );
}
