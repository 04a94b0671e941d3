import { givesKey, makesKey, showsKey } from '../../../core/knowledge/line-keys.ts';
import { PRIORS, STRENGTHS } from '../../../core/knowledge/strengths.ts';
import type { Cause, Condition, Knowledge, Term } from '../../../core/knowledge/types.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { Judgement, toneOf } from '../../ui/judgement.tsx';
import { useTold } from '../../ui/use-told.ts';
import { AddLine } from './add-line.tsx';
import { entryHref } from './addresses.ts';
import { documentsOf, LineRow } from './line-row.tsx';
import styles from './page.module.css';
import lineStyles from './lines.module.css';
import { useLooking } from './looking.ts';
import { Part, SourcesHere } from './part.tsx';
import { PriorWord, StrengthWord } from './strength.tsx';
import { shownByPart, typicalTip } from './typical-tip.ts';

type Making = { readonly cause: Cause; readonly link: Cause['makes'][number] };

/** Causes that make a condition, the one most often met first. */
function makersOf({ id }: Condition, { causes }: Knowledge): readonly Making[] {
  const share = ({ cause, link }: Making): number => PRIORS[cause.prior] * STRENGTHS[link.strength];
  const makers = causes.flatMap((cause) => cause.makes.filter(({ condition }) => condition === id).map((link) => ({ cause, link })));
  return makers.sort((a, b) => share(b) - share(a));
}

function Portrait({ condition }: { condition: Condition }) {
  const { knowledge: { looks } } = useText();
  const tip = typicalTip(condition);
  return (
    <figure className={styles.portrait}>
      <div className={styles.tips}>
        <DrawnTip tip={tip} view="end" size={220} seed={condition.id} />
        <DrawnTip tip={tip} view="side" size={220} seed={condition.id} title="" />
      </div>
      <figcaption>{looks.typical}</figcaption>
    </figure>
  );
}

function Appearances({ condition }: { condition: Condition }) {
  const { knowledge: text, tray } = useText();
  return (
    <Part title={text.looks.how}>
      {shownByPart(condition).map(({ part, shows }) => (
        <div key={part} className={styles.group}>
          <h4>{part === 'measured' ? text.looks.measured : tray.parts[part]}</h4>
          <ul className={lineStyles.lines}>
            {shows.map((link) => (
              <LineRow key={showsKey(condition.id, link)} lineKey={showsKey(condition.id, link)} grounds={link}>
                <span className={lineStyles.what}>{text.shows(text.finding(link.finding), link.is)}</span>
                <StrengthWord word={link.strength} />
              </LineRow>
            ))}
          </ul>
        </div>
      ))}
    </Part>
  );
}

function Makers({ makers }: { makers: readonly Making[] }) {
  const text = useText().knowledge;
  const told = useTold();
  if (makers.length === 0) return null;
  return (
    <Part title={text.looks.madeBy} about={text.looks.makersAbout}>
      <ul className={lineStyles.lines}>
        {makers.map(({ cause, link }) => (
          <LineRow key={cause.id} lineKey={makesKey(cause.id, link)} grounds={link}>
            <a className={lineStyles.what} href={entryHref('causes', cause.id)}>{told.cause(cause.id, cause.name)}</a>
            <span className={lineStyles.strength}>
              <PriorWord word={cause.prior} /><StrengthWord word={link.strength} />
            </span>
          </LineRow>
        ))}
      </ul>
    </Part>
  );
}

export function Gives({ owner, title }: { owner: Pick<Condition, 'id' | 'gives'>; title: string }) {
  const { symptoms } = useText().run;
  if (owner.gives.length === 0) return null;
  return (
    <Part title={title}>
      <ul className={lineStyles.lines}>
        {owner.gives.map((link) => (
          <LineRow key={link.symptom} lineKey={givesKey(owner.id, link)} grounds={link}>
            <span className={lineStyles.what}>{symptoms[link.symptom]}</span><StrengthWord word={link.strength} />
          </LineRow>
        ))}
      </ul>
    </Part>
  );
}

/** Rules that ask for something which this condition shows. */
function RulesFor({ condition }: { condition: Condition }) {
  const { knowledge: { stopRules, barsOnHotter } } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  const often = condition.shows.filter(({ strength }) => STRENGTHS[strength] >= STRENGTHS.often);
  const shown = (term: Term): boolean => 'plug' in term && often.some(({ finding, is }) => finding === term.plug && term.is.includes(is));
  const stops = stopRules.filter(({ anyOf }) => anyOf.some((terms) => terms.some(shown)));
  const bars = barsOnHotter.filter(({ anyOf }) => anyOf.some(shown));
  if (stops.length + bars.length === 0) return null;
  return (
    <Part title={text.looks.stops}>
      <ul className={styles.plain}>
        {stops.map(({ id, words }) => <li key={id}><a href={entryHref('stops', id)}>{told.sentence(words)}</a></li>)}
        {bars.map(({ id, sign }) => <li key={id}><a href={entryHref('bars', id)}>{text.rules.sign(told.sentence(sign))}</a></li>)}
      </ul>
    </Part>
  );
}

/** One appearance: how a tip looks when this is the matter, what makes it, what to do. It prints as a sheet of its own. */
export function LooksPage({ condition }: { condition: Condition }) {
  const { knowledge } = useLooking();
  const { knowledge: text, findings } = useText();
  const told = useTold();
  const makers = makersOf(condition, knowledge);
  return (
    <>
      <header className={styles.head}>
        <h2>{told.sentence(condition.name)}</h2>
        <p className={styles.called}>{text.looks.calls} <Judgement tone={toneOf(condition.verdict)}>{findings.verdicts[condition.verdict]}</Judgement></p>
        <p className={styles.lead}>{told.sentence(condition.meaning)} {condition.thermal !== undefined && text.looks[condition.thermal]}</p>
      </header>
      <Portrait condition={condition} />
      <dl className={styles.facts}>
        <dt>{text.looks.cure}</dt><dd>{told.sentence(condition.cure)}</dd>
        <dt>{text.looks.heat}</dt><dd>{text.heatRules[condition.heatRule]}</dd>
      </dl>
      <div className={styles.tools}>
        <Button onClick={() => window.print()}>{text.looks.print}</Button>
        <AddLine of={condition.id} name={told.sentence(condition.name)} />
      </div>
      <Appearances condition={condition} />
      <Makers makers={makers} />
      <Gives owner={condition} title={text.looks.gives} />
      <RulesFor condition={condition} />
      <SourcesHere ids={documentsOf([...condition.shows, ...condition.gives, ...makers.map(({ link }) => link)])} />
    </>
  );
}
