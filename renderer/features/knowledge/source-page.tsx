import { COMMON_PRACTICE, FROM_MEMORY, type SourceId } from '../../../core/knowledge/types.ts';
import type { GroundedLine } from '../../../core/knowledge/lint/grounded-lines.ts';
import { useText } from '../../text/index.ts';
import { Citations } from '../../ui/citations.tsx';
import { useTold } from '../../ui/use-told.ts';
import { lineHref } from './addresses.ts';
import { restingOn } from './entries.ts';
import { lineWords } from './line-words.ts';
import { useLooking } from './looking.ts';
import styles from './page.module.css';
import lineStyles from './lines.module.css';
import { Part } from './part.tsx';

function Lines({ lines, besides }: { lines: readonly GroundedLine[]; besides: SourceId }) {
  const { knowledge } = useLooking();
  const text = useText().knowledge;
  const told = useTold();
  return (
    <ul className={lineStyles.lines}>
      {lines.map(({ place, because, sources }) => (
        <li key={place} className={lineStyles.line}>
          <div className={lineStyles.says}><a href={lineHref(place, knowledge)}>{lineWords(place, knowledge, { knowledge: text, told })}</a></div>
          <div className={lineStyles.reason}>
            <p>{told.sentence(because)} {sources.length > 1 && <Citations ids={sources.filter((id) => id !== besides)} />}</p>
          </div>
        </li>
      ))}
    </ul>
  );
}

/** One source with every line that rests on it, and every line it contradicts. */
export function SourcePage({ id }: { id: SourceId }) {
  const { knowledge } = useLooking();
  const { sources: text } = useText().knowledge;
  const source = knowledge.sources.find((each) => each.id === id);
  const { lines, disputed } = restingOn(id, knowledge);
  const alone = lines.filter(({ sources }) => sources.length === 1).length;
  const about = id === COMMON_PRACTICE ? text.practiceAbout : id === FROM_MEMORY ? text.memoryAbout : text.read(source?.read ?? '');
  return (
    <>
      <header className={styles.head}>
        {source !== undefined && <p className={styles.called}>{source.id}</p>}
        <h2>{source?.title ?? (id === COMMON_PRACTICE ? text.practice : text.memory)}</h2>
        <p className={styles.lead}>{about}</p>
      </header>
      {disputed.length > 0 && <Part title={text.disputes}><Lines lines={disputed} besides={id} /></Part>}
      <Part title={text.lines(lines.length)} {...(lines.length > 0 && { about: text.alone(alone) })}><Lines lines={lines} besides={id} /></Part>
    </>
  );
}
