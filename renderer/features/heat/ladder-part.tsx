import { useMemo } from 'react';
import { hottestInside, ladderOf, LOADS, priceOf, type Rung } from '../../../core/heat/ladder.ts';
import { LIMITS_OF_SOURCES, PRE_IGNITION, SELF_CLEANING, TOO_HOT, type SoftEdge } from '../../../core/thermal/limits.ts';
import { useText } from '../../text/index.ts';
import { formatDate } from '../../text/numbers.ts';
import { Fold } from '../../ui/fold.tsx';
import type { HeatBench } from './bench.ts';
import styles from './heat.module.css';
import { LadderChart } from './ladder-chart.tsx';
import { Assumptions, AsSet, BasisMark, basisOf } from './pieces.tsx';
import { recordedMarks, type Mark } from './recorded-marks.ts';
import { useHeatWords } from './use-words.ts';

const HEADS = ['step', 'light', 'full', 'hot', 'cleans'] as const;

function LadderTable({ rungs, step }: { rungs: readonly Rung[]; step: number }) {
  const { heat } = useText();
  const words = useHeatWords();
  return (
    <table className={styles.table} aria-label={heat.ladder}>
      <thead><tr>{HEADS.map((head) => <th key={head} scope="col">{heat.table[head]}</th>)}</tr></thead>
      <tbody>
        {[...rungs].reverse().map((rung) => {
          const [light, full, { tooHot, cleansFrom }] = [rung.bands[0], rung.bands.at(-1), priceOf(rung)];
          return (
            <tr key={rung.step} data-own={rung.step === step || undefined}>
              <th scope="row">{heat.steps(rung.step)}</th>
              <td>{light && words.celsius(light.middle)}</td><td>{full && words.tips(full)}</td><td>{heat.chance(tooHot)}</td>
              <td>{cleansFrom === undefined ? heat.never : words.percent(cleansFrom)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** The question of the ladder and its answer in sentences. The model alone never speaks for a hotter plug than the one asked for. */
function Verdict({ rungs }: { rungs: readonly Rung[] }) {
  const { heat } = useText();
  const words = useHeatWords();
  const hottest = hottestInside(rungs);
  const best = rungs.map(priceOf).find(({ step }) => step === Math.min(0, hottest?.step ?? -1));
  const cost = (from: number | undefined, step: number): string => heat.cost(from === undefined ? undefined : words.percent(from), step);
  return (
    <div className={styles.verdict}>
      <h2>{heat.question}</h2>
      <p className={styles.answer}>
        {hottest === undefined || best === undefined ? heat.verdictNone
          : [heat.verdict(best.step, heat.chance(best.tooHot)), best.cleansFrom === LOADS[0] ? heat.costFree : cost(best.cleansFrom, best.step)].join(' ')}
      </p>
      <p className={styles.soft}>{hottest !== undefined && hottest.step > 0 && `${heat.hotterNever(hottest.step)} `}{heat.notAdvice}</p>
    </div>
  );
}

function Conflicts() {
  const { heat } = useText();
  const { celsius } = useHeatWords();
  const spread = ({ middle, from, to }: SoftEdge): string => heat.band(celsius(middle), celsius(from), celsius(to));
  const given = (value: number | undefined): string => (value === undefined ? '' : celsius(value));
  return (
    <Fold title={heat.conflicts}>
      <table className={styles.table} aria-label={heat.conflicts}>
        <thead><tr>{(['of', 'cleaning', 'hot', 'ignition'] as const).map((head) => <th key={head} scope="col">{heat.conflictHeads[head]}</th>)}</tr></thead>
        <tbody>
          {LIMITS_OF_SOURCES.map(({ of, cleaning, hot, ignition }) => (
            <tr key={of}>
              <th scope="row">{heat.sourcesOfLimits[of]}</th>
              <td>{cleaning && (cleaning[1] === undefined ? celsius(cleaning[0]) : heat.range(celsius(cleaning[0]), celsius(cleaning[1])))}</td>
              <td>{given(hot)}</td><td>{given(ignition)}</td>
            </tr>
          ))}
          <tr data-own><th scope="row">{heat.conflictUsed}</th><td>{spread(SELF_CLEANING)}</td><td>{spread(TOO_HOT)}</td><td>{spread(PRE_IGNITION)}</td></tr>
        </tbody>
      </table>
    </Fold>
  );
}

function Marks({ marks }: { marks: readonly Mark[] }) {
  const { heat } = useText();
  const words = useHeatWords();
  return (
    <div>
      <h3>{heat.marks}</h3>
      {marks.length === 0 ? <p className={styles.soft}>{heat.noMarks}</p> : (
        <ol className={styles.marks}>
          {marks.map(({ id, date, duty, setting, band }) => (
            <li key={id}>
              {heat.mark(date === undefined ? heat.told.undated : formatDate(date), duty)}; {words.running(setting)}: <strong>{words.tips(band)}</strong>
            </li>
          ))}
        </ol>
      )}
    </div>
  );
}

/** Which heat value keeps this engine inside the window, and at what price. */
export function LadderPart({ id, engine, setting, learned, record }: HeatBench) {
  const { heat } = useText();
  const rungs = useMemo(() => ladderOf(engine, setting, learned.belief), [engine, setting, learned]);
  const marks = useMemo(() => recordedMarks(record, learned.belief), [record, learned]);
  return (
    <>
      <Verdict rungs={rungs} />
      <section className={styles.block} aria-label={heat.ladder}>
        <div className={styles.line}><BasisMark basis={basisOf(learned)} /><AsSet id={id} setting={setting} /></div>
        <LadderChart rungs={rungs} step={setting.heatStep} marks={marks} />
        <LadderTable rungs={rungs} step={setting.heatStep} />
        <Assumptions engine={engine} />
      </section>
      <Marks marks={marks} />
      <Conflicts />
    </>
  );
}
