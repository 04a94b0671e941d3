import { useState } from 'react';
import type { SwapPart } from '../../../shared/vocabulary/checks.ts';
import { useAct, useSheet } from '../../state/hooks.ts';
import { useText } from '../../text/index.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { SelectField } from '../../ui/select-field.tsx';
import styles from './tried.module.css';

const HOWS = ['swap', 'substitute'] as const;
type How = (typeof HOWS)[number];

type Props = { readonly start: { readonly part?: SwapPart; readonly cylinder?: number; readonly how?: How }; readonly parts: readonly SwapPart[] };

const cylinderWords = (count: number, but?: string): string[] => Array.from({ length: count }, (_, i) => `${i + 1}`).filter((number) => number !== but);

/** Which cylinder, which part, what was done; the answer of the trial writes the line. */
export function TryForm({ start, parts }: Props) {
  const text = useText().checks;
  const act = useAct();
  const { cylinders } = useSheet().engine;
  const alone = cylinders === 1;
  const [cylinder, setCylinder] = useState(start.cylinder === undefined ? (alone ? '1' : undefined) : `${start.cylinder}`);
  const [part, setPart] = useState(start.part);
  const [how, setHow] = useState<How>(alone ? 'substitute' : (start.how ?? 'swap'));
  const [to, setTo] = useState<string>();
  const ready = cylinder !== undefined && part !== undefined && (how === 'substitute' || (to !== undefined && to !== cylinder));

  const write = (moved: boolean): void => {
    if (!ready) return;
    const at = Number(cylinder);
    if (how === 'swap') act({ type: 'swap', cylinder: at, swap: { part, to: Number(to), followed: moved }, on: true });
    else act({ type: 'substitution', cylinder: at, substitution: { part, cured: moved }, on: true });
    setPart(undefined);
    setTo(undefined);
  };

  return (
    <div className={styles.form} role="group" aria-labelledby="parts-tried">
      <SelectField label={text.tried.inCylinder} options={cylinderWords(cylinders)} value={cylinder} onChange={setCylinder} none={text.tried.choose} />
      <Choice label={text.tried.part} options={parts} value={part} onChange={setPart} nameOf={(word) => text.parts[word]} />
      {!alone && (
        <Choice label={text.tried.how} options={HOWS} value={how} always nameOf={(word) => text.tried.hows[word]}
          onChange={(word) => word !== undefined && setHow(word)} />
      )}
      {how === 'swap' && <SelectField label={text.tried.with} options={cylinderWords(cylinders, cylinder)} value={to} onChange={setTo} none={text.tried.choose} />}
      <div className={styles.result} role="group" aria-label={text.tried.result}>
        <span className={styles.label}>{text.tried.result}</span>
        <div className={styles.answers}>
          <Button disabled={!ready} onClick={() => write(true)}>{how === 'swap' ? text.tried.followed : text.tried.cured}</Button>
          <Button disabled={!ready} onClick={() => write(false)}>{how === 'swap' ? text.tried.stayed : text.tried.notCured}</Button>
        </div>
      </div>
      {!ready && <p className={styles.needs}>{text.tried.needs}</p>}
    </div>
  );
}
