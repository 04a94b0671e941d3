import type { Compared } from '../../../../core/photo/compared.ts';
import { useText } from '../../../text/index.ts';
import { formatNumber } from '../../../text/numbers.ts';
import { Notice } from '../../../ui/notice.tsx';
import styles from './compare.module.css';

/** How far the parts differ, and how much of that is the measuring itself. */
export function Differences({ compared }: { compared: Compared }) {
  const { compare: words, measures } = useText().photos;
  const { hindrances, parts, coverage, otherCamera } = compared;
  return (
    <div className={styles.differences}>
      {hindrances.length > 0 && <Notice title={words.notComparable}><ul>{hindrances.map((one) => <li key={one}>{words.hindrances[one]}</li>)}</ul></Notice>}
      {parts.length > 0 && (
        <table className={styles.table}>
          <caption>{words.difference}</caption>
          <thead><tr><th scope="col">{measures.part}</th><th scope="col">{words.deltaE}</th><th scope="col">{words.unsure}</th><th scope="col">{words.says}</th></tr></thead>
          <tbody>
            {parts.map(({ part, difference, uncertainty, changed }) => (
              <tr key={part} data-changed={changed ? '' : undefined}>
                <th scope="row">{measures.regions[part]}</th><td>{formatNumber(difference, 1)}</td><td>{measures.plusMinus(formatNumber(uncertainty, 1))}</td>
                <td>{changed ? words.changed : words.noChange}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {coverage !== undefined && <p>{words.coverage(formatNumber(100 * coverage.before, 0), formatNumber(100 * coverage.after, 0), coverage.changed)}</p>}
      {otherCamera && <p className={styles.soft}>{words.otherCamera}</p>}
      {parts.length > 0 && <p className={styles.soft}>{words.help}</p>}
    </div>
  );
}
