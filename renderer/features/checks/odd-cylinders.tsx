import { oddCylinders, type OddAnswer } from '../../../core/statistics/odd-checks.ts';
import { useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import styles from './sheet.module.css';

/** Up to this many cylinders a real difference is often not shown by two tests that must agree. */
const FEW = 5;

/** Whether one cylinder stands out from the rest, and how little so few measurements can show. */
export function OddCylinders() {
  const { odd } = useText().checks;
  const { engine, cylinderChecks = [] } = useSheet();
  const answers = oddCylinders(cylinderChecks, engine);
  if (answers.length === 0) return null;
  const words = (answer: OddAnswer): string => {
    if (answer.verdict === 'shown') return odd.shown(answer.cylinder);
    return answer.verdict === 'too few' ? odd.tooFew : odd.notShown(answer.count <= FEW);
  };
  return (
    <section className={styles.odd} aria-labelledby="odd-cylinders">
      <h3 id="odd-cylinders">{odd.title}</h3>
      <ul>{answers.map((answer) => <li key={answer.check}><strong>{odd.checks[answer.check]}:</strong> {words(answer)}</li>)}</ul>
      <p>{odd.about}</p>
    </section>
  );
}
