import { ToggleGroup } from 'radix-ui';
import { useId } from 'react';
import styles from './choice.module.css';

type Props<T extends string> = {
  readonly label: string;
  readonly options: readonly T[];
  readonly value: T | undefined;
  /** undefined: the chosen one was taken back, which says 'not observed'. */
  readonly onChange: (value: T | undefined) => void;
  readonly nameOf?: (option: T) => string;
  /** The label is said but not shown, where the place already tells. */
  readonly quietLabel?: boolean;
  /** One of the options always holds; choosing it again leaves it. */
  readonly always?: boolean;
  readonly disabled?: boolean;
};

/** One of a few words, or none. Arrow keys move, Space or Enter chooses, choosing again takes it back. */
export function Choice<T extends string>({ label, options, value, onChange, nameOf = String, quietLabel = false, always = false, disabled = false }: Props<T>) {
  const id = useId();
  const choose = (word: string): void => {
    if (word !== '' || !always) onChange(word === '' ? undefined : (word as T));
  };
  return (
    <div className={styles.field}>
      <span id={id} className={quietLabel ? styles.said : styles.label}>{label}</span>
      <ToggleGroup.Root type="single" aria-labelledby={id} className={styles.options} value={value ?? ''} onValueChange={choose} disabled={disabled}>
        {options.map((option) => (
          <ToggleGroup.Item key={option} value={option} className={styles.option}>{nameOf(option)}</ToggleGroup.Item>
        ))}
      </ToggleGroup.Root>
    </div>
  );
}
