import type { Band } from '../../../core/band.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { DrawnTip } from '../../ui/drawn-tip/index.ts';
import { useQuantity } from '../../ui/use-quantity.ts';
import { MOST_GAP } from '../../../core/spark/reserve.ts';
import { looksLike, placeOf, type Answer } from './answer.ts';
import styles from './heat.module.css';

type Line = { readonly name: string; readonly of: (answer: Answer) => string };

function useLines(): readonly Line[] {
  const { heat } = useText();
  const quantity = useQuantity();
  const celsius = ({ low, middle, high }: Band<number>): string =>
    heat.band(quantity('temperature', middle), quantity('temperature', low), quantity('temperature', high));
  const length = (mm: number | undefined): string => {
    if (mm === undefined) return heat.none;
    return mm >= MOST_GAP ? heat.orMore(quantity('length', mm)) : quantity('length', mm);
  };
  return [
    { name: heat.tip, of: ({ tip }) => celsius(tip) },
    { name: heat.ground, of: ({ ground }) => celsius(ground) },
    { name: heat.demand, of: ({ demand: { low, middle, high } }) => heat.band(quantity('voltage', middle), quantity('voltage', low), quantity('voltage', high)) },
    { name: heat.widest, of: ({ widest }) => heat.widestRange(length(widest.surely), length(widest.likely)) },
    { name: heat.burnOff, of: ({ burnOff: { low, middle, high } }) => heat.band(heat.times(middle), heat.times(low), heat.times(high)) },
  ];
}

type Props = {
  readonly answer: Answer;
  readonly lambda: number;
  readonly kept: Answer | undefined;
  readonly onKeep: () => void;
  readonly onDrop: () => void;
};

/** What the models say of the running that is set, beside what was kept to compare. */
export function Now({ answer, lambda, kept, onKeep, onDrop }: Props) {
  const { heat } = useText();
  const lines = useLines();
  const place = placeOf(answer.tip.middle);
  const [coldest, hottest] = [placeOf(answer.tip.low), placeOf(answer.tip.high)];
  return (
    <section className={styles.now}>
      <div className={styles.numbers}>
        <h2>{heat.now}</h2>
        <p className={styles.place}>{heat.places[place]}</p>
        <p className={styles.soft}>
          <span className={styles.basis} data-basis={answer.tip.basis}>{heat.basis[answer.tip.basis]}</span>
        </p>
        <p className={styles.soft}>
          {coldest !== hottest && heat.reaches(heat.places[coldest], heat.places[hottest])}
        </p>
        <table className={styles.table}>
          {kept && <thead><tr><td /><th scope="col">{heat.now}</th><th scope="col">{heat.kept}</th></tr></thead>}
          <tbody>
            {lines.map(({ name, of }) => <tr key={name}><th scope="row">{name}</th><td>{of(answer)}</td>{kept && <td className={styles.soft}>{of(kept)}</td>}</tr>)}
          </tbody>
        </table>
        {answer.tip.notes.length > 0 && <p className={styles.soft}>{heat.wider} {answer.tip.notes.join(' ')}</p>}
        <div className={styles.tools}><Button onClick={onKeep}>{heat.compare}</Button>{kept && <Button onClick={onDrop}>{heat.drop}</Button>}</div>
      </div>
      <figure className={styles.likeness}>
        <DrawnTip tip={looksLike(place, lambda)} view="end" size={190} seed="heat" />
        <figcaption className={styles.soft}>{heat.likeness}</figcaption>
      </figure>
    </section>
  );
}
