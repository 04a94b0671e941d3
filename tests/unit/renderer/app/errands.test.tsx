import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../../../renderer/app/app.tsx';
import { errandsFor, type Errand } from '../../../../renderer/app/errands.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const user = userEvent.setup();
let host: FakeHost;
let id: string;

async function ask(words: string): Promise<void> {
  await user.keyboard('{Control>}k{/Control}');
  await user.type(await screen.findByRole('combobox', { name: 'What is to be done?' }), words);
}

describe('an errand, asked for by its words from the keyboard', () => {
  beforeEach(async () => {
    host = freshPage();
    id = await openReadingOf({ name: 'Bench twelve', use: 'road', cylinders: 12 });
    window.location.hash = `#/reading/${id}/run`;
    render(<App />);
    await screen.findByRole('heading', { name: 'The run' });
  });

  it('takes a plug by its number, and not another that has the figure in it', async () => {
    await ask('plug 1');
    expect(screen.getAllByRole('option').map((option) => option.textContent)).toEqual(['Take plug: cylinder 1']);
    await user.clear(screen.getByRole('combobox', { name: 'What is to be done?' }));
    await user.type(screen.getByRole('combobox', { name: 'What is to be done?' }), 'plug 11{Enter}');
    await waitFor(() => expect(window.location.hash).toBe(`#/reading/${id}/plugs/11`));
    await waitFor(() => expect(useStore.getState().reading?.selected).toBe('11'));
  });

  it('goes to a station, and the sheet is gone', async () => {
    await ask('cylinders{Enter}');
    await waitFor(() => expect(window.location.hash).toBe(`#/reading/${id}/cylinders`));
    expect(screen.queryByRole('dialog')).toBeNull();
  });

  it('is found without a keyboard, from the button in the bar', async () => {
    await user.click(screen.getByRole('button', { name: /^Errands/ }));
    await user.click(await screen.findByRole('option', { name: /^Go to findings/ }));
    await waitFor(() => expect(window.location.hash).toBe(`#/reading/${id}/findings`));
  });

  it('keeps the reading, and then there is nothing left to keep', async () => {
    await ask('keep{Enter}');
    await waitFor(() => expect(host.readings.get(id)?.state).toBe('kept'));
    await ask('keep');
    expect(screen.queryAllByRole('option')).toEqual([]);
    expect(screen.getByText('Nothing here is called that.')).toBeTruthy();
  });

  it('undoes only when there is something to undo', async () => {
    await ask('undo');
    expect(screen.queryAllByRole('option')).toEqual([]);
    await user.keyboard('{Escape}');
    useStore.getState().act({ type: 'overall', plug: '1', value: 'looks normal' });
    await ask('undo{Enter}');
    await waitFor(() => expect(useStore.getState().reading?.history.now.sheet.plugs[0]?.tip?.overall).toBeUndefined());
  });

  it.each([['inch', { units: 'inch' }], ['theme dark', { theme: 'dark' }], ['text large', { textSize: 'large' }]])('%s changes the setting', async (words, expected) => {
    await ask(`${words}{Enter}`);
    await waitFor(() => expect(useStore.getState().settings).toMatchObject(expected));
  });

  it('is chosen with the arrows and left with Escape', async () => {
    await ask('go to{ArrowDown}{ArrowDown}{ArrowUp}');
    const chosen = screen.getAllByRole('option').filter((option) => option.getAttribute('aria-selected') === 'true');
    expect(chosen.map((option) => option.firstChild?.textContent)).toEqual(['Go to the plugs']);
    await user.keyboard('{Escape}');
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
    expect(window.location.hash).toBe(`#/reading/${id}/run`);
  });

  it('hands the reading out as a file', async () => {
    URL.createObjectURL = () => 'blob:sheet';
    URL.revokeObjectURL = () => undefined;
    await ask('export{Enter}');
    await waitFor(() => expect(host.calls).toContain('reading.export'));
  });

  it('stands on the sheet of all keys', async () => {
    await ask('keys{Enter}');
    expect(await within(await screen.findByRole('dialog', { name: 'Keys' })).findByText('Ctrl K')).toBeTruthy();
  });
});

describe('away from a reading', () => {
  it('an engine is opened and its reading is begun', async () => {
    host = freshPage();
    const saved = await useStore.getState().saveEngine(null, { name: 'Bench four', use: 'road', cylinders: 4 });
    render(<App />);
    await screen.findByRole('link', { name: /Bench four/ });
    await ask('start four{Enter}');
    await waitFor(() => expect(window.location.hash).toMatch(/^#\/reading\/.+\/plugs$/));
    expect(saved.ok).toBe(true);
  });

  it('what begins as it was typed comes first', () => {
    const errands: Errand[] = ['All engines', 'Theme: light', 'Light the lamp'].map((words) => ({ words, run: () => undefined }));
    expect(errandsFor('li', errands).map(({ words }) => words)).toEqual(['Light the lamp', 'Theme: light']);
  });
});
