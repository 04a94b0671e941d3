import { useMemo, useState } from 'react';
import { answerOf, CLEAN_PLUG, demandOverGap, GAPS, type Answer, type DemandAt, type PlugState } from '../../../core/heat/spark-answer.ts';
import { MOST_GAP } from '../../../core/spark/reserve.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Choice } from '../../ui/choice.tsx';
import { Notice } from '../../ui/notice.tsx';
import { Slider } from '../../ui/slider.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import type { HeatBench } from './bench.ts';
import { between, line, scale } from './chart.ts';
import styles from './heat.module.css';
import { AsSet, Rows, Wider } from './pieces.tsx';
import { useHeatWords } from './use-words.ts';

const WIDTH = 600;
const HEIGHT = 280;
const EDGE = { left: 64, right: 20, top: 12, bottom: 34 };
const [LEFT, RIGHT, FOOT] = [EDGE.left, WIDTH - EDGE.right, HEIGHT - EDGE.bottom];
const across = scale(GAPS[0] ?? 0, GAPS.at(-1) ?? 1, LEFT, RIGHT);

type ChartProps = { readonly demands: readonly DemandAt[]; readonly available: number; readonly gap: number };

/** Voltage over the gap: one band that takes in both ways of reckoning, each as a line, and what the coil can give. */
function SparkChart({ demands, available, gap }: ChartProps) {
  const { heat: { spark } } = useText();
  const quantity = useQuantity();
  const most = Math.max(30, 10 * Math.ceil(Math.max(available, ...demands.map(({ model }) => model.high)) / 10));
  const up = scale(0, most, FOOT, EDGE.top);
  const of = (value: (one: DemandAt) => number) => demands.map((one) => [across(one.gap), up(value(one))] as const);
  return (
    <svg className={styles.chart} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={spark.chart}>
      {[0, most / 2, most].map((tick) => <text key={tick} className={styles.tick} x={LEFT - 8} y={up(tick) + 5} textAnchor="end">{quantity('voltage', tick)}</text>)}
      {[0.3, 0.6, 0.9, 1.2, 1.5].map((tick) => <text key={tick} className={styles.tick} x={across(tick)} y={HEIGHT - 10} textAnchor={tick === 1.5 ? 'end' : 'middle'}>{quantity('length', tick)}</text>)}
      <path className={styles.area} d={between(of(({ model }) => model.low), of(({ model }) => model.high))} />
      <g className={styles.rung} data-own=""><path d={line(of(({ model }) => model.middle))} /></g>
      <g className={styles.rung} data-dashed=""><path d={line(of(({ correlation }) => correlation))} /></g>
      <g className={styles.given}>
        <line x1={LEFT} x2={RIGHT} y1={up(available)} y2={up(available)} />
        <line x1={across(gap)} x2={across(gap)} y1={EDGE.top} y2={FOOT} /><text x={across(gap) + 6} y={FOOT - 6}>{spark.lines.gap}</text>
      </g>
    </svg>
  );
}

/** Which line is which. */
function Legend() {
  const { heat: { spark } } = useText();
  return (
    <ul className={styles.legend}>
      {(['model', 'correlation', 'available'] as const).map((each) => <li key={each} data-line={each}>{spark.lines[each]}</li>)}
    </ul>
  );
}

function SparkNumbers({ answer, correlation }: { answer: Answer; correlation: number | undefined }) {
  const { heat: { spark, band } } = useText();
  const quantity = useQuantity();
  const { kilovolts } = useHeatWords();
  const { demand, available, misfires, density } = answer;
  const volts = (value: number): string => quantity('voltage', value);
  const share = (value: number): string => (value < 0.001 ? spark.under : `${formatNumber(100 * value, 1)} %`);
  return (
    <Rows label={spark.title} rows={[
      [spark.asked, kilovolts(demand)], ...(correlation === undefined ? [] : [[spark.correlation, volts(correlation)] as const]),
      [spark.available, volts(available)],
      [spark.left, band(volts(available - demand.middle), volts(available - demand.high), volts(available - demand.low))],
      [spark.misfires, spark.share(share(misfires.middle), share(misfires.low), share(misfires.high))],
      [spark.density, spark.densityShown(formatNumber(density, 1))],
    ]} />
  );
}

