import { MOVES, PRIORS, STRENGTHS, type Move, type Prior, type Strength } from '../../../core/knowledge/strengths.ts';
import type { CureTrust } from '../../../core/knowledge/cures.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Belief } from '../../ui/belief.tsx';
import { wordHref } from './addresses.ts';
import styles from './lines.module.css';
import { CURES_KEY } from './uses.ts';

const shareText = (p: number): string => formatNumber(100 * p, 1);

/** A word of the knowledge with the number it stands for. */
export function StrengthWord({ word }: { word: Strength }) {
  const text = useText().knowledge;
  return (
    <span className={styles.strength}>
      <a className={styles.word} href={wordHref(word)}>{text.strengths[word]}</a><Belief value={STRENGTHS[word]} show="bar" /><span className={styles.soft}>{text.percent(shareText(STRENGTHS[word]))}</span>
    </span>
  );
}

/** A factor on the odds, as a multiplication or a division. */
export function useFactor(): (word: Move) => string {
  const { times, over } = useText().knowledge.intro;
  return (word) => (MOVES[word] >= 1 ? times(formatNumber(MOVES[word])) : over(formatNumber(1 / MOVES[word])));
}

export function MoveWord({ word }: { word: Move }) {
  const { moves } = useText().knowledge;
  const factor = useFactor();
  return (
    <span className={styles.strength}>
      <a className={styles.word} href={wordHref(word)}>{moves[word]}</a><span className={styles.soft}>{factor(word)}</span>
    </span>
  );
}

/** How common a cause is. `numbered`: with the number that the word stands for. */
export function PriorWord({ word, numbered = false }: { word: Prior; numbered?: boolean }) {
  const { priors, intro } = useText().knowledge;
  return (
    <span className={styles.strength}>
      <a className={styles.word} href={wordHref(word)}>{priors[word]}</a>
      {numbered && <span className={styles.soft}>{intro.inHundred(shareText(PRIORS[word]))}</span>}
    </span>
  );
}

/** How far a cure is trusted to have removed its cause, and where that is said. */
export function Trust({ of: { holds } }: { of: CureTrust }) {
  const { strengths, percent } = useText().knowledge;
  return (
    <span className={styles.strength}>
      <a className={styles.word} href={wordHref(CURES_KEY)}>{strengths[holds]}</a><span className={styles.soft}>{percent(shareText(STRENGTHS[holds]))}</span>
    </span>
  );
}
