import type { Band } from '../../../core/band.ts';
import { PRE_IGNITION, SELF_CLEANING, TOO_HOT } from '../../../core/thermal/limits.ts';
import { useText } from '../../text/index.ts';
import { scale } from './chart.ts';
import styles from './heat.module.css';

const WIDTH = 430;
const HEIGHT = 58;
type Ends = Pick<Band<number>, 'low' | 'middle' | 'high'>;
type Props = { readonly now: Ends; readonly aside: Ends | undefined };

/** The band that is set, thick with its middle, and under it the one put aside. */
function Bands({ now, aside, across }: Props & { across: (value: number) => number }) {
  return (
    <>
      <line className={styles.bandRule} x1="0" x2={WIDTH} y1={HEIGHT} y2={HEIGHT} />
      <line className={styles.bandAfter} x1={across(now.low)} x2={across(now.high)} y1="30" y2="30" />
      <circle className={styles.bandMiddle} cx={across(now.middle)} cy="30" r="7" />
      {aside && <line className={styles.bandBefore} x1={across(aside.low)} x2={across(aside.high)} y1="44" y2="44" />}
      {aside && <line className={styles.bandBefore} x1={across(aside.middle)} x2={across(aside.middle)} y1="39" y2="49" />}
    </>
  );
}

/** The tip on its scale with the limits; the table beside it says the values. */
export function TipScale({ now, aside }: Props) {
  const { limits } = useText().heat;
  const across = scale(200, 1100, 0, WIDTH);
  const edges = [{ edge: SELF_CLEANING, words: limits.cleaning }, { edge: TOO_HOT, words: limits.hot }, { edge: PRE_IGNITION, words: undefined }];
  return (
    <svg className={styles.scale} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <g className={styles.limit}>
        {edges.map(({ edge }) => <rect key={edge.middle} x={across(edge.from)} width={across(edge.to) - across(edge.from)} y="18" height={HEIGHT - 18} />)}
        {edges.map(({ edge }) => <line key={edge.middle} x1={across(edge.middle)} x2={across(edge.middle)} y1="18" y2={HEIGHT} />)}
        {edges.map(({ edge, words }) => words && <text key={edge.middle} x={across(edge.middle)} y="13" textAnchor="middle">{words}</text>)}
      </g>
      <Bands now={now} aside={aside} across={across} />
    </svg>
  );
}

/** The voltage asked for against what the coil can give. */
export function VoltageScale({ now, aside, available }: Props & { readonly available: number }) {
  const { spark } = useText().heat;
  const across = scale(0, 45, 0, WIDTH);
  const end = across(available);
  return (
    <svg className={styles.scale} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <g className={styles.limit}>
        <rect x={end} width={WIDTH - end} y="18" height={HEIGHT - 18} /><line x1={end} x2={end} y1="18" y2={HEIGHT} />
        <text x={Math.min(WIDTH - 80, Math.max(80, end))} y="13" textAnchor="middle">{spark.lines.available}</text>
      </g>
      <Bands now={now} aside={aside} across={across} />
    </svg>
  );
}
