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
  readonly disabled?: boolean;
};

/** One of many words, or none. */
export function SelectField<T extends string>({ label, options, value, onChange, none, nameOf = String, disabled = false }: Props<T>) {
  const id = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>{label}</label>
      <div className={styles.box}>
        <select id={id} className={`${styles.input} ${styles.select}`} value={value ?? ''} disabled={disabled}
          onChange={(event) => onChange(event.target.value === '' ? undefined : (event.target.value as T))}>
          <option value="">{none}</option>
          {options.map((option) => <option key={option} value={option}>{nameOf(option)}</option>)}
        </select>
      </div>
    </div>
  );
}
