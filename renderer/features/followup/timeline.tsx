import { useEffect, useMemo, useRef, useState } from 'react';
import { inTrayOrder, keyOf } from '../../state/places.ts';
import { EngineHead } from '../../app/engine-head.tsx';
import { hrefOf } from '../../app/route.ts';
import type { PlugAtReading, ReadingInTime } from '../../../shared/channels-followup.ts';
import type { PlugPlace } from '../../../core/domain/plugs.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatDate, formatNumber } from '../../text/numbers.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { toneOf, ToneShape } from '../../ui/judgement.tsx';
import { Notice } from '../../ui/notice.tsx';
import { useTold } from '../../ui/use-told.ts';
import { ChangeTag, OutcomeTag } from './change-tag.tsx';
import styles from './timeline.module.css';

const isFaulty = ({ verdict, also }: PlugAtReading): boolean => also.length > 0 || (verdict !== 'normal' && verdict !== 'undetermined');

function Cell({ plug }: { plug: PlugAtReading | undefined }) {
  const text = useText();
  const told = useTold();
  if (plug === undefined || (plug.tip === undefined && plug.measured === undefined)) {
    return <td className={styles.cell}><span className={styles.soft}>{text.followUp.notRead}</span></td>;
  }
  const tone = toneOf(plug.verdict);
  const quiet = plug.change === null || (plug.change === 'unchanged' && !isFaulty(plug));
  return (
    <td className={styles.cell} data-tone={tone}>
      <div className={styles.plug}>
        <span className={styles.tip}><DrawnTip tip={plug.tip ?? {}} view="end" size={52} seed={keyOf(plug)} title="" /></span>
        <span className={styles.words}>
          <span className={styles.verdict}><ToneShape tone={tone} />{text.findings.verdicts[plug.verdict]}</span>
          {!quiet && plug.change !== null && <ChangeTag change={plug.change} />}
        </span>
      </div>
      {(plug.change === 'better' || plug.change === 'worse') && <p className={styles.why}>{told.sentence(plug.why)}</p>}
    </td>
  );
}

function ReadingHead({ reading }: { reading: ReadingInTime }) {
  const text = useText();
  const told = useTold();
  return (
    <th scope="col" className={styles.reading}>
      <a href={hrefOf({ page: 'reading', id: reading.id, station: 'findings' })}>
        <span className={styles.date}>{reading.date === null ? text.followUp.undated : formatDate(reading.date)}</span>
        <span className={styles.title}>{reading.title}</span>
      </a>
      {reading.cures.length > 0 && (
        <div className={styles.cures}>
          <p className={styles.soft}>{text.followUp.putRight}</p>
          <ul>
            {reading.cures.map(({ name, cylinders, outcome }) => (
              <li key={`${name} ${cylinders.join()}`}>{told.sentence(name)}{cylinders.length > 0 && `, ${text.findings.cylinders(cylinders)}`} <OutcomeTag outcome={outcome} /></li>
            ))}
          </ul>
        </div>
      )}
    </th>
  );
}

/** Every place that any of the readings tells of, in tray order. */
function placesOf(readings: readonly ReadingInTime[]): readonly PlugPlace[] {
  const all = readings.flatMap(({ plugs }) => plugs.map(({ cylinder, position }): PlugPlace => ({ cylinder, position })));
  return [...new Map(all.map((place) => [keyOf(place), place])).values()].sort(inTrayOrder);
}

function Table({ readings, places }: { readings: readonly ReadingInTime[]; places: readonly PlugPlace[] }) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  /** The newest reading is what one looks for first. */
  useEffect(() => { if (frame.current !== null) frame.current.scrollLeft = frame.current.scrollWidth; }, [readings]);
  return (
    <div ref={frame} className={styles.frame} role="region" aria-label={text.followUp.timeline} tabIndex={0}>
      <table className={styles.table}>
        <thead><tr><th scope="col" className={styles.corner}>{text.followUp.plug}</th>{readings.map((reading) => <ReadingHead key={reading.id} reading={reading} />)}</tr></thead>
        <tbody>
          {places.map((place) => (
            <tr key={keyOf(place)}>
              <th scope="row" className={styles.place}>{text.findings.place(place.cylinder, place.position)}</th>
              {readings.map((reading) => <Cell key={reading.id} plug={reading.plugs.find((plug) => keyOf(plug) === keyOf(place))} />)}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** More plugs than this are shown only where one was ever at fault, until all are asked for. */
const MANY = 8;
const SHOWN = ['faulty', 'all'] as const;

function Plugs({ readings }: { readings: readonly ReadingInTime[] }) {
  const text = useText().followUp;
  const places = useMemo(() => placesOf(readings), [readings]);
  const faulty = useMemo(() => new Set(readings.flatMap(({ plugs }) => plugs.filter(isFaulty).map(keyOf))), [readings]);
  const [show, setShow] = useState<(typeof SHOWN)[number]>(places.length > MANY ? 'faulty' : 'all');
  const shown = show === 'all' ? places : places.filter((place) => faulty.has(keyOf(place)));
  const hidden = places.length - shown.length;
  return (
    <>
      <div className={styles.bar}>
        <p className={styles.soft}>{text.timelineAbout}</p>
        {faulty.size < places.length && <Choice label={text.plugs} quietLabel always options={SHOWN} value={show} nameOf={(word) => (word === 'all' ? text.allPlugs : text.onlyFaulty)} onChange={(word) => setShow(word ?? 'all')} />}
      </div>
      {shown.length === 0 ? <p>{text.noneFaulty}</p> : <Table readings={readings} places={shown} />}
      {hidden > 0 && shown.length > 0 && <p className={styles.soft}>{text.hidden(formatNumber(hidden))}</p>}
    </>
  );
}

/** The plugs of an engine from reading to reading, over the years. */
export function Timeline({ id }: { id: string }) {
  const text = useText();
  const record = useStore((state) => state.engines.find((engine) => engine.id === id));
  const timeline = useStore((state) => state.timeline);
  const { loadTimeline, tell } = useStore.getState();
  useEffect(() => {
    void loadTimeline(id).then((error) => { if (error !== null && error.code !== 'not-found') tell({ text: text.shell.error(error), tone: 'problem' }); });
  }, [id, loadTimeline, tell, text]);
  if (record === undefined) return <Notice title={text.shell.notHere}><a href={hrefOf({ page: 'shelf' })}>{text.shell.allEngines}</a></Notice>;
  const readings = timeline?.engineId === id ? timeline.readings : undefined;
  return (
    <div className={styles.page}>
      <EngineHead record={record} page="engine-time" />
      <div className={styles.timeline}>
        <div className={styles.head}>
          <h2>{text.followUp.timeline}</h2>
          {readings !== undefined && readings.length > 1 && <Button onClick={() => window.print()}>{text.findings.print}</Button>}
        </div>
        {readings === undefined && <p role="status">{text.followUp.loading}</p>}
        {readings !== undefined && (readings.length < 2 ? <p>{text.followUp.timelineEmpty}</p> : <Plugs key={id} readings={readings} />)}
      </div>
    </div>
  );
}
