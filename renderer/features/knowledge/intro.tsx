import { useText } from '../../text/index.ts';
import { grounding } from './entries.ts';
import { useLooking } from './looking.ts';
import styles from './page.module.css';
import { Part } from './part.tsx';
import { MoveScale, PriorScale, StrengthScale } from './scales.tsx';

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
      <Part title={intro.words} about={intro.wordsAbout}><div className={styles.scales}><StrengthScale /><PriorScale /><MoveScale /></div></Part>
    </>
  );
}
