import { PRE_IGNITION, SELF_CLEANING, TOO_HOT, type SoftEdge } from '../../../core/thermal/limits.ts';
import type { Band } from '../../../core/band.ts';
import { useText } from '../../text/index.ts';
import { useQuantity } from '../../ui/use-quantity.ts';
import { LOADS, priceOf, type Rung } from './answer.ts';
import styles from './heat.module.css';

const WIDTH = 760;
const HEIGHT = 340;
const EDGE = { left: 64, right: 120, top: 12, bottom: 34 };
const LEAST = 200;
const MOST = 1100;
const TICKS = [300, 500, 700, 900, 1100];

const [FIRST = 0, LAST = 1] = [LOADS[0], LOADS.at(-1)];
const across = (load: number): number => EDGE.left + ((load - FIRST) / (LAST - FIRST)) * (WIDTH - EDGE.left - EDGE.right);
const up = (celsius: number): number => EDGE.top + ((MOST - Math.min(MOST, Math.max(LEAST, celsius))) / (MOST - LEAST)) * (HEIGHT - EDGE.top - EDGE.bottom);

const path = (points: readonly (readonly [number, number])[]): string => points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');

function known({ bands }: Rung): readonly (readonly [number, Band<number>])[] {
  return bands.flatMap((band, i) => (band === undefined ? [] : [[across(LOADS[i] ?? 0), band] as const]));
}

const [LEFT, RIGHT] = [EDGE.left, WIDTH - EDGE.right];

/** Limits that are not sharp: the spread within which sources lie, and its middle. */
function Limits() {
  const { limits } = useText().heat;
  const all: readonly { readonly edge: SoftEdge; readonly words: string; readonly below?: boolean }[] = [
    { edge: SELF_CLEANING, words: limits.cleaning, below: true }, { edge: TOO_HOT, words: limits.hot, below: true },
    { edge: PRE_IGNITION, words: limits.ignition },
  ];
  return (
    <g className={styles.limit}>
      {all.map(({ edge, words }) => <rect key={words} x={LEFT} width={RIGHT - LEFT} y={up(edge.to)} height={up(edge.from) - up(edge.to)} />)}
      {all.map(({ edge, words }) => <line key={words} x1={LEFT} x2={RIGHT} y1={up(edge.middle)} y2={up(edge.middle)} />)}
      {all.map(({ edge, words, below }) => <text key={words} x={LEFT + 8} y={up(edge.middle) + (below ? 15 : -5)}>{words}</text>)}
    </g>
  );
}

type Props = { readonly rungs: readonly Rung[]; readonly step: number; readonly load: number; readonly tip: Band<number> };

function Chart({ rungs, step, load, tip }: Props) {
  const { heat } = useText();
  const quantity = useQuantity();
  const own = rungs.find((rung) => rung.step === step);
  const points = own === undefined ? [] : known(own);
  const area = [...points.map(([x, band]) => [x, up(band.high)] as const), ...[...points].reverse().map(([x, band]) => [x, up(band.low)] as const)];
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={heat.ladderSaid}>
      {TICKS.map((tick) => <text key={tick} className={styles.tick} x={EDGE.left - 8} y={up(tick) + 5} textAnchor="end">{quantity('temperature', tick)}</text>)}
      {[FIRST, 0.5, 0.75, LAST].map((at) => (
        <text key={at} className={styles.tick} x={across(at)} y={HEIGHT - 10} textAnchor="middle">{Math.round(100 * at)} %{at === LAST ? ` ${heat.load}` : ''}</text>
      ))}
      <Limits />
      <path className={styles.area} d={`${path(area)}Z`} />
      {rungs.map((rung) => {
        const line = known(rung);
        const end = line.at(-1);
        return (
          <g key={rung.step} className={styles.rung} data-own={rung.step === step || undefined}>
            <path d={path(line.map(([x, { middle }]) => [x, up(middle)]))} />
            {end && <text x={end[0] + 8} y={up(end[1].middle) + 5}>{heat.steps(rung.step)}</text>}
          </g>
        );
      })}
      <line className={styles.mark} x1={across(load)} x2={across(load)} y1={up(tip.low)} y2={up(tip.high)} />
      <circle className={styles.mark} cx={across(load)} cy={up(tip.middle)} r="6" />
    </svg>
  );
}

const HEADS = ['step', 'light', 'full', 'price'] as const;

function Table({ rungs, step }: Pick<Props, 'rungs' | 'step'>) {
  const { heat } = useText();
  const quantity = useQuantity();
  const shown = (band: Band<number> | undefined): string => (band === undefined ? '' : quantity('temperature', band.middle));
  return (
    <table className={styles.table} aria-label={heat.ladder}>
      <thead><tr>{HEADS.map((head) => <th key={head} scope="col">{heat.table[head]}</th>)}</tr></thead>
      <tbody>
        {[...rungs].reverse().map((rung) => (
          <tr key={rung.step} data-own={rung.step === step || undefined}>
            <th scope="row">{heat.steps(rung.step)}</th><td>{shown(rung.bands[0])}</td><td>{shown(rung.bands.at(-1))}</td><td>{heat.prices[priceOf(rung)]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Which heat value keeps this engine inside the window, and at what price. */
export function Ladder(props: Props) {
  const { heat } = useText();
  return (
    <section className={styles.ladder}>
      <h2>{heat.ladder}</h2>
      <Chart {...props} />
      <Table rungs={props.rungs} step={props.step} />
    </section>
  );
}