/** Gap and ignition to either side of the setting, and the plug's own state. Insulation goes by tens. */
function Controls({ bench: { setting, onTry }, plug, onPlug }: { bench: HeatBench; plug: PlugState; onPlug: (plug: PlugState) => void }) {
  const { heat } = useText();
  const { spark } = heat;
  const quantity = useQuantity();
  const { percent } = useHeatWords();
  return (
    <section className={styles.sliders} aria-label={heat.setting}>
      <Slider label={heat.sliders.gap} remark={spark.grades.gap} value={setting.gap} shown={quantity('length', setting.gap)} least={0.3} most={1.5} step={0.01}
        onChange={(gap) => onTry({ setting: { ...setting, gap } })} />
      <Slider label={heat.sliders.coil} remark={spark.grades.coil} value={setting.coil} shown={quantity('voltage', setting.coil)} least={10} most={45} step={1}
        onChange={(coil) => onTry({ setting: { ...setting, coil } })} />
      <Slider label={spark.insulation} remark={spark.grades.insulation} value={Math.log10(plug.insulation)} shown={quantity('insulation', Number(plug.insulation.toPrecision(2)))}
        least={-1} most={3} step={0.1} onChange={(ten) => onPlug({ ...plug, insulation: 10 ** ten })} />
      <Slider label={spark.wear} remark={spark.grades.wear} value={plug.wear} shown={spark.wearShown(percent(plug.wear))} least={0} most={1} step={0.05}
        onChange={(wear) => onPlug({ ...plug, wear })} />
      <Choice label={spark.polarity} options={['negative', 'positive']} value={plug.polarity} nameOf={(sign) => spark.polarities[sign]} always
        onChange={(polarity) => { if (polarity) onPlug({ ...plug, polarity }); }} />
    </section>
  );
}

/** What the gap asks for, what is left over, and how wide it may be. */
export function SparkPart(bench: HeatBench) {
  const { id, engine, setting, learned } = bench;
  const { heat } = useText();
  const { spark } = heat;
  const quantity = useQuantity();
  const words = useHeatWords();
  const [plug, setPlug] = useState(CLEAN_PLUG);
  const answer = useMemo(() => answerOf(engine, setting, learned.belief, plug), [engine, setting, learned, plug]);
  const demands = useMemo(() => demandOverGap(engine, setting, learned.belief, plug), [engine, setting, learned, plug]);
  if (!answer.ok) return <Notice tone="problem" title={heat.refused}>{answer.error.map(words.note).join(' ')}</Notice>;
  const { surely, likely } = answer.value.widest;
  const length = (mm: number): string => (mm >= MOST_GAP ? heat.orMore(quantity('length', mm)) : quantity('length', mm));
  const away = (one: DemandAt): number => Math.abs(one.gap - setting.gap);
  const near = [...demands].sort((a, b) => away(a) - away(b))[0];
  return (
    <>
      <div className={styles.verdict}>
        <h2>{spark.title}</h2>
        <p className={styles.answer}>{surely === undefined ? spark.adviceNone : spark.advice(quantity('voltage', answer.value.available), length(surely), length(likely ?? surely))}</p>
        <p>{engine.fitment?.gapMm === undefined ? spark.noMaker : spark.maker(quantity('length', engine.fitment.gapMm))}</p>
        <AsSet id={id} setting={setting} />
      </div>
      <div className={styles.tried}>
        <Controls bench={bench} plug={plug} onPlug={setPlug} />
        <div className={styles.answers}>
          <SparkChart demands={demands} available={answer.value.available} gap={setting.gap} />
          <Legend />
          <SparkNumbers answer={answer.value} correlation={near?.correlation} />
          <p className={styles.soft}>{spark.twoWays}</p>
          <Wider notes={answer.value.demand.notes} />
        </div>
      </div>
      <p><strong>{spark.danger}</strong></p>
    </>
  );
}
