import { useId } from 'react';
import styles from './field.module.css';

type Props<T extends string> = {
  readonly label: string;
  readonly options: readonly T[];
  readonly value: T | undefined;
  readonly onChange: (value: T | undefined) => void;
  /** What stands there when nothing is chosen. */
  readonly none: string;
  readonly nameOf?: (option: T) => string;
  /** The heading under which an option stands; options of one group follow each other. */
  readonly groupOf?: (option: T) => string;
  readonly problem?: string | undefined;
  readonly disabled?: boolean;
};

/** One of many words, or none. */
export function SelectField<T extends string>({ label, options, value, onChange, none, nameOf = String, groupOf, problem, disabled = false }: Props<T>) {
  const id = useId();
  const optionFor = (option: T) => <option key={option} value={option}>{nameOf(option)}</option>;
  const groups = groupOf === undefined ? [] : [...new Set(options.map(groupOf))];
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>{label}</label>
      <div className={styles.box} data-invalid={problem === undefined ? undefined : ''}>
        <select id={id} className={`${styles.input} ${styles.select}`} value={value ?? ''} disabled={disabled}
          aria-invalid={problem !== undefined} aria-describedby={problem === undefined ? undefined : `${id}-about`}
          onChange={(event) => onChange(event.target.value === '' ? undefined : (event.target.value as T))}>
          <option value="">{none}</option>
          {groupOf === undefined
            ? options.map(optionFor)
            : groups.map((group) => <optgroup key={group} label={group}>{options.filter((option) => groupOf(option) === group).map(optionFor)}</optgroup>)}
        </select>
      </div>
      {problem !== undefined && <p id={`${id}-about`} className={styles.problem}>{problem}</p>}
    </div>
  );
}
