import { useEffect, useState } from 'react';
import { plugKey, type PlugKey } from '../../../../core/domain/plugs.ts';
import type { PhotoView } from '../../../../shared/channels-photo.ts';
import { bridge } from '../../../app/bridge.ts';
import { useText } from '../../../text/index.ts';
import { formatDate, formatNumber } from '../../../text/numbers.ts';
import { useQuantity } from '../../../ui/use-quantity.ts';
import styles from './compare.module.css';
import { QUANTITIES, trendPoints, type TrendPoint, type TrendQuantity } from './trend-points.ts';
import type { PhotographedReading } from './use-engine-photos.ts';

/** The gap of a plug at each reading, mm, by the reading's id. */
function useGaps(readings: readonly PhotographedReading[], plug: PlugKey): ReadonlyMap<string, number> {
  const [gaps, setGaps] = useState<ReadonlyMap<string, number>>(new Map());
  const ids = readings.map(({ reading }) => reading.id).join();
  useEffect(() => {
    let left = false;
    void Promise.all(ids.split(',').map((id) => bridge['reading.get']({ id }))).then((replies) => {
      const found = replies.flatMap((reply): readonly (readonly [string, number])[] => {
        const gap = reply.ok ? reply.value.sheet.plugs.find(({ cylinder, position }) => plugKey(cylinder, position) === plug)?.measured?.gapMm : undefined;
        return reply.ok && gap !== undefined ? [[reply.value.id, gap]] : [];
      });
      if (!left) setGaps(new Map(found));
    });
    return () => { left = true; };
  }, [ids, plug]);
  return gaps;
}

const WIDTH = 240;
const HEIGHT = 120;
const EDGE = { left: 58, right: 14, top: 12, bottom: 22 };
/** The least span an axis shows, so that noise does not look like a change: the measuring's own error for colours, a tenth for a gap. */
const LEAST_SPAN: Readonly<Record<TrendQuantity, number>> = { lightness: 20, a: 10, b: 10, coverage: 40, gap: 0.2 };
const RADIUS = 4.5;
const dayNumber = (day: string): number => Date.parse(day) / 86_400_000;

/** Where the points of one quantity lie, and the ends of its axes. */
function plotted(points: readonly TrendPoint[], days: readonly string[], quantity: TrendQuantity) {
  const values = points.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const spare = Math.max(0, LEAST_SPAN[quantity] - (high - low)) / 2;
  const [least, most] = quantity === 'coverage' ? [0, 100] : [low - spare, high + spare];
  const [first, last] = [dayNumber(days[0] ?? ''), dayNumber(days.at(-1) ?? '')];
  const x = (day: string): number => EDGE.left + ((WIDTH - EDGE.left - EDGE.right) * (dayNumber(day) - first)) / (last - first || 1);
  const y = (value: number): number => EDGE.top + ((HEIGHT - EDGE.top - EDGE.bottom) * (most - value)) / (most - least || 1);
  return { least, most, places: points.map((point) => ({ ...point, x: x(point.day), y: y(point.value) })) };
}

type ChartProps = {
  readonly quantity: TrendQuantity;
  readonly points: readonly TrendPoint[];
  readonly days: readonly string[];
  readonly shown: (value: number) => string;
};

function Chart({ quantity, points, days, shown }: ChartProps) {
  const { compare: words } = useText().photos;
  if (points.length === 0) return null;
  const { least, most, places } = plotted(points, days, quantity);
  const said = points.map(({ day, value }) => `${formatDate(day)} ${shown(value)}`).join('; ');
  const month = (day: string | undefined): string => (day ?? '').slice(0, 7);
  return (
    <figure className={styles.chart}>
      <figcaption>{words.quantities[quantity]}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.trendSaid(words.quantities[quantity], said)}>
        <path d={`M${EDGE.left} ${EDGE.top}V${HEIGHT - EDGE.bottom}H${WIDTH - EDGE.right}`} className={styles.axis} />
        <text x={EDGE.left - 5} y={EDGE.top + 4} textAnchor="end">{shown(most)}</text>
        <text x={EDGE.left - 5} y={HEIGHT - EDGE.bottom} textAnchor="end">{shown(least)}</text>
        <text x={EDGE.left} y={HEIGHT - 6}>{month(days[0])}</text>
        <text x={WIDTH - EDGE.right} y={HEIGHT - 6} textAnchor="end">{month(days.at(-1))}</text>
        <path d={places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')} className={styles.line} />
        {places.map(({ readingId, x, y, firm, day, value }) => (
          <circle key={readingId} cx={x} cy={y} r={RADIUS} className={firm ? styles.firm : styles.doubtful}><title>{`${formatDate(day)}: ${shown(value)}`}</title></circle>
        ))}
      </svg>
    </figure>
  );
}

/** How colour, dark coverage and gap of one plug's place went over the readings. */
export function Trend({ readings, plug, view }: { readings: readonly PhotographedReading[]; plug: PlugKey; view: PhotoView }) {
  const { compare: words } = useText().photos;
  const quantity = useQuantity();
  const gaps = useGaps(readings, plug);
  const points = trendPoints(readings, plug, view, gaps);
  const days = [...new Set(QUANTITIES.flatMap((each) => points[each].map(({ day }) => day)))].toSorted();
  const shown = (each: TrendQuantity) => (value: number): string => (each === 'gap' ? quantity('length', value) : formatNumber(Math.round(value) || 0, 0)); // never -0
  if (days.length < 2) return <p className={styles.soft}>{words.noTrend}</p>;
  return (
    <section className={styles.trend} aria-label={words.trend}>
      <h3>{words.trend}</h3>
      <div className={styles.charts}>
        {QUANTITIES.map((each) => <Chart key={each} quantity={each} points={points[each]} days={days} shown={shown(each)} />)}
      </div>
      <p className={styles.soft}>{words.trendHelp}</p>
    </section>
  );
}
