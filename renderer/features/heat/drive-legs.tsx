import { useRef } from 'react';
import type { Leg } from '../../../core/thermal/drive-log.ts';
import type { HeatTrial } from '../../state/heat-slice.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { Button, GlyphButton } from '../../ui/button.tsx';
import styles from './heat.module.css';

const COLUMNS = ['seconds', 'rpm', 'load', 'lambda'] as const;
const NEW_LEG = '60, 2000, 50, 1';

const rowsOf = (text: string): readonly (readonly string[])[] => text.split('\n').map((line) => COLUMNS.map((_, i) => (line.split(/[,;\t]/)[i] ?? '').trim()));
const textOf = (rows: readonly (readonly string[])[]): string => rows.map((cells) => cells.join(', ')).join('\n');

/** The legs of a drive in a small table: a row each, a value that cannot be read stays as it was typed. */
export function LegsEditor({ text, onChange }: { text: string; onChange: (text: string) => void }) {
  const { heat: { drive } } = useText();
  const rows = rowsOf(text);
  const set = (row: number, column: number, cell: string): void =>
    onChange(textOf(rows.map((cells, i) => (i === row ? cells.map((old, j) => (j === column ? cell.replace(/[,;\t\n]/g, '.') : old)) : cells))));
  const remove = (row: number): void => onChange(textOf(rows.filter((_, i) => i !== row)));
  return (
    <div className={styles.legs}>
      <table aria-label={drive.legs}>
        <thead><tr><td />{COLUMNS.map((column) => <th key={column} scope="col">{drive.columns[column]}</th>)}<td /></tr></thead>
        <tbody>
          {rows.map((cells, i) => (
            <tr key={i}>
              <th scope="row">{i + 1}</th>
              {cells.map((cell, j) => {
                const column = COLUMNS[j] ?? 'seconds';
                return (
                  <td key={column}>
                    <input className={styles.cell} inputMode="decimal" autoComplete="off" maxLength={12} value={cell}
                      aria-label={drive.cell(drive.columns[column], i + 1)} onChange={(event) => set(i, j, event.target.value)} />
                  </td>
                );
              })}
              <td>
                {rows.length > 1 && <GlyphButton name={drive.removeLeg(i + 1)} onClick={() => remove(i)}>×</GlyphButton>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div><Button look="quiet" onClick={() => onChange(`${text}\n${NEW_LEG}`)}>{drive.addLeg}</Button></div>
    </div>
  );
}

const LARGEST = 4_000_000; // bytes

type ImportProps = { readonly log: HeatTrial['log']; readonly legs: readonly Leg[]; readonly onLog: (log: HeatTrial['log']) => void };

/** Takes a log from a file; what it holds, or what is wrong with it, is told beside. */
export function ImportLog({ log, legs, onLog }: ImportProps) {
  const { heat } = useText();
  const file = useRef<HTMLInputElement>(null);
  const tell = useStore((state) => state.tell);
  const take = async (chosen: File | undefined): Promise<void> => {
    if (chosen === undefined) return;
    if (chosen.size > LARGEST) tell({ text: heat.drive.tooLarge, tone: 'problem' });
    else onLog({ name: chosen.name, text: await chosen.text() });
  };
  return (
    <div className={styles.import}>
      <div className={styles.tools}>
        <Button onClick={() => file.current?.click()}>{heat.drive.import}</Button>
        {log !== undefined && <Button look="quiet" onClick={() => onLog(undefined)}>{heat.drive.dropLog}</Button>}
      </div>
      <input ref={file} type="file" accept=".csv,text/csv,text/plain" hidden aria-label={heat.drive.import}
        onChange={(event) => { void take(event.target.files?.[0]); event.target.value = ''; }} />
      <p className={styles.soft}>
        {log === undefined || legs.length === 0 ? heat.drive.importHelp
          : heat.drive.imported(log.name, heat.times(legs.reduce((sum, { seconds }) => sum + seconds, 0)), legs.length)}
      </p>
    </div>
  );
}
