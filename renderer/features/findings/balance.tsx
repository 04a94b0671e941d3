import { evidenceGrade } from '../../../core/domain/grades.ts';
import type { CauseFinding } from '../../../shared/formats/findings.v1.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Citations } from '../../ui/citations.tsx';
import { OwnMark } from '../../ui/own-mark.tsx';
import { useTold } from '../../ui/use-told.ts';
import { entryHref, lineHref } from '../knowledge/index.ts';
import styles from './balance.module.css';
import { weigh, type Weighed } from './weigh.ts';

const factorText = (factor: number): string => formatNumber(factor, factor < 1.5 ? 2 : factor < 10 ? 1 : 0);

function Bar({ side, reach }: Pick<Weighed, 'side' | 'reach'>) {
  const width = Math.max(1.5, 50 * reach);
  return (
    <svg className={styles.beam} viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
      <rect className={styles[side]} x={side === 'for' ? 50 : 50 - width} y="2" width={width} height="10" />
      <path className={styles.middle} d="M50 0V14" />
    </svg>
  );
}

/** The way from a reason to the line of the knowledge that it rests on. */
function LineLink({ lines, words }: { lines: readonly string[] | undefined; words: string }) {
  const text = useText().findings;
  const knowledge = useStore((state) => state.taught.knowledge);
  const line = lines?.at(-1);
  return line === undefined ? null : <a className={styles.look} href={lineHref(line, knowledge)} aria-label={text.lookUpLine(words)}>{text.lookUp}</a>;
}

function Line({ weighed: { fact, side, reach, factor } }: { weighed: Weighed }) {
  const text = useText().findings;
  const told = useTold();
  return (
    <li className={styles.line}>
      <div className={styles.scale}>
        <Bar side={side} reach={reach} />
        <span className={styles.weight} data-side={side}>{text.weights[evidenceGrade(fact.bits)][side]}<span className={styles.odds}>{text.odds(factorText(factor), side === 'for')}</span></span>
      </div>
      <p className={styles.reason}>
        <strong className={styles.fact}>{told.sentence(fact.text)}</strong> {told.sentence(fact.because)}{' '}
        {fact.addedBy !== undefined && <OwnMark by={fact.addedBy} />} <LineLink lines={fact.lines} words={told.sentence(fact.text)} />
      </p>
    </li>
  );
}

/** The id of the cause itself, without the place where it acts. */
const causeOf = (id: string): string => id.split(' @ ', 1)[0] ?? id;

/** What speaks for and against one cause, each on its side of a middle line, with the reason in words. */
export function Balance({ cause }: { cause: CauseFinding }) {
  const text = useText().findings;
  const told = useTold();
  const lines = weigh(cause.supports, cause.speaksAgainst);
  return (
    <section className={styles.balance} aria-label={text.balance(told.cause(cause.id, cause.name))}>
      {lines.length === 0 ? <p>{text.noFacts}</p> : (
        <>
          <div className={styles.ends} aria-hidden="true"><span>{text.againstIt}</span><span>{text.forIt}</span></div>
          <ul>{lines.map((weighed, i) => <Line key={`${i} ${weighed.fact.text}`} weighed={weighed} />)}</ul>
        </>
      )}
      {cause.sources.length > 0 && <p className={styles.sources}>{text.sourcesOf} <Citations ids={cause.sources} /></p>}
      <p className={styles.sources}><a className={styles.look} href={entryHref('causes', causeOf(cause.id))}>{text.lookUpCause}</a></p>
    </section>
  );
}
