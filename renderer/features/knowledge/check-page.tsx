import { showsKey } from '../../../core/knowledge/line-keys.ts';
import { CYLINDER_FINDINGS, type CylinderFindingName } from '../../../core/knowledge/findings.ts';
import type { Cause, Check } from '../../../core/knowledge/types.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { useTold } from '../../ui/use-told.ts';
import { entryHref } from './addresses.ts';
import { documentsOf, LineRow, Reason } from './line-row.tsx';
import lineStyles from './lines.module.css';
import { useLooking } from './looking.ts';
import styles from './page.module.css';
import { Part, SourcesHere } from './part.tsx';
import { StrengthWord } from './strength.tsx';

const isTrial = (finding: CylinderFindingName): boolean => finding.startsWith('swap ') || finding.startsWith('known-good ');

function CauseList({ causes }: { causes: readonly Cause[] }) {
  const told = useTold();
  return <ul className={styles.plain}>{causes.map(({ id, name }) => <li key={id}><a href={entryHref('causes', id)}>{told.cause(id, name)}</a></li>)}</ul>;
}

/** For each outcome of a measuring check the causes that show it, the strongest word first. */
function Outcomes({ finding }: { finding: CylinderFindingName }) {
  const { knowledge: { causes } } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  const outcomes = CYLINDER_FINDINGS[finding].map((value) => ({
    value, links: causes.flatMap((cause) => cause.shows.filter((link) => link.finding === finding && link.is === value).map((link) => ({ cause, link }))),
  })).filter(({ links }) => links.length > 0);
  return (
    <Part title={text.checks.tells}>
      {outcomes.map(({ value, links }) => (
        <div key={value} className={styles.group}>
          <h4>{text.checks.outcome(text.finding(finding), value)}</h4>
          <ul className={lineStyles.lines}>
            {links.map(({ cause, link }) => (
              <LineRow key={cause.id} lineKey={showsKey(cause.id, link)} grounds={link}>
                <a className={lineStyles.what} href={entryHref('causes', cause.id)}>{told.cause(cause.id, cause.name)}</a><StrengthWord word={link.strength} />
              </LineRow>
            ))}
          </ul>
        </div>
      ))}
    </Part>
  );
}

function Tells({ check }: { check: Check }) {
  const { knowledge: { causes } } = useLooking();
  const text = useText().knowledge;
  const { tells } = check;
  if ('looksFor' in tells) {
    return (
      <Part title={text.checks.looksFor}>
        <dl className={styles.facts}>
          <dt>{text.checks.finds}</dt><dd><StrengthWord word={tells.finds} /></dd>
          <dt>{text.checks.falsely}</dt><dd><StrengthWord word={tells.falselyFinds} /></dd>
        </dl>
        <CauseList causes={causes.filter(({ id }) => tells.looksFor.includes(id))} />
      </Part>
    );
  }
  const sends = causes.filter((cause) => cause.checks.includes(check.id));
  if (isTrial(tells.finding)) return <Part title={text.checks.tells} about={text.checks.trial}><CauseList causes={sends} /></Part>;
  return <Outcomes finding={tells.finding} />;
}

/** One check: how it is done, how long it takes, and what each outcome speaks for. */
export function CheckPage({ check }: { check: Check }) {
  const { knowledge: { cautions } } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  const care = cautions.filter(({ id }) => check.cautions.includes(id));
  return (
    <>
      <header className={styles.head}>
        <h2>{told.check(check.id, check.name)}</h2>
        <p className={styles.called}>{text.checks.minutes(formatNumber(check.minutes, 0))}, {text.checks.at[check.scope]}{check.running && `, ${text.checks.running}`}</p>
        <p className={styles.lead}>{told.sentence(check.how)}</p>
      </header>
      {care.length > 0 && (
        <Part title={text.checks.cautions}><ul className={styles.plain}>{care.map(({ id, words }) => <li key={id}>{told.sentence(words)}</li>)}</ul></Part>
      )}
      <Part title={text.because}><Reason {...check} /></Part>
      {check.needs !== undefined && <Part title={text.causes.needs}><p>{text.needs(check.needs).join('; ')}</p></Part>}
      <Tells check={check} />
      <SourcesHere ids={documentsOf([check])} />
    </>
  );
}
