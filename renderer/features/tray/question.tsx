import { useId, useMemo } from 'react';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { TipSample, type Question, type Sample } from '../../ui/drawn-tip/index.ts';
import { Choices } from './choices.tsx';
import styles from './question.module.css';

type Props = {
  readonly question: Question;
  readonly tip: Tip;
  readonly active: boolean;
  /** What plugs beside this one show, where it differs. */
  readonly beside: readonly { readonly name: string; readonly short: string; readonly value: string }[];
  readonly onAsk: () => void;
  readonly onChoose: (value: string) => void;
  readonly onUnsure: () => void;
  readonly onClear: () => void;
};

export const questionId = (question: Question): string => `ask-${question}`;

const BARE: Tip = {};

/** How far something spreads is shown with what spreads; every other value stands on the bare drawing, where nothing hides it. */
const groundOf = (question: Question, { deposit }: Tip): Tip => (question === 'coverage' && deposit !== undefined && deposit !== 'none' ? { deposit } : BARE);

/** One question of a tip: a line with its answer, and its values while it is asked. */
export function QuestionRow({ question, tip, active, beside, onAsk, onChoose, onUnsure, onClear }: Props) {
  const { tray } = useText();
  const hint = useId();
  const value = tip[question];
  const unsure = question !== 'overall' && (tip.unsure?.includes(question) ?? false);
  const ground = useMemo(() => groundOf(question, tip), [question, tip]);
  return (
    <div className={styles.question} data-active={active ? '' : undefined} data-field={question}>
      <button type="button" id={questionId(question)} className={styles.ask} aria-expanded={active} onClick={onAsk}>
        <span className={styles.name}>{tray.questions[question]}</span>{' '}
        <span className={value === undefined ? styles.open : styles.answer}>
          {value === undefined ? tray.entry.notObserved : tray.valueName(value)}
          {unsure && <em className={styles.unsure}> {tray.entry.unsure}</em>}
        </span>
        <span className={styles.sample} aria-hidden="true">
          {value !== undefined && <TipSample sample={{ facet: question, value } as Sample} on={ground} size={30} />}
        </span>
      </button>
      {active && (
        <div className={styles.asked}>
          <p id={hint} className={styles.where}>{tray.where[question]}</p>
          <Choices question={question} value={value} ground={ground} labelledBy={questionId(question)} describedBy={hint} onChoose={onChoose} />
          <div className={styles.after}>
            {beside.map(({ name, short, value: other }, i) => (
              <Button key={name} aria-label={tray.entry.sameValueName(name, tray.valueName(other))} onClick={() => onChoose(other)}>
                {tray.entry.sameValue(short, tray.valueName(other))}{i === 0 && <kbd aria-hidden="true">S</kbd>}
              </Button>
            ))}
            <span className={styles.gap} />
            {question !== 'overall' && (
              <Button look="quiet" aria-pressed={unsure} disabled={value === undefined} onClick={onUnsure}>
                {tray.entry.markUnsure}<kbd aria-hidden="true">U</kbd>
              </Button>
            )}
            <Button look="quiet" disabled={value === undefined} onClick={onClear}>{tray.entry.clear}<kbd aria-hidden="true">Del</kbd></Button>
          </div>
        </div>
      )}
    </div>
  );
}
