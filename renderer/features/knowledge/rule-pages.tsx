import { sentenceStart } from '../../../core/domain/words.ts';
import type { Bar, Caution, Contradiction, StopRule, Term } from '../../../core/knowledge/types.ts';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { useText } from '../../text/index.ts';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { Judgement } from '../../ui/judgement.tsx';
import { useTold } from '../../ui/use-told.ts';
import { documentsOf, Reason } from './line-row.tsx';
import lineStyles from './lines.module.css';
import styles from './page.module.css';
import { Part, SourcesHere } from './part.tsx';

/** The plug that the terms ask for, with the first of the values they allow; undefined when they ask for nothing that can be drawn. */
function tipOf(terms: readonly Term[]): Tip | undefined {
  const drawn = terms.flatMap((term) => ('plug' in term ? [[term.plug, term.is[0]] as const] : []));
  return drawn.length === 0 ? undefined : Object.fromEntries(drawn);
}

/** Each way in which a rule can be set, drawn where it can be. */
function Alternatives({ of }: { of: readonly (readonly Term[])[] }) {
  const { term, rules } = useText().knowledge;
  return (
    <ul className={styles.alternatives}>
      {of.map((terms) => {
        const tip = tipOf(terms);
        const words = terms.map(term);
        return (
          <li key={words.join()} className={styles.alternative}>
            {tip !== undefined && <span className={lineStyles.tip}><DrawnTip tip={tip} view="end" size={72} seed={words.join()} title="" /></span>}
            <span>{words.map((each, i) => <span key={each}>{i > 0 && <><br />{rules.and} </>}{each}</span>)}</span>
          </li>
        );
      })}
    </ul>
  );
}

export function StopPage({ rule }: { rule: StopRule }) {
  const told = useTold();
  const { knowledge: { rules, because }, findings } = useText();
  return (
    <>
      <header className={styles.head}>
        <p className={styles.called}><Judgement tone="stop">{findings.stop}</Judgement> {rules.stopAbout}</p>
        <h2>{told.sentence(rule.words)}</h2>
      </header>
      <Part title={because}><Reason {...rule} /></Part>
      <Part title={rules.speaks}><Alternatives of={rule.anyOf} /></Part>
      <SourcesHere ids={documentsOf([rule])} />
    </>
  );
}

export function BarPage({ bar }: { bar: Bar }) {
  const told = useTold();
  const { rules, because } = useText().knowledge;
  return (
    <>
      <header className={styles.head}>
        <h2>{told.sentence(sentenceStart(bar.sign))}</h2>
        <p className={styles.lead}>{rules.barAbout}</p>
      </header>
      <Part title={because}><Reason {...bar} /></Part>
      <Part title={rules.speaks}><Alternatives of={bar.anyOf.map((term) => [term])} /></Part>
      <SourcesHere ids={documentsOf([bar])} />
    </>
  );
}

export function ContradictionPage({ contradiction }: { contradiction: Contradiction }) {
  const told = useTold();
  const { rules, because } = useText().knowledge;
  const { first, second } = contradiction;
  return (
    <>
      <header className={styles.head}><h2>{told.sentence(contradiction.words)}</h2></header>
      <Part title={rules.first}><Alternatives of={[[first]]} /></Part>
      {second !== undefined && <Part title={rules.second}><Alternatives of={[[second]]} /></Part>}
      <Part title={because}><Reason {...contradiction} /></Part>
      <SourcesHere ids={documentsOf([contradiction])} />
    </>
  );
}

export function CautionPage({ caution }: { caution: Caution }) {
  const told = useTold();
  const { rules, because } = useText().knowledge;
  return (
    <>
      <header className={styles.head}><h2>{told.sentence(caution.words)}</h2></header>
      <Part title={because}><Reason {...caution} /></Part>
      <Part title={rules.speaks}>{caution.when === undefined ? <p>{rules.always}</p> : <Alternatives of={caution.when.map((term) => [term])} />}</Part>
      <SourcesHere ids={documentsOf([caution])} />
    </>
  );
}
