import { VERDICTS, type Verdict } from '../../../shared/vocabulary/verdicts.ts';
import { useText } from '../../text/index.ts';
import { Judgement, toneOf } from '../../ui/judgement.tsx';
import styles from './engine-log.module.css';

const isVerdict = (word: string): word is Verdict => (VERDICTS as readonly string[]).includes(word);
const GRAVEST_FIRST = ['stop', 'act', 'watch', 'open', 'sound'] as const;

/** The verdicts of a reading, the gravest first, each once with how often it was given. */
export function VerdictList({ verdicts }: { verdicts: readonly string[] }) {
  const { engines: { page }, tray: { verdictName } } = useText();
  const known = verdicts.filter(isVerdict);
  if (known.length === 0) return <span className={styles.noVerdict}>{page.noVerdict}</span>;
  const grave = (verdict: Verdict): number => GRAVEST_FIRST.indexOf(toneOf(verdict));
  const distinct = [...new Set(known)].sort((a, b) => grave(a) - grave(b));
  return (
    <span className={styles.verdicts}>
      {distinct.map((verdict) => {
        const times = known.filter((other) => other === verdict).length;
        return <Judgement key={verdict} tone={toneOf(verdict)}>{times > 1 ? `${verdictName(verdict)} ${page.times(times)}` : verdictName(verdict)}</Judgement>;
      })}
    </span>
  );
}
