import { fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { SincePanel } from '../../../../renderer/features/followup/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { freshPage, openReadingOf } from '../support/page.ts';
import { currentSheet, engineWithReading } from './two-readings.ts';

const cures = async (): Promise<HTMLElement> => {
  await screen.findByRole('checkbox', { name: /valve guide/i });
  return screen.getByRole('group', { name: 'Put right since' });
};

describe('what was put right since the reading before', () => {
  it('is asked where there is one, by its date', async () => {
    await engineWithReading();
    render(<SincePanel />);
    expect(screen.getByRole('heading', { name: 'Since the reading of 14 February 2026' })).toBeTruthy();
    const guides = within(await cures()).getByRole('checkbox', { name: /valve guide.*cylinder 3/i });
    expect(guides).toHaveProperty('checked', false);
  });

  it('is not asked of an engine without an earlier reading', async () => {
    freshPage();
    await openReadingOf({ use: 'road', cylinders: 4 });
    const { container } = render(<SincePanel />);
    expect(container.textContent).toBe('');
  });

  it('is ticked and unticked by keyboard, and noted on the sheet', async () => {
    await engineWithReading();
    render(<SincePanel />);
    const guides = within(await cures()).getByRole('checkbox', { name: /valve guide/i });
    guides.focus();
    await userEvent.keyboard(' ');
    await waitFor(() => { expect(currentSheet().since?.done).toEqual([{ cause: 'guides-worn', cylinders: [3] }]); });
    await waitFor(() => { expect(screen.getByRole('checkbox', { name: /valve guide/i })).toHaveProperty('checked', true); });
    screen.getByRole('checkbox', { name: /valve guide/i }).focus();
    await userEvent.keyboard(' ');
    await waitFor(() => { expect(currentSheet().since?.done).toBeUndefined(); });
  });

  it('may be something that reading did not call for, at one cylinder', async () => {
    await engineWithReading();
    render(<SincePanel />);
    await cures();
    await userEvent.click(screen.getByRole('button', { name: 'Something else was put right' }));
    expect(screen.getByRole('button', { name: 'Add' })).toHaveProperty('disabled', true);
    fireEvent.change(screen.getByRole('combobox', { name: 'Which fault' }), { target: { value: 'rings-worn' } });
    fireEvent.change(screen.getByRole('combobox', { name: 'On' }), { target: { value: '3' } });
    await userEvent.click(screen.getByRole('button', { name: 'Add' }));
    expect(currentSheet().since?.done).toEqual([{ cause: 'rings-worn', cylinders: [3] }]);
    expect(await screen.findByRole('checkbox', { name: /rings.*cylinder 3/i })).toHaveProperty('checked', true);
  });

  it('includes the plugs themselves', async () => {
    await engineWithReading();
    render(<SincePanel />);
    await cures();
    await userEvent.click(screen.getByRole('button', { name: 'Renewed' }));
    expect(currentSheet().conditions?.tags).toEqual(['plugs new']);
  });

  it('can be taken against another reading or against none, and undone', async () => {
    const { before } = await engineWithReading();
    render(<SincePanel />);
    const choice = await screen.findByRole('combobox', { name: 'Compare with the reading of' });
    expect(choice).toHaveProperty('value', before);
    fireEvent.change(choice, { target: { value: '' } });
    await waitFor(() => { expect(currentSheet().since).toBeUndefined(); });
    fireEvent.change(screen.getByRole('combobox', { name: 'Compare with the reading of' }), { target: { value: before } });
    await waitFor(() => { expect(currentSheet().since?.reading.date).toBe('2026-02-14'); });
    useStore.getState().undo();
    expect(currentSheet().since).toBeUndefined();
  });

  it('tells why when the other reading cannot be fetched', async () => {
    const { host, before } = await engineWithReading();
    host.failing['reading.since'] = { code: 'not-found', what: 'reading' };
    render(<SincePanel />);
    fireEvent.change(await screen.findByRole('combobox', { name: 'Compare with the reading of' }), { target: { value: '' } });
    fireEvent.change(screen.getByRole('combobox', { name: 'Compare with the reading of' }), { target: { value: before } });
    await waitFor(() => { expect(useStore.getState().messages.some(({ tone }) => tone === 'problem')).toBe(true); });
    expect(currentSheet().since).toBeUndefined();
  });

  it('can be read but not changed on a kept reading', async () => {
    const { id } = await engineWithReading({}, undefined);
    await useStore.getState().keepReading();
    render(<SincePanel />);
    expect(useStore.getState().reading?.state).toBe('kept');
    expect(screen.queryByRole('combobox')).toBeNull();
    expect(screen.queryByRole('button', { name: 'Something else was put right' })).toBeNull();
    expect(id).toBeTruthy();
  });

  it('tells what had been tried before without change', async () => {
    await engineWithReading({ since: { reading: { plugs: [{ cylinder: 3 }] }, tried: [{ cause: 'premix-oily' }, { cause: 'a cure of the house' }] } });
    render(<SincePanel />);
    expect(screen.getByText(/had changed nothing: Too much oil in the two-stroke mixture, a cure of the house/)).toBeTruthy();
  });
});
