import { useId } from 'react';
import styles from './field.module.css';

type Props = {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly limit?: number;
  readonly hint?: string;
  readonly problem?: string | undefined;
  readonly lines?: 'one' | 'several';
  readonly type?: 'text' | 'date';
  readonly disabled?: boolean;
  readonly autoFocus?: boolean;
};

/** Text in one line or several, with its label, a hint and what is wrong with it. */
export function TextField({ label, value, onChange, limit, hint, problem, lines = 'one', type = 'text', disabled = false, autoFocus = false }: Props) {
  const id = useId();
  const about = problem !== undefined || hint !== undefined ? `${id}-about` : undefined;
  const shared = { id, value, disabled, autoFocus, maxLength: limit, 'aria-describedby': about, 'aria-invalid': problem !== undefined };
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={styles.label}>{label}</label>
      <div className={styles.box} data-invalid={problem === undefined ? undefined : ''}>
        {lines === 'several'
          ? <textarea {...shared} className={`${styles.input} ${styles.area}`} onChange={(event) => onChange(event.target.value)} />
          : <input {...shared} type={type} className={styles.input} onChange={(event) => onChange(event.target.value)} autoComplete="off" />}
      </div>
      {about !== undefined && <p id={about} className={problem === undefined ? styles.hint : styles.problem}>{problem ?? hint}</p>}
    </div>
  );
}
