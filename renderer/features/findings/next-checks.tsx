import type { NextCheck } from '../../../shared/formats/findings.v1.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { ButtonLink } from '../../ui/button.tsx';
import { useTold } from '../../ui/use-told.ts';
import styles from './next-checks.module.css';

/** Common practice, no source: how many bits of what is undecided count as much or as some. */
const MUCH_BITS = 0.4;
const SOME_BITS = 0.1;

type Props = { readonly checks: readonly NextCheck[]; readonly hrefOf: (check: NextCheck) => string };

/** What to look at next: the check that tells most a minute comes first. Each leads to the field for its result. */
export function NextChecks({ checks, hrefOf }: Props) {
  const text = useText().findings;
  const told = useTold();
  return (
    <ol className={styles.checks}>
      {checks.map((check, i) => (
        <li key={check.id} className={styles.check}>
          <div>
            <p className={styles.name}>{told.check(check.id, check.name)}{i === 0 && <span className={styles.most}>{text.tellsMost}</span>}</p>
            <p className={styles.effort}>
              {text.minutes(formatNumber(check.effortMinutes, 0))}, {text.tells[check.gainBits >= MUCH_BITS ? 'much' : check.gainBits >= SOME_BITS ? 'some' : 'little']}
            </p>
            <p className={styles.why}>{told.sentence(check.why)}</p>
          </div>
          <ButtonLink href={hrefOf(check)} aria-label={text.writeDownOf(told.check(check.id, check.name), check.cylinder)}>{text.writeDown}</ButtonLink>
        </li>
      ))}
    </ol>
  );
}
