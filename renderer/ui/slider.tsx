import { Slider as Radix } from 'radix-ui';
import { useId } from 'react';
import styles from './slider.module.css';

type Props = {
  readonly label: string;
  /** Beside the label, softer: how far to trust it. */
  readonly remark: string;
  readonly value: number;
  readonly shown: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly onChange: (value: number) => void;
};

/** A number that is moved rather than typed. Arrow keys move by a step, Page keys by ten, Home and End to the ends. */
export function Slider({ label, remark, value, shown, least, most, step, onChange }: Props) {
  const id = useId();
  return (
    <div className={styles.field}>
      <span id={id} className={styles.label}>{label}</span>
      <span className={styles.remark}>{remark}</span>
      <output className={styles.value}>{shown}</output>
      <Radix.Root className={styles.slider} min={least} max={most} step={step} value={[value]}
        onValueChange={([next]) => { if (next !== undefined) onChange(next); }}>
        <Radix.Track className={styles.track}><Radix.Range className={styles.range} /></Radix.Track>
        <Radix.Thumb className={styles.thumb} aria-labelledby={id} aria-valuetext={shown} />
      </Radix.Root>
    </div>
  );
}
