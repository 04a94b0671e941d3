import { ToggleGroup } from 'radix-ui';
import { useId } from 'react';
import type { SymptomTag } from '../../../shared/vocabulary/conditions.ts';
import { useAct, useIsKept, useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { OF_ONE_CYLINDER } from './groups.ts';
import styles from './symptom.module.css';

const WHOLE = 'whole';

/** Which cylinders have it: several may, or it is not tied to one. */
function WhichCylinder({ what, label }: { what: SymptomTag; label: string }) {
  const text = useText().run;
  const act = useAct();
  const sheet = useSheet();
  const disabled = useIsKept();
  const marked = (sheet.symptoms ?? []).filter((symptom) => symptom.what === what).map(({ cylinder }) => (cylinder === undefined ? WHOLE : `${cylinder}`));
  const change = (next: readonly string[]): void => {
    const word = [...marked, ...next].find((option) => marked.includes(option) !== next.includes(option));
    if (word === undefined) return;
    act({ type: 'symptom', what, cylinder: word === WHOLE ? undefined : Number(word), on: next.includes(word) });
  };
  return (
    <ToggleGroup.Root type="multiple" className={styles.cylinders} aria-label={text.whichCylinder(label)} value={marked} onValueChange={change} disabled={disabled}>
      {Array.from({ length: sheet.engine.cylinders }, (_, i) => `${i + 1}`).map((number) => (
        <ToggleGroup.Item key={number} value={number} className={styles.number} aria-label={text.cylinder(Number(number))}>{number}</ToggleGroup.Item>
      ))}
      <ToggleGroup.Item value={WHOLE} className={styles.option}>{text.whole}</ToggleGroup.Item>
    </ToggleGroup.Root>
  );
}

/** A symptom that was there, was looked for and not there, or is not known. */
export function SymptomRow({ what }: { what: SymptomTag }) {
  const id = useId();
  const text = useText().run;
  const act = useAct();
  const sheet = useSheet();
  const disabled = useIsKept();
  const entries = (sheet.symptoms ?? []).filter((symptom) => symptom.what === what);
  const absent = sheet.symptomsAbsent?.includes(what) === true;
  const standing = entries.length > 0 ? 'there' : absent ? 'not there' : '';
  const choose = (word: string): void => {
    if (word === 'there') act({ type: 'symptom', what, on: true });
    else if (word === 'not there') act({ type: 'symptomAbsent', what, on: true });
    else if (absent) act({ type: 'symptomAbsent', what, on: false });
    else for (const { cylinder } of entries) act({ type: 'symptom', what, cylinder, on: false });
  };
  const local = entries.length > 0 && sheet.engine.cylinders > 1 && (OF_ONE_CYLINDER.includes(what) || entries.some((entry) => entry.cylinder !== undefined));
  return (
    <li className={styles.row} data-standing={standing}>
      <span id={id} className={styles.name}>{text.symptoms[what]}</span>
      <ToggleGroup.Root type="single" aria-labelledby={id} className={styles.pair} value={standing} onValueChange={choose} disabled={disabled}>
        <ToggleGroup.Item value="there" className={styles.option}>{text.there}</ToggleGroup.Item>
        <ToggleGroup.Item value="not there" className={styles.option}>{text.notThere}</ToggleGroup.Item>
      </ToggleGroup.Root>
      {local && <WhichCylinder what={what} label={text.symptoms[what]} />}
    </li>
  );
}
