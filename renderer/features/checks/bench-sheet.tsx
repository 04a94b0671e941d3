import { useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Citations } from '../../ui/citations.tsx';
import { Cell } from './cells.tsx';
import { cellName, COLUMNS, GROUPS } from './columns.ts';
import { moveBetweenCells } from './move.ts';
import styles from './sheet.module.css';
import { compressionSpread } from './spread.ts';

function Head() {
  const text = useText().checks;
  return (
    <thead>
      <tr>
        <td className={styles.corner} />
        {GROUPS.map(({ group, columns, sources }) => (
          <th key={group} scope="colgroup" colSpan={columns.length} className={styles.group}>
            <span className={styles.groupTitle}>{text.groups[group].title}</span>
            <span className={styles.caution}>{text.groups[group].caution} <Citations ids={sources} /></span>
          </th>
        ))}
      </tr>
      <tr>
        <th scope="col" className={styles.corner}>{text.cylinder}</th>
        {COLUMNS.map((column) => <th key={column} scope="col" className={styles.column} data-kind={column}>{text.columns[column]}</th>)}
      </tr>
    </thead>
  );
}

/** One row a cylinder, one column a check; a caution stands over the checks it belongs to. */
export function BenchSheet() {
  const text = useText().checks;
  const { engine, cylinderChecks = [] } = useSheet();
  const spread = compressionSpread(cylinderChecks);
  return (
    <div className={styles.frame}>
      <table className={styles.sheet} aria-labelledby="bench-sheet" onKeyDown={moveBetweenCells}>
        <Head />
        <tbody data-start="" tabIndex={-1}>
          {Array.from({ length: engine.cylinders }, (_, i) => i + 1).map((cylinder) => (
            <tr key={cylinder}>
              <th scope="row" className={styles.number}><span aria-hidden="true">{cylinder}</span><span className={styles.said}>{text.cylinderNumber(cylinder)}</span></th>
              {COLUMNS.map((column, index) => (
                <td key={column} data-row={cylinder} data-column={index} data-field={cellName(column, cylinder)}>
                  <Cell column={column} cylinder={cylinder} check={cylinderChecks.find((check) => check.cylinder === cylinder)} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {spread !== undefined && (
        <p className={styles.spread}>{text.spread(formatNumber(100 * spread.ratio, 0), spread.lowest, spread.best)} <Citations ids={['S15', 'W19']} /></p>
      )}
    </div>
  );
}
