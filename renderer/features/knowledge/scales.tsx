import type { ReactNode } from 'react';
import { MOVES, PRIORS, STRENGTHS } from '../../../core/knowledge/strengths.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { Belief } from '../../ui/belief.tsx';
import { wordHref } from './addresses.ts';
import lineStyles from './lines.module.css';
import styles from './page.module.css';
import { useFactor } from './strength.tsx';

type Props<W extends string> = {
  readonly caption: string;
  readonly table: Readonly<Record<W, number>>;
  readonly said: Readonly<Record<W, string>>;
  readonly number: (word: W) => ReactNode;
  readonly here: string | undefined;
};

function Scale<W extends string>({ caption, table, said, number, here }: Props<W>) {
  return (
    <table className={styles.scale}>
      <caption>{caption}</caption>
      <tbody>
        {(Object.keys(table) as W[]).map((word) => (
          <tr key={word}>
            <th scope="row"><a href={wordHref(word)} aria-current={word === here ? 'page' : undefined}>{said[word]}</a></th>
            <td>{number(word)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** `here`: the word whose page this is. */
type Here = { readonly here?: string };

export function StrengthScale({ here }: Here) {
  const { intro, strengths } = useText().knowledge;
  const number = (word: keyof typeof STRENGTHS): ReactNode => (
    <span className={lineStyles.strength}><Belief value={STRENGTHS[word]} show="bar" /> <span>{intro.inHundred(formatNumber(100 * STRENGTHS[word], 1))}</span></span>
  );
  return <Scale caption={intro.strengths} table={STRENGTHS} said={strengths} number={number} here={here} />;
}

export function PriorScale({ here }: Here) {
  const { intro, priors } = useText().knowledge;
  return <Scale caption={intro.priors} table={PRIORS} said={priors} number={(word) => intro.inHundred(formatNumber(100 * PRIORS[word], 1))} here={here} />;
}

export function MoveScale({ here }: Here) {
  const { intro, moves } = useText().knowledge;
  const factor = useFactor();
  return <Scale caption={intro.moves} table={MOVES} said={moves} number={factor} here={here} />;
}
