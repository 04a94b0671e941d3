import { REPEATS, type DriveAnswer } from '../../../core/heat/drive-answer.ts';
import { GOOD_INSULATION } from '../../../core/soot/nose-soot.ts';
import { SELF_CLEANING, TOO_HOT } from '../../../core/thermal/limits.ts';
import { useText } from '../../text/index.ts';
import { useQuantity } from '../../ui/use-quantity.ts';
import { between, line, logScale, scale } from './chart.ts';
import styles from './heat.module.css';

const WIDTH = 600;
const HEIGHT = 210;
const EDGE = { left: 82, right: 16, top: 10, bottom: 30 };
const [LEFT, RIGHT, FOOT] = [EDGE.left, WIDTH - EDGE.right, HEIGHT - EDGE.bottom];

/** Tip temperature over the drive with its band; the working window is shaded. */
export function DriveChart({ answer: { course, seconds } }: { answer: DriveAnswer }) {
  const { heat } = useText();
  const quantity = useQuantity();
  const up = scale(-50, 1000, FOOT, EDGE.top);
  const across = scale(0, seconds, LEFT, RIGHT);
  const of = (end: 'low' | 'middle' | 'high') => course.map((point) => [across(point.at), up(point[end])] as const);
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={heat.drive.chart}>
      <g className={styles.limit}>
        <rect x={LEFT} width={RIGHT - LEFT} y={up(TOO_HOT.middle)} height={up(SELF_CLEANING.middle) - up(TOO_HOT.middle)} />
        <text x={LEFT + 8} y={up(TOO_HOT.middle) + 16}>{heat.drive.window}</text>
      </g>
      {[0, SELF_CLEANING.middle, TOO_HOT.middle].map((tick) => <text key={tick} className={styles.tick} x={LEFT - 8} y={up(tick) + 5} textAnchor="end">{quantity('temperature', tick)}</text>)}
      <text className={styles.tick} x={RIGHT} y={HEIGHT - 8} textAnchor="end">{heat.times(seconds)}</text>
      <path className={styles.area} d={between(of('low'), of('high'))} />
      <g className={styles.rung} data-own=""><path d={line(of('middle'))} /></g>
    </svg>
  );
}

/** Insulation over the repeats: it falls with every cold start that is not burnt off. */
export function FoulingChart({ answer: { fouling } }: { answer: DriveAnswer }) {
  const { heat } = useText();
  const quantity = useQuantity();
  const up = logScale(0.1, 10_000, FOOT, EDGE.top);
  const across = scale(0, REPEATS, LEFT, RIGHT);
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={heat.drive.foulingSaid}>
      <g className={styles.limit}>
        <rect x={LEFT} width={RIGHT - LEFT} y={EDGE.top} height={up(GOOD_INSULATION) - EDGE.top} />
        <text x={LEFT + 8} y={up(GOOD_INSULATION) - 6}>{heat.drive.good}</text>
      </g>
      {[0.1, 1, 10, 100, 1000, 10_000].map((tick) => <text key={tick} className={styles.tick} x={LEFT - 8} y={up(tick) + 5} textAnchor="end">{quantity('insulation', tick)}</text>)}
      {[5, 10, 15, REPEATS].map((tick) => <text key={tick} className={styles.tick} x={across(tick)} y={HEIGHT - 8} textAnchor={tick === REPEATS ? 'end' : 'middle'}>{tick === REPEATS ? heat.drive.drives(tick) : tick}</text>)}
      <g className={styles.rung} data-own=""><path d={line(fouling.map(({ drives, insulation }) => [across(drives), up(Math.max(0.1, insulation))]))} /></g>
    </svg>
  );
}
