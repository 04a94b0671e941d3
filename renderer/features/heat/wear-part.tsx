import { useState } from 'react';
import { DEFAULT_GROWTH, gapForecast, gapInterval, type ElectrodeMetal, type GapForecast } from '../../../core/wear/gap-growth.ts';
import { gapSets, type GapSet } from '../../../core/wear/gap-record.ts';
import { useText } from '../../text/index.ts';
import { formatDate, formatNumber } from '../../text/numbers.ts';
import { Choice } from '../../ui/choice.tsx';
import { SelectField } from '../../ui/select-field.tsx';
import { Slider } from '../../ui/slider.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import type { HeatBench } from './bench.ts';
import { between, line, scale } from './chart.ts';
import styles from './heat.module.css';

/** mm over the gap when new. Source: car manuals. */
const LIMIT_OVER_NEW = 0.2;
const METALS = ['nickel', 'platinum', 'iridium'] as const;
const WIDTH = 600;
const HEIGHT = 260;
const EDGE = { left: 72, right: 20, top: 12, bottom: 34 };
const [LEFT, RIGHT, FOOT] = [EDGE.left, WIDTH - EDGE.right, HEIGHT - EDGE.bottom];

/** Two figures: finer ones would claim too much. */
const roughly = (at: number): number => Number(at.toPrecision(2));

/** A running length in the person's units. */
function useLength(): (at: number, unit: GapSet['unit']) => string {
  const { heat: { wear } } = useText();
  const quantity = useQuantity();
  return (at, unit) => wear.lengthIn(unit === 'h' ? formatNumber(at, 0) : quantity('distance', 1000 * at), unit);
}

type ChartProps = { readonly set: GapSet; readonly limit: number; readonly forecast: GapForecast; readonly metal: ElectrodeMetal | undefined };

/** The end of the chart: the forecast where it is near, a few times the record where it is far. */
function endOf({ set: { readings }, forecast: { from, likely, late } }: ChartProps): number {
  const last = Math.max(...readings.map(({ at }) => at), 1e-9);
  return from === 'default' && likely !== undefined ? 1.1 * likely : Math.min(4 * last, Math.max(1.3 * last, late ?? likely ?? 2 * last));
}

function WearChart(props: ChartProps) {
  const { set: { readings, unit }, limit, forecast: { from }, metal } = props;
  const { heat: { wear } } = useText();
  const quantity = useQuantity();
  const length = useLength();
  const [end, last] = [endOf(props), readings.at(-1)];
  const gaps = readings.map(({ gap }) => gap);
  const across = scale(0, end, LEFT, RIGHT);
  const up = scale(Math.min(...gaps) - 0.08, Math.max(limit, ...gaps) + 0.08, FOOT, EDGE.top);
  const intervals = Array.from({ length: 41 }, (_, i) => (i / 40) * end).flatMap((at) => {
    const interval = gapInterval(readings, at);
    return interval === undefined ? [] : [{ at, ...interval }];
  });
  const of = (of_: 'low' | 'middle' | 'high') => intervals.map((one) => [across(one.at), up(one[of_])] as const);
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={wear.chart}>
      {[Math.min(...gaps), limit].map((tick) => <text key={tick} className={styles.tick} x={LEFT - 8} y={up(tick) + 5} textAnchor="end">{quantity('length', tick)}</text>)}
      {[0, end / 2, end].map((tick) => <text key={tick} className={styles.tick} x={across(tick)} y={HEIGHT - 10} textAnchor={tick === end ? 'end' : tick === 0 ? 'start' : 'middle'}>{length(roughly(tick), unit)}</text>)}
      <path className={styles.area} d={between(of('low'), of('high'))} />
      <g className={styles.rung} data-own=""><path d={line(of('middle'))} /></g>
      {from === 'default' && metal && last && (['low', 'middle', 'high'] as const).map((rate) => (
        <path key={rate} className={styles.fan}
          d={line([[across(last.at), up(last.gap)], [across(end), up(last.gap + DEFAULT_GROWTH[metal][rate] * (end - last.at))]])} />
      ))}
      <g className={styles.given}><line x1={LEFT} x2={RIGHT} y1={up(limit)} y2={up(limit)} /><text x={LEFT + 8} y={up(limit) - 6}>{wear.limitLine}</text></g>
      {readings.map(({ at, gap }) => <circle key={at} className={styles.measured} cx={across(at)} cy={up(gap)} r="6" />)}
    </svg>
  );
}

