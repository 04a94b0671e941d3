import { useMemo } from 'react';
import type { Learned } from '../../../core/heat/anchors.ts';
import { lambdaReached, type Setting, type Slider } from '../../../core/heat/setting.ts';
import { answerOf, type Answer } from '../../../core/heat/spark-answer.ts';
import { MOST_GAP } from '../../../core/spark/reserve.ts';
import type { Kilovolt } from '../../../shared/quantities.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { Notice } from '../../ui/notice.tsx';
import { useQuantity } from '../../ui/use-quantity.ts';
import { TipScale, VoltageScale } from './band-scale.tsx';
import type { HeatBench } from './bench.ts';
import styles from './heat.module.css';
import { HeatNotes } from './heat-notes.tsx';
import { BasisMark, basisOf, Wider } from './pieces.tsx';
import { Sliders } from './sliders.tsx';
import { looksLike, placeOf } from './tip-likeness.ts';
import { useHeatWords } from './use-words.ts';

type Line = { readonly name: string; readonly of: (answer: Answer) => string };

function useLines(): readonly Line[] {
  const { heat } = useText();
  const quantity = useQuantity();
  const words = useHeatWords();
  const length = (mm: number | undefined): string => {
    if (mm === undefined) return heat.none;
    return mm >= MOST_GAP ? heat.orMore(quantity('length', mm)) : quantity('length', mm);
  };
  const left = ({ available, demand }: Answer) => {
    const less = (asked: Kilovolt): number => available - asked;
    return { low: less(demand.high), middle: less(demand.middle), high: less(demand.low) };
  };
  return [
    { name: heat.tip, of: ({ tip }) => words.tips(tip) },
    { name: heat.ground, of: ({ ground }) => words.tips(ground) },
    { name: heat.demand, of: ({ demand }) => words.kilovolts(demand) },
    { name: heat.reserve, of: (answer) => words.kilovolts(left(answer)) },
    { name: heat.widest, of: ({ widest }) => heat.widestRange(length(widest.surely), length(widest.likely)) },
    { name: heat.afterAnHour, of: ({ afterAnHour }) => (afterAnHour >= 1000 ? heat.staysClean : quantity('insulation', Number(afterAnHour.toPrecision(2)))) },
    { name: heat.burnOff, of: ({ burnOff: { low, middle, high } }) => heat.band(heat.times(middle), heat.times(low), heat.times(high)) },
  ];
}

const sameIn = (a: Setting, b: Setting) => (name: Slider | 'fuel'): boolean => a[name] === b[name];
const NAMES = ['load', 'rpm', 'lambda', 'advance', 'boost', 'inlet', 'coolant', 'altitude', 'heatStep', 'gap', 'coil', 'fuel'] as const;

type Side = { readonly setting: Setting; readonly answer: Answer };

/** What the models say of the running that is set, beside what was put aside. */
function Numbers({ now, aside }: { now: Side; aside: Side | undefined }) {
  const { heat } = useText();
  const lines = useLines();
  const differing = aside === undefined ? [] : NAMES.filter((name) => !sameIn(now.setting, aside.setting)(name)).map((name) => (name === 'fuel' ? heat.fuel : heat.sliders[name]));
  return (
    <>
      <table className={styles.table} aria-label={heat.now}>
        {aside && <thead><tr><td /><th scope="col">{heat.now}</th><th scope="col">{heat.aside}</th></tr></thead>}
        <tbody>
          {lines.map(({ name, of }) => <tr key={name}><th scope="row">{name}</th><td>{of(now.answer)}</td>{aside && <td>{of(aside.answer)}</td>}</tr>)}
        </tbody>
      </table>
      {differing.length > 0 && <p className={styles.soft}>{heat.differs}: {differing.join(', ').toLowerCase()}.</p>}
    </>
  );
}

function Place({ answer: { tip }, learned }: { answer: Answer; learned: Learned }) {
  const { heat } = useText();
  const [coldest, hottest] = [placeOf(tip.low), placeOf(tip.high)];
  return (
    <>
      <p className={styles.place}>{heat.places[placeOf(tip.middle)]}</p>
      <p className={styles.soft}>{coldest !== hottest && heat.reaches(heat.places[coldest], heat.places[hottest])}</p>
      <BasisMark basis={basisOf(learned)} />
    </>
  );
}

/** Sliders on one side, what the models say of them on the other. */
export function WhatIfPart(bench: HeatBench) {
  const { engine, setting, usual, learned, trial: { aside }, onTry } = bench;
  const { heat } = useText();
  const words = useHeatWords();
  const answer = useMemo(() => answerOf(engine, setting, learned.belief), [engine, setting, learned]);
  const other = useMemo(() => (aside === undefined ? undefined : answerOf(engine, aside, learned.belief)), [engine, aside, learned]);
  const lambda = lambdaReached(engine, setting);
  return (
    <div className={styles.tried}>
      <Sliders engine={engine} setting={setting} usual={usual} onChange={(next) => onTry({ setting: next })} />
      <div className={styles.answers}>
        {answer.ok ? (
          <section className={styles.now} aria-label={heat.now}>
            <div className={styles.numbers}>
              <h2>{heat.now}</h2>
              <Place answer={answer.value} learned={learned} />
              <TipScale now={answer.value.tip} aside={other?.ok ? other.value.tip : undefined} />
              <VoltageScale now={answer.value.demand} aside={other?.ok ? other.value.demand : undefined} available={answer.value.available} />
            </div>
            <figure className={styles.likeness}>
              <DrawnTip tip={looksLike(placeOf(answer.value.tip.middle), lambda)} view="end" size={190} seed="heat" />
              <figcaption className={styles.soft}>{heat.likeness}</figcaption>
            </figure>
            <div className={styles.whole}>
              <Numbers now={{ setting, answer: answer.value }} aside={other?.ok && aside !== undefined ? { setting: aside, answer: other.value } : undefined} />
              <Wider notes={answer.value.tip.notes} />
              <div className={styles.tools}>
                <Button onClick={() => onTry({ aside: setting })}>{heat.compare}</Button>
                {aside && <Button onClick={() => onTry({ setting: aside })}>{heat.back}</Button>}
                {aside && <Button look="quiet" onClick={() => onTry({ aside: undefined })}>{heat.drop}</Button>}
              </div>
            </div>
          </section>
        ) : <Notice tone="problem" title={heat.refused}>{answer.error.map(words.note).join(' ')}</Notice>}
        <HeatNotes {...bench} />
      </div>
    </div>
  );
}
