import { useId, useState } from 'react';
import { PENDING_LIMIT } from '../../../shared/channels.ts';
import { cylinderCheck as schema, type CylinderCheck } from '../../../shared/formats/reading-sheet.v1.ts';
import { useAct, useIsKept, usePending } from '../../state/hooks.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatNumber, plainNumber } from '../../text/numbers.ts';
import { QuantityField } from '../../ui/quantity-field.tsx';
import { rangeOf, toShown, unitOf } from '../../ui/quantity.ts';
import { NUMBERS, WORDS, type Column, type NumberColumn, type WordColumn } from './columns.ts';
import { lossPercent, SUPPLY_RANGE, takeDifferential } from './differential.ts';
import styles from './sheet.module.css';

type CellProps<C extends Column> = { readonly column: C; readonly cylinder: number; readonly check: CylinderCheck | undefined };

const pathOf = (cylinder: number, column: Column): string => `cylinderChecks.${cylinder}.${column}`;

function NumberCell({ column, cylinder, check }: CellProps<NumberColumn>) {
  const text = useText().checks;
  const act = useAct();
  const path = pathOf(cylinder, column);
  return (
    <QuantityField label={text.cell(text.columns[column], cylinder)} quantity={NUMBERS[column]} range={rangeOf(schema.shape[column])} value={check?.[column]}
      raw={usePending(path)} disabled={useIsKept()} onEntry={(value, raw) => act({ type: 'check', cylinder, field: column, value }, { path, raw })} />
  );
}

function WordCell({ column, cylinder, check }: CellProps<WordColumn>) {
  const text = useText().checks;
  const act = useAct();
  const names: Readonly<Record<string, string>> = text.words[column];
  return (
    <select className={styles.select} aria-label={text.cell(text.columns[column], cylinder)} value={check?.[column] ?? ''} disabled={useIsKept()} data-empty={check?.[column] === undefined}
      onChange={({ target }) => act({ type: 'check', cylinder, field: column, value: target.value === '' ? undefined : target.value } as Parameters<typeof act>[0])}>
      <option value="" aria-label={text.notMadeName}>{text.notMade}</option>
      {WORDS[column].map((word) => <option key={word} value={word}>{names[word]}</option>)}
    </select>
  );
}

function DifferentialCell({ cylinder, check }: CellProps<'differential'>) {
  const id = useId();
  const text = useText().checks;
  const act = useAct();
  const units = useStore((state) => state.settings.units);
  const unit = unitOf('pressure', units);
  const path = pathOf(cylinder, 'differential');
  const raw = usePending(path);
  const [typing, setTyping] = useState<string | null>(null);
  const value = check?.differential;
  const shownPart = (kPa: number): string => plainNumber(toShown(kPa, unit), unit.decimals);
  const stored = raw ?? (value === undefined ? '' : `${shownPart(value.heldKPa)}/${shownPart(value.supplyKPa)}`);
  const problem = typing === null && takeDifferential(stored, units).kind === 'problem';
  const enter = (next: string): void => {
    setTyping(next);
    const taken = takeDifferential(next, units);
    act({ type: 'check', cylinder, field: 'differential', value: taken.kind === 'value' ? taken.value : undefined }, { path, raw: taken.kind === 'problem' ? next : undefined });
  };
  const [low, high] = SUPPLY_RANGE.map((kPa) => formatNumber(toShown(kPa, unit), unit.decimals)) as [string, string];
  const about = problem ? text.differential.problem(low, high, unit.name) : typing === null ? '' : text.differential.hint(unit.name);
  return (
    <div className={styles.pairField} data-invalid={problem ? '' : undefined}>
      <input aria-label={text.cell(text.columns.differential, cylinder)} aria-describedby={`${id}-unit ${id}-loss ${id}-about`} aria-invalid={problem} value={typing ?? stored}
        disabled={useIsKept()} autoComplete="off" maxLength={PENDING_LIMIT} onChange={({ target }) => enter(target.value)} onBlur={() => setTyping(null)} />
      <span className={styles.side}>
        <span id={`${id}-unit`}>{unit.name}</span>
        <span id={`${id}-loss`}>{value !== undefined && !problem && text.differential.loss(formatNumber(lossPercent(value), 0))}</span>
      </span>
      <p id={`${id}-about`} className={problem ? styles.problem : styles.about}>{about}</p>
    </div>
  );
}

const isWord = (column: Column): column is WordColumn => column in WORDS;

/** One check on one cylinder. */
export function Cell({ column, ...rest }: CellProps<Column>) {
  if (column === 'differential') return <DifferentialCell column={column} {...rest} />;
  return isWord(column) ? <WordCell column={column} {...rest} /> : <NumberCell column={column} {...rest} />;
}
