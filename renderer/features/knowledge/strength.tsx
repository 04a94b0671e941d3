import { MOVES, STRENGTHS, type Move, type Strength } from '../../../core/knowledge/strengths.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Belief } from '../../ui/belief.tsx';
import styles from './lines.module.css';

const shareText = (p: number): string => formatNumber(100 * p, 1);

/** A word of the knowledge with the number it stands for. */
export function StrengthWord({ word }: { word: Strength }) {
  const text = useText().knowledge;
  return (
    <span className={styles.strength}>
      <span>{text.strengths[word]}</span><Belief value={STRENGTHS[word]} show="bar" /><span className={styles.soft}>{text.percent(shareText(STRENGTHS[word]))}</span>
    </span>
  );
}

/** A factor on the odds, as a multiplication or a division. */
export function MoveFactor({ word }: { word: Move }) {
  const { times, over } = useText().knowledge.intro;
  const factor = MOVES[word];
  return <span className={styles.soft}>{factor >= 1 ? times(formatNumber(factor)) : over(formatNumber(1 / factor))}</span>;
}

export function MoveWord({ word }: { word: Move }) {
  const { moves } = useText().knowledge;
  return <span className={styles.strength}><span>{moves[word]}</span><MoveFactor word={word} /></span>;
}
