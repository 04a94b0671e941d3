import type { NextCheck, PlugFindings } from '../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { keyOf, plugAt } from '../../state/places.ts';
import { useText } from '../../text/index.ts';
import { Belief } from '../../ui/belief.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { Judgement, toneOf, type Tone } from '../../ui/judgement.tsx';
import { useTold } from '../../ui/use-told.ts';
import { PlugPhotos } from '../photos/index.ts';
import { Causes } from './causes.tsx';
import { NextChecks } from './next-checks.tsx';
import styles from './plug-detail.module.css';
import { Thermal } from './thermal.tsx';

const RISK_TONE: Record<PlugFindings['preIgnitionRisk'], Tone> = { low: 'sound', raised: 'watch', high: 'act', stop: 'stop' };

function Verdicts({ plug, name }: { plug: PlugFindings; name: string }) {
  const text = useText().findings;
  return (
    <div className={styles.verdicts}>
      <h3 className={styles.name}>{name}</h3>
      <p className={styles.main}><Judgement tone={toneOf(plug.verdict)}>{text.verdicts[plug.verdict]}</Judgement> {plug.verdict !== 'undetermined' && <Belief value={plug.belief} />}</p>
      {plug.also.length > 0 && (
        <p className={styles.also}>
          {text.also} {plug.also.map((verdict) => <Judgement key={verdict} tone={toneOf(verdict)}>{text.verdicts[verdict]}</Judgement>)}
        </p>
      )}
      <dl className={styles.facts}>
        <dt>{text.thermal}</dt><dd><Thermal thermal={plug.thermal} /></dd>
        <dt>{text.preIgnition}</dt><dd><Judgement tone={RISK_TONE[plug.preIgnitionRisk]}>{text.risks[plug.preIgnitionRisk]}</Judgement></dd>
      </dl>
    </div>
  );
}

/** All that is found of one plug: how it looks, what it is called, why, what to look at next, and what is doubtful. */
export function PlugDetail({ plug, sheet, hrefOf }: { plug: PlugFindings; sheet: ReadingSheet; hrefOf: (check: NextCheck) => string }) {
  const text = useText().findings;
  const told = useTold();
  const key = keyOf(plug);
  const name = text.place(plug.cylinder, plug.position);
  const tip = plugAt(sheet, key)?.tip ?? {};
  return (
    <article className={styles.plug} aria-label={name} data-quiet={plug.causes.length === 0 || undefined}>
      <header className={styles.head}>
        <div className={styles.tips}>
          <DrawnTip tip={tip} view="end" size={156} seed={key} />
          <DrawnTip tip={tip} view="side" size={156} seed={key} title="" />
          <PlugPhotos plug={key} />
        </div>
        <Verdicts plug={plug} name={name} />
      </header>
      {plug.causes.length > 0 && <section><h4>{text.causes}</h4><p className={styles.hint}>{text.oddsHint}</p><Causes causes={plug.causes} of="plug" /></section>}
      {plug.nextChecks.length > 0 && <section><h4>{text.nextChecks}</h4><NextChecks checks={plug.nextChecks} hrefOf={hrefOf} /></section>}
      {plug.doubts.length > 0 && (
        <section><h4>{text.doubts}</h4><ul className={styles.doubts}>{plug.doubts.map((doubt) => <li key={doubt}>{told.sentence(doubt)}</li>)}</ul></section>
      )}
    </article>
  );
}
