import type { KeyboardEvent } from 'react';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { useText } from '../../text/index.ts';
import { TipSample, type Question, type Sample } from '../../ui/drawn-tip/index.ts';
import { VALUE_KEYS } from './keys.ts';
import { valuesOf } from './questions.ts';
import styles from './choices.module.css';

const SAMPLE_SIZE = 44;

type Props = {
  readonly question: Question;
  readonly value: string | undefined;
  /** What the samples stand on, such as the colour of the nose under its deposits. */
  readonly ground: Tip;
  readonly labelledBy: string;
  readonly describedBy: string;
  readonly onChoose: (value: string) => void;
};

const WALK: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** The values of one question, each with a drawn sample and its key. With the focus in here arrows walk from value to value; Space or Enter takes one. */
export function Choices({ question, value, ground, labelledBy, describedBy, onChoose }: Props) {
  const { tray } = useText();
  const values = valuesOf(question);
  const stop = Math.max(0, values.indexOf(value ?? ''));
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    const steps = WALK[event.key];
    const buttons = [...event.currentTarget.querySelectorAll('button')];
    const from = buttons.findIndex((button) => button === document.activeElement);
    if (steps === undefined || from < 0) return;
    buttons[(from + steps + buttons.length) % buttons.length]?.focus();
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div role="radiogroup" aria-labelledby={labelledBy} aria-describedby={describedBy} className={styles.choices} onKeyDown={onKeyDown}>
      {values.map((option, i) => (
        <button key={option} type="button" role="radio" aria-checked={option === value} aria-keyshortcuts={VALUE_KEYS[i]}
          tabIndex={i === stop ? 0 : -1} className={styles.choice} onClick={() => onChoose(option)}>
          <span className={styles.sample}><TipSample sample={{ facet: question, value: option } as Sample} on={ground} size={SAMPLE_SIZE} /></span>
          <span className={styles.word}>{tray.valueName(option)}</span>
          <kbd aria-hidden="true" className={styles.key}>{VALUE_KEYS[i]?.toUpperCase()}</kbd>
        </button>
      ))}
    </div>
  );
}
