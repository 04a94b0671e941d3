import { useEffect } from 'react';
import { enginePlan } from '../../../core/domain/engine-plan.ts';
import type { EngineRecord } from '../../../shared/channels.ts';
import { IfWritable } from '../../app/if-writable.tsx';
import { hrefOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatDate } from '../../text/numbers.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { AddGlyph } from '../../ui/glyphs.tsx';
import { Notice } from '../../ui/notice.tsx';
import { PlanDrawing } from '../../ui/plan-drawing.tsx';
import { EmptyShelf } from './empty-shelf.tsx';
import styles from './engine-shelf.module.css';
import { ImportSheet } from './import-sheet.tsx';
import { StartReading } from './start-reading.tsx';
import { UnsavedEngines } from './unsaved-engines.tsx';

function Place({ record }: { record: EngineRecord }) {
  const { engines } = useText();
  const { engine } = record;
  const name = engine.name ?? engines.unnamed;
  const log = [
    record.readings === 0 && record.draft ? '' : engines.readings(record.readings), record.lastReadingAt === null ? '' : engines.last(formatDate(record.lastReadingAt)),
    record.draft ? engines.draftOpen : '',
  ].filter(Boolean).join(', ');
  return (
    <li className={styles.place}>
      <a className={styles.open} href={hrefOf({ page: 'engine', id: record.id })}>
        <span className={styles.plan}><PlanDrawing plan={enginePlan(engine)} label="" numbers={false} /></span>
        <span className={styles.label}>
          <span className={styles.name}>{name}</span>
          <span className={styles.about}>{engines.summary(engine)}</span>
          <span className={styles.about}>{log}</span>
        </span>
      </a>
      <IfWritable>
        {record.draft
          ? <StartReading engineId={record.id} label={engines.goOnOf(name)} words={engines.goOn} />
          : <StartReading engineId={record.id} label={engines.startReadingOf(name)} words={engines.startReading} />}
      </IfWritable>
    </li>
  );
}

/** All engines, each in its place on the shelf. */
export function EngineShelf() {
  const { engines, shell } = useText();
  const list = useStore((state) => state.engines);
  const loadEngines = useStore((state) => state.loadEngines);
  useEffect(() => { void loadEngines(); }, [loadEngines]);
  const problem = useStore((state) => state.enginesProblem);
  const troubleTold = useStore((state) => state.info?.library.trouble !== null);
  if (problem !== null) return <><h1>{engines.shelf}</h1>{!troubleTold && <Notice tone="problem" title={engines.unreadable}>{shell.error(problem)}</Notice>}</>;
  if (list.length === 0) return <><UnsavedEngines /><EmptyShelf /></>;
  return (
    <>
      <header className={styles.head}>
        <h1>{engines.shelf}</h1>
        <IfWritable>
          <ButtonLink look="main" href={hrefOf({ page: 'engine-new' })}><AddGlyph />{engines.add}</ButtonLink>
          <ImportSheet label={engines.import} />
        </IfWritable>
      </header>
      <UnsavedEngines />
      <ul className={styles.shelf}>{list.map((record) => <Place key={record.id} record={record} />)}</ul>
    </>
  );
}
