import { useState } from 'react';
import { NINETY_PERCENT, type Band } from '../../../core/band.ts';
import { unusedReadings, type Learned } from '../../../core/heat/anchors.ts';
import { dutyOf, heatEngine } from '../../../core/heat/setting.ts';
import { PRIOR } from '../../../core/thermal/belief.ts';
import { gasAtPlug, tipBand } from '../../../core/thermal/tip.ts';
import { HEAT_PROBES, TIP_SIGNS, type HeatProbe } from '../../../shared/vocabulary/heat.ts';
import type { HeatEntry } from '../../../shared/channels-heat.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatDate } from '../../text/numbers.ts';
import { Button } from '../../ui/button.tsx';
import { QuantityField } from '../../ui/quantity-field.tsx';
import type { HeatBench } from './bench.ts';
import { BandBar } from './band-bar.tsx';
import styles from './heat.module.css';
import { AsSet, BasisMark, basisOf } from './pieces.tsx';
import { useHeatWords } from './use-words.ts';
import { useRemoval } from './use-removal.ts';

type Step = Learned['steps'][number];
/** Beyond this the model had hardly expected what was read. Grade: common practice of statistics. */
const isOdd = ({ says, surprise }: Step): boolean => (says.about === 'value' || says.about === 'exhaust' ? surprise > 2.5 : surprise < 0.02);

const isMeasured = ({ kind }: Step): boolean => kind === 'thermocouple' || kind === 'exhaust';

function useSource(): (step: Step) => string {
  const { heat: { told } } = useText();
  return ({ source }) => {
    if (source.kind !== 'reading') return told.from[source.kind];
    return source.date === undefined ? told.undated : told.fromReading(formatDate(source.date));
  };
}

/** One reading: where it comes from, the band before, what it says, the band after. */
function Arithmetic({ step, onRemove }: { step: Step; onRemove: ((id: string) => void) | undefined }) {
  const { heat: { told } } = useText();
  const { celsius, tips, running, degrees } = useHeatWords();
  const source = useSource();
  const { about, celsius: read, deviation } = step.says;
  const spread = degrees(NINETY_PERCENT * deviation);
  const says = about === 'value' || about === 'exhaust' ? told.says[about](celsius(read), spread) : told.says[about](celsius(read));
  const { source: from } = step;
  return (
    <li className={styles.step}>
      <div>
        <strong>{told.signs[step.kind]}</strong> {isMeasured(step) && <BasisMark basis="measured" />} <span className={styles.soft}>{source(step)}; {running(step.setting)}</span>
        <p>{told.arithmetic(tips(step.before), says, tips(step.after))}{isOdd(step) && <strong> {told.odd}</strong>}</p>
      </div>
      <BandBar before={step.before} after={step.after} />
      {from.kind === 'entry' && onRemove && <Button look="quiet" onClick={() => onRemove(from.id)}>{told.remove}</Button>}
    </li>
  );
}

/** A sign or a value that somebody knows of, at the running that is set. */
function Add({ id, setting }: HeatBench) {
  const { heat: { told, take }, shell } = useText();
  const { addHeatEntry, tell } = useStore.getState();
  const [probes, setProbes] = useState<Partial<Record<HeatProbe, { readonly value?: number | undefined; readonly raw?: string | undefined }>>>({});
  const add = async (entry: HeatEntry): Promise<void> => {
    const error = await addHeatEntry(id, entry);
    if (error !== null) tell({ text: shell.error(error), tone: 'problem' });
  };
  const takeProbe = async (probe: HeatProbe): Promise<void> => {
    const celsius = probes[probe]?.value;
    if (celsius === undefined) return;
    await add({ kind: 'probe', probe, celsius, setting });
    setProbes({ ...probes, [probe]: {} });
  };
  return (
    <section className={styles.block} aria-label={told.add}>
      <h3>{told.add}</h3>
      <p className={styles.soft}>{told.addHelp}</p>
      <AsSet id={id} setting={setting} />
      <div className={styles.tools}>
        {TIP_SIGNS.map((sign) => <Button key={sign} onClick={() => void add({ kind: 'sign', sign, setting })}>{told.signs[sign]}</Button>)}
      </div>
      {HEAT_PROBES.map((probe) => (
        <div key={probe} className={styles.probe}>
          <QuantityField label={told.signs[probe]} quantity="temperature" range={[-50, 1200]} value={probes[probe]?.value} raw={probes[probe]?.raw}
            {...(probe === 'exhaust' && { hint: told.exhaustHelp })} onEntry={(value, raw) => setProbes({ ...probes, [probe]: { value, raw } })} />
          <Button disabled={probes[probe]?.value === undefined} onClick={() => void takeProbe(probe)}>{take}</Button>
        </div>
      ))}
    </section>
  );
}

function bandsNow({ engine, setting, learned }: HeatBench): { readonly alone: Band<number>; readonly now: Band<number> } | undefined {
  const gas = gasAtPlug(heatEngine(engine).engine, dutyOf(engine, setting));
  const seat = { heatStep: setting.heatStep, seat: 1 };
  return gas.ok ? { alone: tipBand(gas.value, seat, PRIOR), now: tipBand(gas.value, seat, learned.belief) } : undefined;
}

/** How far the readings narrowed the band at the running that is set. */
function Narrowed(bench: HeatBench) {
  const { heat: { told } } = useText();
  const { tips, percent } = useHeatWords();
  const bands = bandsNow(bench);
  if (bands === undefined) return null;
  const { alone, now } = bands;
  return (
    <div className={styles.step}>
      <div>
        <BasisMark basis={basisOf(bench.learned)} />
        <p>{told.now(tips(now))} {tips(alone)}. {told.narrower(percent((now.high - now.low) / (alone.high - alone.low)))}</p>
      </div>
      <BandBar before={alone} after={now} />
    </div>
  );
}

function Unused({ record }: HeatBench) {
  const { heat: { told, lacking } } = useText();
  const unused = unusedReadings(record);
  if (unused.length === 0) return null;
  return (
    <section aria-label={told.unused}>
      <h3>{told.unused}</h3>
      <ul className={styles.list}>
        {unused.map(({ id, date, lacking: names }) => (
          <li key={id}>{told.lacks(date === undefined ? told.undated : formatDate(date), names.map((name) => lacking[name]))}</li>
        ))}
      </ul>
    </section>
  );
}

/** What this engine's tips, and instruments, told about their temperature, and how it corrects the model. */
export function ToldPart(bench: HeatBench) {
  const { heat: { told } } = useText();
  const remove = useRemoval(told.removed);
  const { steps } = bench.learned;
  return (
    <>
      <section className={styles.block}>
        <h2>{told.title}</h2>
        <p className={styles.lead}>{told.about}</p>
        <Narrowed {...bench} />
        {steps.length === 0 ? <p>{told.none}</p> : (
          <ol className={styles.arithmetic}>{steps.map((step, i) => <Arithmetic key={i} step={step} onRemove={(id) => void remove(id)} />)}</ol>
        )}
      </section>
      <Add {...bench} />
      <Unused {...bench} />
    </>
  );
}
