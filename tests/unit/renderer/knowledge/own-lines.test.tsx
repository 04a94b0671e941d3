import { cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { KnowledgeScreen } from '../../../../renderer/features/knowledge/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { ShopLine } from '../../../../shared/formats/shop-lines.v1.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { openReadingOf, freshPage } from '../support/page.ts';

const user = userEvent.setup();
let host: FakeHost;

beforeEach(async () => {
  host = freshPage();
  await useStore.getState().start();
});
afterEach(cleanup);

const lines = (): readonly ShopLine[] => useStore.getState().shopLines;
const choose = (field: string, option: string): Promise<void> => user.selectOptions(screen.getByRole('combobox', { name: field }), option);

async function addHere(): Promise<void> {
  await user.click(screen.getByRole('button', { name: /^Add a line of your own/ }));
  await choose('What you say of it', 'is likelier or less likely where');
  await choose('Where what is known', 'Noted: stored long');
  await choose('How much', 'likelier');
  await user.type(screen.getByRole('textbox', { name: 'Why' }), 'Barn finds are all like that.');
  await user.type(screen.getByRole('textbox', { name: 'Who says so' }), 'Ann');
  await user.click(screen.getByRole('button', { name: 'Add the line' }));
  await waitFor(() => { expect(screen.queryByRole('dialog')).toBeNull(); });
}

describe('a line of one’s own', () => {
  it('is written where the cause is looked up, and stands there at once, marked as one’s own', async () => {
    render(<KnowledgeScreen shelf="causes" entry="rings-worn" />);
    await addHere();
    expect(lines()).toMatchObject([{ on: true, by: 'Ann', because: 'Barn finds are all like that.', says: { kind: 'moved', of: 'rings-worn', when: { tag: 'stored long' }, how: 'likelier' } }]);
    const row = screen.getByText('Barn finds are all like that.').closest('li')!;
    expect(within(row).getByText('yours · Ann')).toBeTruthy();
    expect(within(row).getByText('Noted: stored long')).toBeTruthy();
  });

  it('is not taken half: each open field says so, and the first has the focus', async () => {
    render(<KnowledgeScreen shelf="yours" />);
    await user.click(screen.getByRole('button', { name: 'Add a line of your own' }));
    await user.click(screen.getByRole('button', { name: 'Add the line' }));
    const open = screen.getAllByText('Choose one.');
    expect(open.length).toBe(2);
    expect(screen.getByText('Say who says so.')).toBeTruthy();
    const first = screen.getByRole('combobox', { name: 'Cause or appearance' });
    await waitFor(() => { expect(document.activeElement).toBe(first); });
    expect(first.getAttribute('aria-describedby')).toBe(open[0]!.id);
    expect(lines()).toEqual([]);
  });

  it('hears what the rules of the knowledge object to, at the field', async () => {
    render(<KnowledgeScreen shelf="looks" entry="oil-wet" />);
    await user.click(screen.getByRole('button', { name: /^Add a line of your own/ }));
    await choose('What you say of it', 'shows on plug or cylinder');
    await choose('What is looked at', 'nose colour');
    await choose('What it shows', 'black');
    await choose('How often', 'usually');
    await user.type(screen.getByRole('textbox', { name: 'Why' }), 'seen');
    await user.type(screen.getByRole('textbox', { name: 'Who says so' }), 'Ann');
    await user.click(screen.getByRole('button', { name: 'Add the line' }));
    const said = (field: HTMLElement): string => document.getElementById(field.getAttribute('aria-describedby') ?? '')?.textContent ?? '';
    expect(said(screen.getByRole('combobox', { name: 'What is looked at' }))).toBe('There is a line that says this already.');
    expect(said(screen.getByRole('combobox', { name: 'How often' }))).toContain('add up to certainty');
    expect(said(screen.getByRole('textbox', { name: 'Why' }))).toContain('a whole sentence');
    await choose('What it shows', 'greenish');
    await choose('How often', 'hardly ever');
    expect(said(screen.getByRole('combobox', { name: 'What is looked at' }))).toBe('');
    expect(host.calls).not.toContain('shop.save');
  });

  it('offers of a condition only what a condition can show', async () => {
    render(<KnowledgeScreen shelf="looks" entry="oil-wet" />);
    await user.click(screen.getByRole('button', { name: /^Add a line of your own/ }));
    const kinds = within(screen.getByRole('combobox', { name: 'What you say of it' })).getAllByRole('option').map((option) => option.textContent);
    expect(kinds).toEqual(['Choose', 'shows on plug or cylinder', 'gives a symptom']);
  });

  it('is switched off and on, and the judgement of the open draft is asked for anew', async () => {
    await openReadingOf({ use: 'road', cylinders: 4 });
    const { unmount } = render(<KnowledgeScreen shelf="causes" entry="rings-worn" />);
    await addHere();
    unmount();
    render(<KnowledgeScreen shelf="yours" />);
    await waitFor(() => { expect(useStore.getState().reading?.diagnosis.kind).toBe('current'); });
    const asked = host.calls.filter((call) => call === 'diagnose').length;
    await user.click(screen.getByRole('button', { name: 'counts' }));
    expect(lines()[0]?.on).toBe(false);
    expect(useStore.getState().taught.active).toEqual([]);
    await waitFor(() => { expect(host.calls.filter((call) => call === 'diagnose').length).toBeGreaterThan(asked); });
    await user.click(screen.getByRole('button', { name: 'off' }));
    expect(useStore.getState().taught.active).toHaveLength(1);
  });

  it('is removed, and undo brings it back', async () => {
    const { unmount } = render(<KnowledgeScreen shelf="causes" entry="rings-worn" />);
    await addHere();
    unmount();
    render(<KnowledgeScreen shelf="yours" />);
    await user.click(screen.getByRole('button', { name: /^Remove: / }));
    expect(lines()).toEqual([]);
    const message = useStore.getState().messages.at(-1);
    expect(message?.text).toBe('The line was removed.');
    message?.undo?.();
    await waitFor(() => { expect(lines()).toHaveLength(1); });
  });

  it('is changed without standing in its own way', async () => {
    const { unmount } = render(<KnowledgeScreen shelf="causes" entry="rings-worn" />);
    await addHere();
    unmount();
    render(<KnowledgeScreen shelf="yours" />);
    await user.click(screen.getByRole('button', { name: /^Change: / }));
    await choose('How much', 'much likelier');
    await user.click(screen.getByRole('button', { name: 'Keep the change' }));
    await waitFor(() => { expect(screen.queryByRole('dialog')).toBeNull(); });
    expect(lines()).toMatchObject([{ says: { how: 'much likelier' } }]);
  });

  it('tells the problems of a file that cannot be taken, line by line', async () => {
    host.failing['shop.import'] = { code: 'bad-request', problems: [{ path: 'lines.0.because', message: 'Say why.' }, { path: 'lines.1.of', message: 'Nothing.' }] };
    render(<KnowledgeScreen shelf="yours" />);
    await user.upload(screen.getByLabelText('Take in a file', { selector: 'input' }), new File(['{}'], 'lines.json', { type: 'application/json' }));
    const dialog = await screen.findByRole('dialog', { name: 'This file could not be taken in' });
    expect(within(dialog).getAllByRole('listitem').map((item) => item.textContent)).toEqual(['lines.0.because: Say why.', 'lines.1.of: Nothing.']);
  });

  it('cannot be added to a library that can only be read', async () => {
    freshPage({ readOnly: true });
    await useStore.getState().start();
    render(<KnowledgeScreen shelf="yours" />);
    expect(screen.queryByRole('button', { name: /^Add a line/ })).toBeNull();
  });
});
