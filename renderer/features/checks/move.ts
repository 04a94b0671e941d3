import type { KeyboardEvent } from 'react';

const STEPS: Readonly<Record<string, readonly [row: number, column: number]>> = {
  ArrowUp: [-1, 0], ArrowDown: [1, 0], Enter: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1],
};

/** In a text, left and right leave the cell only from its end. */
function staysInText(target: HTMLElement, column: number): boolean {
  if (!(target instanceof HTMLInputElement) || column === 0) return false;
  const { selectionStart, selectionEnd, value } = target;
  if (selectionStart === 0 && selectionEnd === value.length) return false;
  return column < 0 ? selectionEnd !== 0 : selectionStart !== value.length;
}

/**
 * Arrow keys and Enter go from cell to cell of a table whose cells carry `data-row` and `data-column`; at the edge they stay. From the body
 * of the table, where a screen starts, they go to its first cell.
 */
export function moveBetweenCells(event: KeyboardEvent<HTMLTableElement>): void {
  const target = event.target as HTMLElement;
  const cell = target.closest<HTMLElement>('td[data-row]');
  const step = STEPS[event.key];
  const [down, right] = event.key === 'Enter' && event.shiftKey ? [-1, 0] : (step ?? [0, 0]);
  if (step === undefined || event.altKey || event.ctrlKey || event.metaKey || staysInText(target, right)) return;
  if (cell === null && !target.matches('tbody')) return;
  event.preventDefault();
  const [row, column] = cell === null ? [1, 0] : [Number(cell.dataset.row) + down, Number(cell.dataset.column) + right];
  const next = event.currentTarget.querySelector<HTMLElement>(`td[data-row="${row}"][data-column="${column}"] :is(input, select)`);
  next?.focus();
  if (next instanceof HTMLInputElement) next.select();
}
