import { useEffect } from 'react';
import type { EngineRecord } from '../../../shared/channels.ts';
import { EngineHead } from '../../app/engine-head.tsx';
import { IfWritable } from '../../app/if-writable.tsx';
import { hrefOf } from '../../app/route.ts';
import { navigate } from '../../app/use-route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { Menu } from '../../ui/menu.tsx';
import { Notice } from '../../ui/notice.tsx';
import { ImportSheet, StartReading } from '../engines/index.ts';
import { EmptyLog } from './empty-log.tsx';
import { EngineFacts } from './engine-facts.tsx';
import styles from './engine-log.module.css';
import { ReadingRow } from './reading-row.tsx';

function Head({ record }: { record: EngineRecord }) {
  const { engines, shell } = useText();
  const { removeEngine, restoreEngine, tell } = useStore.getState();
  const draft = useStore((state) => state.log?.engineId === record.id && state.log.readings.some((reading) => reading.state === 'draft'));
  const name = record.engine.name ?? engines.unnamed;
  const start = draft ? engines.goOn : engines.startReading;
  const restore = async (): Promise<void> => {
    const error = await restoreEngine(record.id);
    if (error !== null) tell({ text: shell.error(error), tone: 'problem' });
  };
  const remove = async (): Promise<void> => {
    const error = await removeEngine(record.id);
    if (error !== null) {
      tell({ text: shell.error(error), tone: 'problem' });
      return;
    }
    tell({ text: engines.removed(name), tone: 'plain', undo: () => void restore() });
    navigate({ page: 'shelf' });
  };
  return (
    <EngineHead record={record} page="engine">
      <IfWritable>
        <StartReading look="main" engineId={record.id} label={start} words={start} />
        <ButtonLink href={hrefOf({ page: 'engine-edit', id: record.id })}>{engines.page.edit}</ButtonLink>
        <ImportSheet label={engines.import} />
        <Menu words={engines.page.more} name={engines.page.moreOf(name)}
          items={[{ words: engines.page.removeEngine, onSelect: () => void remove(), grave: true }]} />
      </IfWritable>
    </EngineHead>
  );
}

function Readings({ id }: { id: string }) {
  const { page } = useText().engines;
  const log = useStore((state) => state.log);
  const readings = log?.engineId === id ? log.readings : [];
  return (
    <section className={styles.log}>
      <h2>{page.log}</h2>
      {log?.engineId === id && readings.length === 0
        ? <EmptyLog />
        : <ul>{readings.map((reading) => <ReadingRow key={reading.id} reading={reading} />)}</ul>}
    </section>
  );
}

/** An engine and the log of its readings. */
export function EngineLog({ id }: { id: string }) {
  const text = useText();
  const record = useStore((state) => state.engines.find((engine) => engine.id === id));
  const loadLog = useStore((state) => state.loadLog);
  const tell = useStore((state) => state.tell);
  useEffect(() => {
    void loadLog(id).then((error) => { if (error !== null && error.code !== 'not-found') tell({ text: text.shell.error(error), tone: 'problem' }); });
  }, [id, loadLog, tell, text]);
  if (record === undefined) return <Notice title={text.shell.notHere}><a href={hrefOf({ page: 'shelf' })}>{text.shell.allEngines}</a></Notice>;
  return (
    <>
      <Head record={record} />
      <div className={styles.columns}><Readings id={id} /><EngineFacts id={id} engine={record.engine} /></div>
    </>
  );
}
