import { useId } from 'react';
import { PENDING_LIMIT } from '../../shared/channels.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { formatNumber, plainNumber } from '../text/numbers.ts';
import styles from './field.module.css';
import { takeNumber, toShown, unitOf, type Quantity, type Range } from './quantity.ts';
import { useTyping } from './use-typing.ts';

type Props = {
  readonly label: string;
  readonly quantity: Quantity;
  /** In the sheet's own unit, as `value`. */
  readonly range: Range;
  readonly value: number | undefined;
  /** What was typed before and could not be taken yet. */
  readonly raw: string | undefined;
  /** `value` is undefined when nothing can be taken; `raw` then holds the text to keep, and is undefined when the field is empty or taken. */
  readonly onEntry: (value: number | undefined, raw: string | undefined) => void;
  readonly hint?: string;
  /** Only whole numbers. */
  readonly whole?: boolean;
  readonly disabled?: boolean;
};

/** A number with its unit, in the units the person set. What cannot be taken stays in the field and says what is allowed. */
export function QuantityField({ label, quantity, range, value, raw, onEntry, hint, whole = false, disabled = false }: Props) {
  const id = useId();
  const text = useText();
  const unit = unitOf(quantity, useStore((state) => state.settings.units));
  const [typing, type, onBlur] = useTyping();
  const stored = raw ?? (value === undefined ? '' : plainNumber(toShown(value, unit), unit.decimals));
  const shown = typing ?? stored;
  const [low, high] = range.map((bound) => formatNumber(toShown(bound, unit), unit.decimals));
  const bounds = text.shell.quantity.allowed(low ?? '', high ?? '', unit.name);

  const take = (next: string): ReturnType<typeof takeNumber> => {
    const taken = takeNumber(next, unit, range);
    return whole && taken.kind === 'value' && !Number.isInteger(taken.value) ? { kind: 'problem', what: 'unreadable' } : taken;
  };
  const enter = (next: string): void => {
    type(next);
    const taken = take(next);
    if (taken.kind === 'value') onEntry(taken.value, undefined);
    else onEntry(undefined, taken.kind === 'empty' ? undefined : next);
  };
  const standing = take(stored);
  const problem = typing === null && standing.kind === 'problem' ? text.shell.quantity.problem(standing.what, bounds) : undefined;
  const about = problem ?? (typing === null ? hint : [hint, bounds].filter(Boolean).join(' '));

  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>{label}</label>
      <div className={styles.box} data-invalid={problem === undefined ? undefined : ''}>
        <input id={id} className={styles.input} inputMode="decimal" autoComplete="off" maxLength={PENDING_LIMIT} value={shown} disabled={disabled}
          aria-describedby={`${id}-unit ${id}-about`} aria-invalid={problem !== undefined}
          onChange={(event) => enter(event.target.value)} onBlur={onBlur} />
        <span id={`${id}-unit`} className={styles.unit}>{unit.name}</span>
      </div>
      <p id={`${id}-about`} className={problem === undefined ? styles.hint : styles.problem}>{about}</p>
    </div>
  );
}
