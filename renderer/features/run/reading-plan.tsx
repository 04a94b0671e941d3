import type { Effect } from '../../../core/domain/reading-rules.ts';
import { readingValidity, type ReadingAnswer, type ReadingNote, type Standing } from '../../../core/domain/reading-validity.ts';
import type { ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { useText } from '../../text/index.ts';
import { Citations } from '../../ui/citations.tsx';
import { Judgement, type Tone } from '../../ui/judgement.tsx';
import { useTold } from '../../ui/use-told.ts';
import styles from './reading-plan.module.css';

const TONE: Record<Standing, Tone> = { good: 'sound', 'with care': 'watch', 'says little': 'act', 'cannot tell yet': 'open' };
/** Signs in the margin of the list; the word beside them says the same. */
const SIGN: Record<Effect, string> = { supports: '+', 'bear in mind': '·', 'not known': '?', weakens: '−', spoils: '×' };

function Note({ note }: { note: ReadingNote }) {
  const text = useText().run;
  const told = useTold();
  return (
    <li className={styles.note} data-effect={note.effect}>
      <span className={styles.sign} role="img" aria-label={text.effects[note.effect]} title={text.effects[note.effect]}>{SIGN[note.effect]}</span>
      <div>
        <p className={styles.words}>{told.sentence(note.words)}</p>
        <p className={styles.because}>{told.sentence(note.because)} <Citations ids={note.source} /></p>
      </div>
    </li>
  );
}

function Answer({ answer }: { answer: ReadingAnswer }) {
  const text = useText().run;
  return (
    <section className={styles.answer} aria-label={text.questions[answer.question]}>
      <h3>{text.questions[answer.question]}</h3>
      <Judgement tone={TONE[answer.standing]}>{text.standings[answer.standing]}</Judgement>
      <ul className={styles.notes}>{answer.notes.map((note) => <Note key={note.id} note={note} />)}</ul>
    </section>
  );
}

/** What this reading can tell and what would make it tell more, kept in step with what is entered. */
export function ReadingPlan({ sheet }: { sheet: ReadingSheet }) {
  const text = useText().run;
  const told = useTold();
  const answers = readingValidity(sheet);
  const remedies = [...new Set(answers.flatMap(({ notes }) => notes.flatMap(({ remedy }) => remedy ?? [])))];
  return (
    <aside className={styles.plan} aria-labelledby="reading-plan" tabIndex={0}>
      <h2 id="reading-plan">{text.plan}</h2>
      {answers.map((answer) => <Answer key={answer.question} answer={answer} />)}
      {remedies.length > 0 && (
        <section className={styles.answer}>
          <h3>{text.better}</h3>
          <ul className={styles.remedies}>{remedies.map((remedy) => <li key={remedy}>{told.sentence(remedy)}</li>)}</ul>
        </section>
      )}
      <p className={styles.caution}>{text.hot} <Citations ids={['W6']} /></p>
      <p className={styles.caution}>{text.road}</p>
    </aside>
  );
}
