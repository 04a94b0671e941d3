import { makesKey, movedKey, showsKey } from '../../../core/knowledge/line-keys.ts';
import { CURE_TRUST } from '../../../core/knowledge/cures.ts';
import type { Cause } from '../../../core/knowledge/types.ts';
import { useText } from '../../text/index.ts';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { useTold } from '../../ui/use-told.ts';
import { AddLine } from './add-line.tsx';
import { entryHref } from './addresses.ts';
import { documentsOf, LineRow } from './line-row.tsx';
import lineStyles from './lines.module.css';
import { useLooking } from './looking.ts';
import { Gives } from './looks-page.tsx';
import styles from './page.module.css';
import { Part, SourcesHere } from './part.tsx';
import { MoveWord, PriorWord, StrengthWord, Trust } from './strength.tsx';
import { typicalTip } from './typical-tip.ts';

const BARRING: readonly Cause['kind'][] = ['oil', 'detonation', 'pre-ignition', 'mechanical'];

function Facts({ cause }: { cause: Cause }) {
  const { knowledge: { checks } } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  const { causes } = text;
  const heat = [cause.heatStep && causes.step[cause.heatStep], BARRING.includes(cause.kind) && causes.barred, cause.harmless && causes.harmless].filter((line) => typeof line === 'string');
  const known = cause.checks.flatMap((id) => checks.filter((check) => check.id === id));
  return (
    <dl className={styles.facts}>
      <dt>{causes.cure}</dt><dd>{told.sentence(cause.cure)}</dd>
      {cause.kind !== 'harmless' && <><dt>{causes.trust}</dt><dd><Trust of={CURE_TRUST[cause.kind]} /></dd></>}
      {known.length > 0 && <><dt>{causes.firstCheck}</dt><dd><ol className={styles.plain}>{known.map(({ id, name }) => <li key={id}><a href={entryHref('checks', id)}>{told.check(id, name)}</a></li>)}</ol></dd></>}
      <dt>{causes.reaches}</dt><dd>{text.scopes[cause.scope]}{cause.part !== undefined && `. ${causes.part(cause.part)}`}</dd>
      <dt>{causes.prior}</dt>
      <dd><PriorWord word={cause.prior} numbered /></dd>
      {cause.needs !== undefined && <><dt>{causes.needs}</dt><dd>{text.needs(cause.needs).join('; ')}</dd></>}
      {heat.length > 0 && <><dt>{causes.heat}</dt><dd>{heat.join(' ')}</dd></>}
      {cause.synonyms.length > 0 && <><dt>{causes.also}</dt><dd className={styles.soft}>{cause.synonyms.map(told.sentence).join(', ')}</dd></>}
    </dl>
  );
}

function Makes({ cause }: { cause: Cause }) {
  const { knowledge: { conditions } } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  return (
    <Part title={text.causes.makes}>
      <ul className={lineStyles.lines}>
        {cause.makes.map((link) => {
          const condition = conditions.find(({ id }) => id === link.condition);
          return (
            <LineRow key={link.condition} lineKey={makesKey(cause.id, link)} grounds={link}>
              <div className={lineStyles.withTip}>
                {condition !== undefined && <span className={lineStyles.tip}><DrawnTip tip={typicalTip(condition)} view="end" size={56} seed={condition.id} title="" /></span>}
                <div>
                  <a className={lineStyles.what} href={entryHref('looks', link.condition)}>{told.sentence(condition?.name ?? link.condition)}</a>
                  <StrengthWord word={link.strength} />
                </div>
              </div>
            </LineRow>
          );
        })}
      </ul>
    </Part>
  );
}

function Shows({ cause }: { cause: Cause }) {
  const text = useText().knowledge;
  if (cause.shows.length === 0) return null;
  return (
    <Part title={text.causes.shows}>
      <ul className={lineStyles.lines}>
        {cause.shows.map((link) => (
          <LineRow key={showsKey(cause.id, link)} lineKey={showsKey(cause.id, link)} grounds={link}>
            <span className={lineStyles.what}>{text.shows(text.finding(link.finding), link.is)}</span><StrengthWord word={link.strength} />
          </LineRow>
        ))}
      </ul>
    </Part>
  );
}

function Moved({ cause }: { cause: Cause }) {
  const text = useText().knowledge;
  if (cause.moved.length === 0) return null;
  return (
    <Part title={text.causes.moved}>
      <ul className={lineStyles.lines}>
        {cause.moved.map((link) => (
          <LineRow key={movedKey(cause.id, link)} lineKey={movedKey(cause.id, link)} grounds={link}>
            <span className={lineStyles.what}>{text.circumstance(link.by)}</span><MoveWord word={link.how} />
          </LineRow>
        ))}
      </ul>
    </Part>
  );
}

/** One cause: what it does to the plug and to the engine, how common it is, what moves it, how to tell it and what to do. */
export function CausePage({ cause }: { cause: Cause }) {
  const text = useText().knowledge;
  const name = useTold().cause(cause.id, cause.name);
  return (
    <>
      <header className={styles.head}>
        <h2>{name}</h2>
        <p className={styles.called}>{text.kinds[cause.kind]}</p>
      </header>
      <Facts cause={cause} />
      <div className={styles.tools}><AddLine of={cause.id} name={name} /></div>
      <Makes cause={cause} />
      <Shows cause={cause} />
      <Gives owner={cause} title={text.causes.gives} />
      <Moved cause={cause} />
      <SourcesHere ids={documentsOf([...cause.makes, ...cause.shows, ...cause.gives, ...cause.moved])} />
    </>
  );
}
