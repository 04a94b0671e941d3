import type { Findings } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { useTold } from '../../ui/use-told.ts';
import styles from './plan-list.module.css';

const names = (what: string, cylinder: number): boolean => new RegExp(`\\b${cylinder}\\b`).test(what);

/** What to do, in order, each step with its reason. `open`: some plugs cannot be judged yet. */
export function PlanList({ plan, open }: { plan: Findings['plan']; open: boolean }) {
  const text = useText().findings;
  const told = useTold();
  return (
    <section className={styles.plan} aria-labelledby="findings-plan">
      <h2 id="findings-plan">{text.plan}</h2>
      {plan.length === 0 ? <p>{open ? text.noPlanYet : text.noPlan}</p> : (
        <ol>
          {plan.map(({ order, do: what, because, cylinder }) => (
            <li key={order} className={styles.step}>
              <span className={styles.order} aria-hidden="true">{order}</span>
              <div>
                <p className={styles.do}>{told.sentence(what)}{cylinder !== undefined && !names(what, cylinder) && <span className={styles.where}>{text.place(cylinder, 'only')}</span>}</p>
                <p className={styles.because}>{told.sentence(because)}</p>
              </div>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
