import { EngineHead } from '../../app/engine-head.tsx';
import { HEAT_PARTS, hrefOf, type HeatPart } from '../../app/route.ts';
import type { EngineRecord } from '../../../shared/channels.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Notice } from '../../ui/notice.tsx';
import { AirPart } from './air-part.tsx';
import { useHeatBench, type HeatBench } from './bench.ts';
import { DrivePart } from './drive-part.tsx';
import styles from './heat.module.css';
import { LadderPart } from './ladder-part.tsx';
import { SparkPart } from './spark-part.tsx';
import { ToldPart } from './told-part.tsx';
import { TorquePart } from './torque-part.tsx';
import { useHeatWords } from './use-words.ts';
import { WearPart } from './wear-part.tsx';
import { WhatIfPart } from './what-if-part.tsx';

const PARTS = {
  ladder: LadderPart, 'what-if': WhatIfPart, drive: DrivePart, spark: SparkPart, wear: WearPart, air: AirPart, torque: TorquePart, told: ToldPart,
} as const satisfies Record<HeatPart, (bench: HeatBench) => unknown>;

function Rail({ id, part }: { id: string; part: HeatPart }) {
  const { heat } = useText();
  return (
    <nav className={styles.rail} aria-label={heat.rail}>
      {HEAT_PARTS.map((each) => (
        <a key={each} className={styles.part} href={hrefOf({ page: 'engine-heat', id, part: each })} aria-current={each === part ? 'page' : undefined}>{heat.parts[each]}</a>
      ))}
    </nav>
  );
}

/** Parts on which a heat value can be moved. */
const STEPS_ON: readonly HeatPart[] = ['ladder', 'what-if', 'drive', 'told'];

/** In plain words, on every part: what nobody should read into it. */
function Unknowns({ part, aircraft }: { part: HeatPart; aircraft: boolean }) {
  const { heat } = useText();
  const { degrees } = useHeatWords();
  return (
    <section className={styles.unknowns}>
      <h2>{heat.unknowns}</h2>
      <ul>{heat.unknown(degrees)[part].map((one) => <li key={one}>{one}</li>)}</ul>
      <p><strong>{heat.first}{STEPS_ON.includes(part) && ` ${heat.oneStep} ${heat.road}`}{aircraft && ` ${heat.aircraft}`}</strong></p>
    </section>
  );
}

function Station({ record, part }: { record: EngineRecord; part: HeatPart }) {
  const bench = useHeatBench(record);
  const Part = PARTS[part];
  return (
    <div className={styles.page}>
      <Rail id={record.id} part={part} />
      <div className={styles.station}>
        <Part {...bench} />
        <Unknowns part={part} aircraft={record.engine.use === 'aircraft'} />
      </div>
    </div>
  );
}

/** What moves the heat of a tip, the voltage of its gap and its wear, for one engine. */
export function HeatScreen({ id, part }: { id: string; part: HeatPart }) {
  const { shell } = useText();
  const record = useStore((state) => state.engines.find((engine) => engine.id === id));
  if (record === undefined) return <Notice title={shell.notHere}><a href={hrefOf({ page: 'shelf' })}>{shell.allEngines}</a></Notice>;
  return <><EngineHead record={record} page="engine-heat" /><Station key={id} record={record} part={part} /></>;
}
