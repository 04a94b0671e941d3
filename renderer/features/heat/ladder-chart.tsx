import type { Band } from '../../../core/band.ts';
import { LOADS, type Rung } from '../../../core/heat/ladder.ts';
import { PRE_IGNITION, SELF_CLEANING, TOO_HOT, type SoftEdge } from '../../../core/thermal/limits.ts';
import { useText } from '../../text/index.ts';
import { useQuantity } from '../../ui/use-quantity.ts';
import { between, line, scale } from './chart.ts';
import styles from './heat.module.css';
import type { Mark } from './recorded-marks.ts';

const WIDTH = 760;
const HEIGHT = 330;
const EDGE = { left: 64, right: 120, top: 10, bottom: 32 };
const TICKS = [300, 500, 700, 900, 1100];
const LOAD_TICKS = [0.35, 0.5, 0.75, 1];
const [LEFT, RIGHT] = [EDGE.left, WIDTH - EDGE.right];

const across = scale(0.35, 1, LEFT, RIGHT);
const up = scale(200, 1100, HEIGHT - EDGE.bottom, EDGE.top);

const known = ({ bands }: Rung): readonly (readonly [number, Band<number>])[] =>
  bands.flatMap((band, i) => (band === undefined ? [] : [[across(LOADS[i] ?? 0), band] as const]));

/** Limits that are not sharp: the spread within which sources lie, and its middle. */
function Limits() {
  const { limits } = useText().heat;
  const all: readonly { readonly edge: SoftEdge; readonly words: string; readonly below: boolean; readonly right?: true }[] = [
    { edge: SELF_CLEANING, words: limits.cleaning, below: true, right: true }, { edge: TOO_HOT, words: limits.hot, below: true },
    { edge: PRE_IGNITION, words: limits.ignition, below: false },
  ];
  return (
    <g className={styles.limit}>
      {all.map(({ edge, words }) => <rect key={words} x={LEFT} width={RIGHT - LEFT} y={up(edge.to)} height={up(edge.from) - up(edge.to)} />)}
      {all.map(({ edge, words }) => <line key={words} x1={LEFT} x2={RIGHT} y1={up(edge.middle)} y2={up(edge.middle)} />)}
      {all.map(({ edge, words, below, right }) => (
        <text key={words} x={right ? RIGHT - 8 : LEFT + 8} y={up(edge.middle) + (below ? 15 : -5)} textAnchor={right ? 'end' : 'start'}>{words}</text>
      ))}
    </g>
  );
}

function Line({ rung, own, label }: { rung: Rung; own: boolean; label: string }) {
  const points = known(rung);
  const end = points.at(-1);
  return (
    <g className={styles.rung} data-own={own || undefined}>
      <path d={line(points.map(([x, { middle }]) => [x, up(middle)]))} />
      {end && <text x={end[0] + 8} y={up(end[1].middle) + 5}>{label}</text>}
    </g>
  );
}

type Props = { readonly rungs: readonly Rung[]; readonly step: number; readonly marks: readonly Mark[] };

/** Tip over load for each heat value, the band of the fitted one, and where the engine was recorded to run. */
export function LadderChart({ rungs, step, marks }: Props) {
  const { heat } = useText();
  const quantity = useQuantity();
  const own = known(rungs.find((rung) => rung.step === step) ?? { step, bands: [] });
  const edge = (of: 'low' | 'high') => own.map(([x, band]) => [x, up(band[of])] as const);
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={heat.ladderSaid}>
      {TICKS.map((tick) => <text key={tick} className={styles.tick} x={LEFT - 8} y={up(tick) + 5} textAnchor="end">{quantity('temperature', tick)}</text>)}
      {LOAD_TICKS.map((at) => (
        <text key={at} className={styles.tick} x={across(at)} y={HEIGHT - 10} textAnchor="middle">{Math.round(100 * at)} %{at === 1 ? ` ${heat.load}` : ''}</text>
      ))}
      <Limits />
      <path className={styles.area} d={between(edge('low'), edge('high'))} />
      {rungs.map((rung) => <Line key={rung.step} rung={rung} own={rung.step === step} label={heat.steps(rung.step)} />)}
      {marks.map(({ id, setting, band }, i) => {
        const x = across(setting.load) - (setting.load > 0.9 ? 20 * (marks.length - i) : 0); // beside each other, clear of the names of the lines
        return (
          <g key={id}>
            <line className={styles.mark} x1={x} x2={x} y1={up(band.low)} y2={up(band.high)} />
            <circle className={styles.mark} cx={x} cy={up(band.middle)} r="8" />
            <text className={styles.markNumber} x={x} y={up(band.middle) + 4} textAnchor="middle">{i + 1}</text>
          </g>
        );
      })}
    </svg>
  );
}
