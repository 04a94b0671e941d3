import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { EngineEditor, EngineShelf } from '../../../../renderer/features/engines/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage } from '../support/page.ts';

let host: FakeHost;
const user = userEvent.setup();
const saved = () => [...host.engines.values()].map((record) => record.engine);
const press = (name: string | RegExp, role = 'button') => user.click(screen.getByRole(role, { name }));
beforeEach(() => { host = freshPage(); });

async function writeFour(): Promise<void> {
  await user.type(screen.getByRole('textbox', { name: 'Name' }), 'Bench four');
  await press('road', 'radio');
  await user.type(screen.getByRole('textbox', { name: 'Cylinders' }), '4');
}

describe('the engine editor', () => {
  it('saves an engine of which only use and cylinders are known', async () => {
    render(<EngineEditor id={null} />);
    await writeFour();
    await press('Save the engine');
    expect(saved()).toEqual([{ name: 'Bench four', use: 'road', cylinders: 4 }]);
    expect(window.location.hash).toMatch(/^#\/engine\/[0-9a-f-]+$/);
  });

  it('says at the field what is missing, and keeps what was typed', async () => {
    render(<EngineEditor id={null} />);
    await user.type(screen.getByRole('textbox', { name: 'Cylinders' }), '40');
    await press('Save the engine');
    expect(saved()).toEqual([]);
    const cylinders = screen.getByRole('textbox', { name: 'Cylinders' });
    expect(cylinders).toHaveProperty('value', '40');
    expect(cylinders.getAttribute('aria-invalid')).toBe('true');
    expect(within(screen.getByRole('alert')).getByText(/Used for: missing; allowed are road/)).toBeTruthy();
  });

  it('makes carburettor pairs by choosing cylinders in the drawing', async () => {
    render(<EngineEditor id={null} />);
    await writeFour();
    await press(/^Mixture/);
    await press('carburettor', 'radio');
    await press('Cylinder 1, in no group');
    await press('Cylinder 2, in no group');
    await press('Add a group');
    await press('Cylinder 3, in no group');
    await press('Cylinder 4, in no group');
    expect(screen.getByRole('button', { name: 'Cylinder 4, in Group 2' })).toBeTruthy();
    await press('Save the engine');
    expect(saved()[0]?.mixture).toEqual({ kind: 'carburettor', groups: [[1, 2], [3, 4]] });
  });

  it('takes a firing order as it is usually written', async () => {
    render(<EngineEditor id={null} />);
    await writeFour();
    await press(/^Layout and order/);
    await user.type(screen.getByRole('textbox', { name: 'Firing order' }), '1-3-4-2');
    await press('Save the engine');
    expect(saved()[0]?.firingOrder).toEqual([1, 3, 4, 2]);
  });

  it('wires the plugs of a twin-plug engine to two magnetos', async () => {
    render(<EngineEditor id={null} />);
    await press('aircraft', 'radio');
    await user.type(screen.getByRole('textbox', { name: 'Cylinders' }), '2');
    await press(/^Layout and order/);
    await press('two', 'radio');
    await press(/^Ignition/);
    await press('magneto', 'radio');
    for (const name of ['1 upper', '2 lower']) await press(`${name}, in no group`);
    await press('Add a group');
    for (const name of ['1 lower', '2 upper']) await press(`${name}, in no group`);
    await press('Save the engine');
    expect(saved()[0]?.ignition?.sets).toEqual([
      { name: 'left', plugs: [{ cylinder: 1, position: 'upper' }, { cylinder: 2, position: 'lower' }] },
      { name: 'right', plugs: [{ cylinder: 1, position: 'lower' }, { cylinder: 2, position: 'upper' }] },
    ]);
  });

  it('still has what was typed after another screen was looked at', async () => {
    const { unmount } = render(<EngineEditor id={null} />);
    await writeFour();
    unmount();
    const shelf = render(<EngineShelf />);
    expect(screen.getByText('Bench four is not saved yet.')).toBeTruthy();
    shelf.unmount();
    render(<EngineEditor id={null} />);
    expect(screen.getByRole('textbox', { name: 'Name' })).toHaveProperty('value', 'Bench four');
  });

  it('says when what is typed could not be kept in the library, and only for as long as that is so', async () => {
    render(<EngineEditor id={null} />);
    host.failing['engine-draft.keep'] = { code: 'read-only', message: 'Only for reading.' };
    await user.type(screen.getByRole('textbox', { name: 'Name' }), 'B');
    expect((await screen.findByRole('alert')).textContent).toContain('Only for reading.');
    delete host.failing['engine-draft.keep'];
    await user.type(screen.getByRole('textbox', { name: 'Name' }), 'e');
    await waitFor(() => expect(screen.queryByRole('alert')).toBeNull());
  });

  it('shows a gap in inches to who works in inches, and stores millimetres', async () => {
    await useStore.getState().changeSettings({ units: 'inch' });
    render(<EngineEditor id={null} />);
    await writeFour();
    await press(/^The plug it asks for/);
    await user.type(screen.getByRole('textbox', { name: 'Gap' }), '0,028');
    await press('Save the engine');
    expect(saved()[0]?.fitment).toEqual({ gapMm: 0.7112 });
  });
});

describe('an engine of which something cannot be taken', () => {
  it('opens the part where it is, and names the place', async () => {
    render(<EngineEditor id={null} />);
    await writeFour();
    await press(/^The plug it asks for/);
    await user.type(screen.getByRole('textbox', { name: 'Heat value' }), '7');
    await press(/^The plug it asks for/);
    expect(screen.queryByRole('textbox', { name: 'Heat value' })).toBeNull();
    await press('Save the engine');
    expect(screen.getByRole('textbox', { name: 'Heat value' })).toHaveProperty('value', '7');
    expect(screen.getByText('Give the scale and the value, or neither.')).toBeTruthy();
    await user.type(screen.getByRole('textbox', { name: 'Heat scale' }), 'Kelvane');
    await press('Save the engine');
    expect(saved()[0]?.fitment).toEqual({ heat: { scale: 'Kelvane', value: '7' } });
  });
});
