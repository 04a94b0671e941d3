import { useDeferredValue, useMemo, useState } from 'react';
import { anchor, type TipReading } from '../../../core/thermal/anchor.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import { EngineHead } from '../../app/engine-head.tsx';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Notice } from '../../ui/notice.tsx';
import { answerOf, ladderOf, type Answer } from './answer.ts';
import { DrivePart } from './drive-part.tsx';
import styles from './heat.module.css';
import { Ladder } from './ladder.tsx';
import { Now } from './now.tsx';
import { Readings } from './readings.tsx';
import { lambdaReached, usualSetting } from './setting.ts';
import { Sliders } from './sliders.tsx';

function Unknowns({ aircraft }: { aircraft: boolean }) {
  const { heat } = useText();
  return (
    <section className={styles.unknowns}>
      <h2>{heat.unknowns}</h2>
      <ul>{heat.unknown.map((line) => <li key={line}>{line}</li>)}</ul>
      <p><strong>{heat.first}{aircraft && ` ${heat.aircraft}`}</strong></p>
    </section>
  );
}

function Station({ engine }: { engine: Engine }) {
  const { heat } = useText();
  const [setting, setSetting] = useState(() => usualSetting(engine));
  const later = useDeferredValue(setting); // the drive takes longest and may lag behind the sliders
  const [readings, setReadings] = useState<readonly TipReading[]>([]);
  const [kept, setKept] = useState<Answer | undefined>(undefined);
  const { belief, steps } = useMemo(() => anchor(readings), [readings]);
  const answer = useMemo(() => answerOf(engine, setting, belief), [engine, setting, belief]);
  const rungs = useMemo(() => ladderOf(engine, setting, belief), [engine, setting, belief]);
  return (
    <div className={styles.station}>
      <Sliders engine={engine} setting={setting} onChange={setSetting} />
      <div className={styles.answers}>
        {answer.ok ? (
          <>
            <Now answer={answer.value} lambda={lambdaReached(engine, setting)} kept={kept}
              onKeep={() => setKept(answer.value)} onDrop={() => setKept(undefined)} />
            <Ladder rungs={rungs} step={setting.heatStep} load={setting.load} tip={answer.value.tip} />
            <Readings gas={answer.value.gas} heatStep={setting.heatStep} steps={steps}
              onRead={(reading) => setReadings([...readings, reading])} onForget={() => setReadings([])} />
          </>
        ) : <Notice tone="problem" title={heat.refused}>{answer.error.join(' ')}</Notice>}
        <DrivePart engine={engine} setting={later} belief={belief} />
        <Unknowns aircraft={engine.use === 'aircraft'} />
      </div>
    </div>
  );
}

/** What moves the heat of a tip and the voltage of its gap, for one engine. */
export function HeatScreen({ id }: { id: string }) {
  const { shell } = useText();
  const record = useStore((state) => state.engines.find((engine) => engine.id === id));
  if (record === undefined) return <Notice title={shell.notHere}><a href={hrefOf({ page: 'shelf' })}>{shell.allEngines}</a></Notice>;
  return (
    <>
      <EngineHead record={record} page="engine-heat" />
      <Station key={id} engine={record.engine} />
    </>
  );
}
