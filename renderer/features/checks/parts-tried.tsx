import { SWAP_PARTS, type SwapPart } from '../../../shared/vocabulary/checks.ts';
import { useAct, useIsKept, useSheet } from '../../state/hooks.ts';
import type { ReadingAction } from '../../state/reading-action.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { Citations } from '../../ui/citations.tsx';
import { TryForm } from './try-form.tsx';
import styles from './tried.module.css';

type Line = { readonly key: string; readonly words: string; readonly remove: ReadingAction };

function useLines(): readonly Line[] {
  const text = useText().checks;
  const { cylinderChecks = [] } = useSheet();
  const name = (part: SwapPart): string => text.parts[part];
  return cylinderChecks.flatMap(({ cylinder, swaps = [], substitutions = [] }) => [
    ...swaps.map((swap): Line => ({
      key: `${cylinder} ${swap.part} ${swap.to}`, words: text.tried.swapLine(cylinder, name(swap.part), swap.to, swap.followed),
      remove: { type: 'swap', cylinder, swap, on: false },
    })),
    ...substitutions.map((substitution): Line => ({
      key: `${cylinder} ${substitution.part}`, words: text.tried.substituteLine(cylinder, name(substitution.part), substitution.cured),
      remove: { type: 'substitution', cylinder, substitution, on: false },
    })),
  ]);
}

/** Parts swapped between cylinders or replaced by known-good ones, as sentences, and the form that adds one. */
export function PartsTried({ start }: { start: { readonly part?: SwapPart; readonly cylinder?: number; readonly how?: 'swap' | 'substitute' } }) {
  const text = useText().checks.tried;
  const act = useAct();
  const disabled = useIsKept();
  const lines = useLines();
  return (
    <section className={styles.tried} aria-labelledby="parts-tried" data-field="parts">
      <h2 id="parts-tried">{text.title}</h2>
      <p className={styles.about}>{text.about}</p>
      <p className={styles.caution}>{text.caution} <Citations ids={['W8', 'W9', 'S23']} /></p>
      {!disabled && <TryForm key={JSON.stringify(start)} start={start} parts={SWAP_PARTS} />}
      {lines.length === 0 ? <p className={styles.about}>{text.none}</p> : (
        <ul className={styles.lines}>
          {lines.map(({ key, words, remove }) => (
            <li key={key}>
              <span>{words}</span>
              <Button look="quiet" aria-label={text.remove(words)} disabled={disabled} onClick={() => act(remove)}>{text.removeWord}</Button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
