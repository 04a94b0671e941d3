import type { Findings } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { Belief } from '../../ui/belief.tsx';
import { useTold } from '../../ui/use-told.ts';
import { HeatModel } from './heat-model.tsx';
import styles from './heat-step.module.css';

const RUNGS = [1, 0, -1] as const;

/** Three rungs, hotter above, colder below; the one advised is filled and pointed at. */
function Rungs({ step }: { step: Findings['heat']['step'] }) {
  const text = useText().findings.heatScale;
  const names = { 1: text.hotter, 0: text.stay, [-1]: text.colder } as const;
  return (
    <ul className={styles.rungs} aria-hidden="true">
      {RUNGS.map((rung) => <li key={rung} data-here={rung === step || undefined}>{names[rung]}</li>)}
    </ul>
  );
}

function Lines({ title, lines, ordered = false }: { title: string; lines: readonly string[]; ordered?: boolean }) {
  const told = useTold();
  if (lines.length === 0) return null;
  const items = lines.map((line) => <li key={line}>{told.sentence(line)}</li>);
  return (
    <div className={styles.part}>
      <h3>{title}</h3>
      {ordered ? <ol className={styles.ordered}>{items}</ol> : <ul className={styles.list}>{items}</ul>}
    </div>
  );
}

/** The step advised for the next fitting, when it holds, and what must come before it. */
export function HeatStep({ heat }: { heat: Findings['heat'] }) {
  const text = useText().findings;
  return (
    <section className={styles.heat} aria-labelledby="findings-heat">
      <h2 id="findings-heat">{text.heat}</h2>
      <div className={styles.step}>
        <Rungs step={heat.step} />
        <div>
          <p className={styles.word}>{text.heatWords[heat.words]}</p>
          {heat.step !== 0 && <p className={styles.when}>{text.heatWhen[heat.when]}</p>}
          <Belief value={heat.belief} />
        </div>
      </div>
      <p className={styles.maker}>{text.makerFirst}</p>
      <Lines title={text.heatFirst} lines={heat.first} ordered />
      <Lines title={text.heatWhy} lines={heat.why} />
      {heat.model && <HeatModel model={heat.model} />}
      <Lines title={text.heatCautions} lines={heat.cautions} />
    </section>
  );
}