function Forecast({ set: { unit, readings }, limit, forecast }: ChartProps) {
  const { heat: { wear } } = useText();
  const length = useLength();
  const { from, early, likely, late, notes } = forecast;
  const rough = (at: number): string => length(roughly(at), unit);
  const bound = (at: number | undefined): string => (at === undefined ? wear.notBounded : rough(at));
  const last = readings.at(-1);
  const isOver = last !== undefined && last.gap >= limit;
  return (
    <>
      <p className={styles.answer}>
        {isOver ? wear.over : early !== undefined || likely !== undefined ? wear.forecast(likely === undefined ? wear.never : rough(likely), bound(early), bound(late)) : ''}
      </p>
      <p><span className={styles.basis} data-basis={from === 'record' ? 'calibrated' : 'predicted'}>{wear.from[from]}</span></p>
      {notes.map((note) => <p key={note}>{wear.notes[note]}</p>)}
    </>
  );
}

function Readings({ set: { readings, unit } }: { set: GapSet }) {
  const { heat: { wear } } = useText();
  const quantity = useQuantity();
  const length = useLength();
  return (
    <table className={styles.table} aria-label={wear.readings}>
      <thead><tr><th scope="col">{wear.at}</th><th scope="col">{wear.gap}</th></tr></thead>
      <tbody>{readings.map(({ at, gap }) => <tr key={at}><th scope="row">{length(at, unit)}</th><td>{quantity('length', gap)}</td></tr>)}</tbody>
    </table>
  );
}

/** When the gap of a set reaches its limit, as far as its readings say. */
export function WearPart({ engine, record }: HeatBench) {
  const { heat: { wear } } = useText();
  const quantity = useQuantity();
  const sets = gapSets(record.kept.map(({ sheet }) => sheet));
  const [chosen, setChosen] = useState<string | undefined>(undefined);
  const [limit, setLimit] = useState<number | undefined>(undefined);
  const [metal, setMetal] = useState<ElectrodeMetal | undefined>(undefined);
  const index = chosen === undefined ? sets.length - 1 : Number(chosen);
  const set = sets[index];
  if (set === undefined) return <section className={styles.block}><h2>{wear.title}</h2><p>{wear.none}</p></section>;
  const start = set.newGap ?? engine.fitment?.gapMm ?? set.readings[0]?.gap ?? 0.7;
  const least = limit ?? Number((start + LIMIT_OVER_NEW).toFixed(2));
  const rateOf = set.unit === 'h' ? undefined : set.metal ?? metal;
  const forecast = gapForecast(set.readings, least, rateOf);
  const nameOf = (one: GapSet | undefined): string => wear.setName(one?.until === undefined ? wear.undated : formatDate(one.until), one?.readings.length ?? 0);
  return (
    <>
      <section className={styles.verdict}><h2>{wear.title}</h2><Forecast set={set} limit={least} forecast={forecast} metal={rateOf} /></section>
      <div className={styles.tried}>
        <section className={styles.sliders} aria-label={wear.set}>
          <p className={styles.soft}>{wear.about}</p>
          {sets.length > 1 && (
            <SelectField label={wear.set} options={sets.map((_, i) => String(i))} value={String(index)} none={wear.set} onChange={setChosen}
              nameOf={(option) => nameOf(sets[Number(option)])} />
          )}
          <Slider label={wear.limit} remark={wear.limitGrade} value={least} shown={quantity('length', least)} least={Number((start + 0.05).toFixed(2))} most={Number((start + 0.8).toFixed(2))} step={0.01} onChange={setLimit} />
          {set.metal === undefined
            ? <Choice label={`${wear.metal} (${wear.assumedMetal})`} options={METALS} value={metal} nameOf={(one) => wear.metals[one]} onChange={setMetal} />
            : <p>{wear.metal}: {wear.metals[set.metal]}</p>}
          <Readings set={set} />
        </section>
        <div className={styles.answers}><WearChart set={set} limit={least} forecast={forecast} metal={rateOf} /></div>
      </div>
    </>
  );
}
