import { MOVES, PRIORS, STRENGTHS, type Move, type Prior, type Strength } from '../../../core/knowledge/strengths.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Belief } from '../../ui/belief.tsx';
import { grounding } from './entries.ts';
import { useLooking } from './looking.ts';
import styles from './page.module.css';
import { Part } from './part.tsx';
import { MoveFactor } from './strength.tsx';

const words = <W extends string>(table: Readonly<Record<W, number>>): readonly W[] => Object.keys(table) as W[];

function Scales() {
  const { intro, strengths, priors, moves } = useText().knowledge;
  const share = (p: number): string => intro.inHundred(formatNumber(100 * p, 1));
  return (
    <div className={styles.scales}>
      <table className={styles.scale}>
        <caption>{intro.strengths}</caption>
        <tbody>{words(STRENGTHS).map((word: Strength) => <tr key={word}><th scope="row">{strengths[word]}</th><td><Belief value={STRENGTHS[word]} show="bar" /></td><td>{share(STRENGTHS[word])}</td></tr>)}</tbody>
      </table>
      <table className={styles.scale}>
        <caption>{intro.priors}</caption>
        <tbody>{words(PRIORS).map((word: Prior) => <tr key={word}><th scope="row">{priors[word]}</th><td>{share(PRIORS[word])}</td></tr>)}</tbody>
      </table>
      <table className={styles.scale}>
        <caption>{intro.moves}</caption>
        <tbody>{words(MOVES).map((word: Move) => <tr key={word}><th scope="row">{moves[word]}</th><td><MoveFactor word={word} /></td></tr>)}</tbody>
      </table>
    </div>
  );
}

/** What the program judges by as a whole: how much of it there is, what it rests on, and what its words stand for. */
export function Intro() {
  const { knowledge } = useLooking();
  const { intro } = useText().knowledge;
  const { lines, documented, practice, memory, disputed } = grounding(knowledge);
  return (
    <>
      <header className={styles.head}>
        <h2>{intro.title}</h2>
        <p className={styles.lead}>{intro.about}</p>
        <p>{intro.counted(lines, knowledge.sources.length, documented, practice, memory)} {intro.disputed(disputed)}</p>
        <p>{intro.guards}</p>
      </header>
      <Part title={intro.words} about={intro.wordsAbout}><Scales /></Part>
    </>
  );
}
