import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { CylindersStation } from '../../../../renderer/features/checks/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const user = userEvent.setup();
const sheet = (): ReadingSheet => useStore.getState().reading!.history.now.sheet;
const cell = (name: string) => screen.getByLabelText<HTMLInputElement>(name);

async function open(engine: Partial<Engine> = {}, field?: string): Promise<void> {
  freshPage();
  const id = await openReadingOf({ name: 'Bench four', use: 'road', cylinders: 4, ...engine });
  if (field !== undefined) window.location.hash = `#/reading/${id}/cylinders/${field}`;
  render(<CylindersStation />);
}

describe('the bench sheet', () => {
  beforeEach(() => open());

  it('is filled without the mouse: arrow keys and Enter go from cylinder to cylinder', async () => {
    await user.click(cell('Compression, dry, cylinder 1'));
    await user.keyboard('1200{Enter}1190{ArrowDown}610{Enter}1180{ArrowRight}{ArrowRight}8');
    expect(sheet().cylinderChecks).toEqual([
      { cylinder: 1, compressionKPa: 1200 }, { cylinder: 2, compressionKPa: 1190 }, { cylinder: 3, compressionKPa: 610 },
      { cylinder: 4, compressionKPa: 1180, leakDownPercent: 8 },
    ]);
  });

  it('takes the keyboard from where the screen starts, past the cautions, to its first cell', async () => {
    document.querySelector<HTMLElement>('[data-start]')?.focus();
    await user.keyboard('{ArrowDown}1200');
    expect(sheet().cylinderChecks).toEqual([{ cylinder: 1, compressionKPa: 1200 }]);
  });

  it('leaves the arrows to the text while one edits inside it', async () => {
    await user.click(cell('Compression, dry, cylinder 1'));
    await user.keyboard('120{ArrowLeft}9');
    expect(sheet().cylinderChecks).toEqual([{ cylinder: 1, compressionKPa: 1290 }]);
  });

  it('walks over choices without changing them', async () => {
    await user.selectOptions(cell('Spark, cylinder 2'), 'Weak');
    cell('Spark, cylinder 2').focus();
    await user.keyboard('{ArrowDown}');
    expect(document.activeElement).toBe(cell('Spark, cylinder 3'));
    expect(sheet().cylinderChecks).toEqual([{ cylinder: 2, spark: 'weak' }]);
  });

  it('says how the weakest cylinder stands against the strongest', async () => {
    await user.type(cell('Compression, dry, cylinder 1'), '1200');
    await user.type(cell('Compression, dry, cylinder 3'), '600');
    expect(screen.getByText(/Lowest \(cylinder 3\) is 50 % of the highest \(cylinder 1\)/)).toBeTruthy();
  });

  it('takes a differential as the trade writes it, and keeps what cannot be taken', async () => {
    await user.type(cell('Differential, held / supply, cylinder 2'), '520/552');
    expect(sheet().cylinderChecks).toEqual([{ cylinder: 2, differential: { heldKPa: 520, supplyKPa: 552 } }]);
    await user.clear(cell('Differential, held / supply, cylinder 2'));
    await user.type(cell('Differential, held / supply, cylinder 2'), '520');
    await user.tab();
    expect(cell('Differential, held / supply, cylinder 2').value).toBe('520');
    expect(screen.getByText(/Write held \/ supply/)).toBeTruthy();
    expect(sheet().cylinderChecks).toBeUndefined();
  });

  it('stands under cautions for ignition voltage, air and fuel (W8, S58, W19)', () => {
    const heads = screen.getAllByRole('columnheader').map((head) => head.textContent).join(' ');
    expect(heads).toMatch(/Ignition voltage can kill/);
    expect(heads).toMatch(/Air can turn the engine/);
    expect(heads).toMatch(/Fuel vapour burns/);
  });
});

describe('parts tried', () => {
  it('a swap is told in one sentence and can be taken away again', async () => {
    await open();
    const form = screen.getByRole('group', { name: 'Parts tried' });
    await user.selectOptions(within(form).getByLabelText('In cylinder'), '3');
    await user.click(within(form).getByRole('radio', { name: 'coil' }));
    await user.selectOptions(within(form).getByLabelText('Swapped with cylinder'), '1');
    await user.click(within(form).getByRole('button', { name: 'Went with the part' }));
    expect(sheet().cylinderChecks).toEqual([{ cylinder: 3, swaps: [{ part: 'coil', to: 1, followed: true }] }]);
    await user.click(screen.getByRole('button', { name: 'Remove: Cylinder 3: coil swapped with cylinder 1. The fault went with the coil.' }));
    expect(sheet().cylinderChecks).toBeUndefined();
  });

  it('offers no swap on a single cylinder, only a known-good part', async () => {
    await open({ cylinders: 1 });
    const form = screen.getByRole('group', { name: 'Parts tried' });
    expect(within(form).queryByLabelText('Swapped with cylinder')).toBeNull();
    await user.click(within(form).getByRole('radio', { name: 'plug' }));
    await user.click(within(form).getByRole('button', { name: 'Was cured' }));
    expect(sheet().cylinderChecks).toEqual([{ cylinder: 1, substitutions: [{ part: 'plug', cured: true }] }]);
  });

  it('starts at the trial that the address names', async () => {
    await open({}, 'swap-coil-3');
    const form = screen.getByRole('group', { name: 'Parts tried' });
    expect(within(form).getByLabelText<HTMLSelectElement>('In cylinder').value).toBe('3');
    expect(within(form).getByRole('radio', { name: 'coil' }).getAttribute('aria-checked')).toBe('true');
  });
});

describe('any engine', () => {
  it.each([1, 18])('of %d cylinders has a row for each', async (cylinders) => {
    await open({ cylinders });
    expect(screen.getAllByRole('rowheader')).toHaveLength(cylinders);
    expect(cell(`Borescope, cylinder ${cylinders}`)).toBeTruthy();
  });

  it('goes to the field that the address names', async () => {
    await open({}, 'leakDownPercent-3');
    await expect.poll(() => document.activeElement).toBe(cell('Leak-down, loss, cylinder 3'));
  });

  it('of an aircraft warns of the live magneto and the propeller', async () => {
    await open({ use: 'aircraft' });
    expect(screen.getByText(/treat every magneto as live/)).toBeTruthy();
  });
});
