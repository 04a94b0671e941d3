import type { ReactNode } from 'react';
import type { Findings, NextCheck } from '../../../shared/formats/findings.v1.ts';
import { hrefOf as addressOf } from '../../app/route.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { useTold } from '../../ui/use-told.ts';
import { WhatBecame } from '../followup/index.ts';
import { Causes } from './causes.tsx';
import { cited } from './cited.ts';
import styles from './findings.module.css';
import { HeatStep } from './heat-step.tsx';
import { NextChecks } from './next-checks.tsx';
import { useOnPaper } from './paper.ts';
import { PlanList } from './plan-list.tsx';
import { SourceList } from './source-list.tsx';
import { StopNotices } from './stop-notices.tsx';

/** A sentence of more letters is set smaller, so that the order of work below it can be seen. */
const LONG = 140;

type Props = { readonly findings: Findings; readonly hrefOf: (check: NextCheck) => string };

/** The answer for the engine: the sentence, what stops it, the plan, the heat value. `children`: what can be done with the whole. */
export function Answer({ findings, children }: { findings: Findings; children?: ReactNode }) {
  const text = useText().findings;
  const told = useTold();
  const onPaper = useOnPaper();
  return (
    <>
      <div className={styles.opening}>
        <p className={styles.summary} data-long={findings.summary.length > LONG ? '' : undefined}>{told.sentence(findings.summary)}</p>
        <div className={styles.tools}>{children}</div>
        <p className={styles.expert}>{text.expert}</p>
      </div>
      <StopNotices stop={findings.stop} />
      {findings.followUp !== undefined && <WhatBecame followUp={findings.followUp} onPaper={onPaper} />}
      <PlanList plan={findings.plan} open={findings.plugs.some(({ verdict }) => verdict === 'undetermined')} />
      <HeatStep heat={findings.heat} />
    </>
  );
}

/** What concerns more than one cylinder. */
export function EngineFindings({ findings: { engine }, hrefOf }: Props) {
  const text = useText().findings;
  const told = useTold();
  const { doubts = [] } = engine;
  return (
    <section className={styles.engine} aria-labelledby="findings-engine">
      <h2 id="findings-engine">{text.engine}</h2>
      <p className={styles.pattern}>{told.sentence(engine.pattern)}</p>
      {engine.causes.length > 0 && <><h3>{text.engineCauses}</h3><Causes causes={engine.causes} of="engine" /></>}
      {engine.nextChecks.length > 0 && <><h3>{text.nextChecks}</h3><NextChecks checks={engine.nextChecks} hrefOf={hrefOf} /></>}
      {doubts.length > 0 && <><h3>{text.doubts}</h3><ul className={styles.doubts}>{doubts.map((doubt) => <li key={doubt}>{told.sentence(doubt)}</li>)}</ul></>}
    </section>
  );
}

/** What is said last and never left out. */
export function Closing({ findings }: { findings: Findings }) {
  const text = useText().findings;
  const told = useTold();
  const id = useStore((state) => state.reading?.id);
  const cautions = findings.cautions.length > 0 ? findings.cautions.map(told.sentence) : [text.noCautions];
  return (
    <footer className={styles.closing}>
      <h2>{text.cautions}</h2>
      <ul className={styles.cautions}>{cautions.map((caution) => <li key={caution}>{caution}</li>)}</ul>
      <SourceList ids={cited(findings)} />
      <p className={styles.version}>
        {text.madeWith(findings.knowledge.version, findings.knowledge.shopLines?.length ?? 0)}{' '}
        {id !== undefined && <a className={styles.onScreen} href={addressOf({ page: 'knowledge', shelf: 'here', entry: id })}>{text.spoke}</a>}
      </p>
    </footer>
  );
}
