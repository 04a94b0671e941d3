import { act, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../../../renderer/app/app.tsx';
import { useStore } from '../../../../renderer/state/store.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const user = userEvent.setup();
const four = { name: 'Bench four', use: 'road', cylinders: 4 } as const;
const go = (hash: string) => act(() => { window.location.hash = hash; window.dispatchEvent(new HashChangeEvent('hashchange')); });
const store = () => useStore.getState();

describe('an empty library', () => {
  beforeEach(() => { freshPage(); });

  it('says what to do, and offers three ways to begin', async () => {
    render(<App />);
    expect(await screen.findByRole('link', { name: 'Add your engine' })).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Open the demo workshop' })).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Import a sheet' })).toBeTruthy();
  });

  it('tells of a file it cannot take, place by place', async () => {
    render(<App />);
    const file = new File([JSON.stringify({ format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 2 }, plugs: [{ cylinder: 3 }] })], 'sheet.json');
    await user.upload(await screen.findByLabelText('Import a sheet', { selector: 'input' }), file);
    expect(await screen.findByText('plugs.0.cylinder: there is no cylinder 3; allowed are 1 to 2')).toBeTruthy();
  });

  it('shows all keys on ?', async () => {
    render(<App />);
    await screen.findByRole('link', { name: 'Add your engine' });
    await user.keyboard('?');
    expect(await screen.findByRole('dialog', { name: 'Keys' })).toBeTruthy();
  });
});

describe('a library in trouble', () => {
  it('that another program has open says so for as long as it is', async () => {
    freshPage({ readOnly: true, trouble: { code: 'in-use', message: 'Another Corenose has /bench open.', backups: [] } });
    render(<App />);
    const alert = await screen.findByRole('alert');
    expect(alert.textContent).toContain('Another Corenose has /bench open.');
  });

  it('is told once, however often it is met', async () => {
    const host = freshPage();
    await openReadingOf(four);
    go(`#/engine/${store().reading!.engineId}`);
    render(<App />);
    host.failing['reading.start'] = { code: 'disk-full', message: 'The disk is full: free some space.' };
    await user.click(await screen.findByRole('button', { name: 'Go on with the draft' }));
    await user.click(screen.getByRole('button', { name: 'Go on with the draft' }));
    expect(await screen.findAllByText('The disk is full: free some space.')).toHaveLength(1);
  });

  it('that is damaged offers its backups, and asks before it goes back to one', async () => {
    const host = freshPage({ trouble: { code: 'damaged', message: 'The file does not hold together.', backups: ['2026-03-01', '2026-02-01'] } });
    render(<App />);
    await user.click(await screen.findByRole('button', { name: 'Go back to 2026-02-01' }));
    expect(host.calls).not.toContain('library.recover');
    await user.click(screen.getAllByRole('button', { name: 'Go back to 2026-02-01' }).at(-1)!);
    expect(await screen.findByText('The library was set back to the backup.')).toBeTruthy();
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

describe('the log of an engine', () => {
  beforeEach(() => { freshPage(); });

  it('takes a reading off and puts it back on undo', async () => {
    await openReadingOf(four);
    const { engineId } = store().reading!;
    go(`#/engine/${engineId}`);
    render(<App />);
    await user.click(await screen.findByRole('button', { name: 'More for 14 March 2026' }));
    await user.click(await screen.findByRole('menuitem', { name: 'Remove' }));
    expect(await screen.findByText(/No reading of this engine yet/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(await screen.findByRole('link', { name: /14 March 2026/ })).toBeTruthy();
  });

  it('takes an engine off the shelf and puts it back on undo', async () => {
    await openReadingOf(four);
    go(`#/engine/${store().reading!.engineId}`);
    render(<App />);
    await user.click(await screen.findByRole('button', { name: 'More for Bench four' }));
    await user.click(await screen.findByRole('menuitem', { name: 'Take the engine off the shelf' }));
    await user.click(await screen.findByRole('button', { name: 'Undo' }));
    expect(await screen.findByRole('link', { name: /^Bench four/ })).toBeTruthy();
  });
});

describe('a reading on the bench', () => {
  let id: string;
  beforeEach(async () => {
    freshPage();
    id = await openReadingOf(four);
    go(`#/reading/${id}/run`);
  });

  it('goes from station to station by Alt and a number', async () => {
    render(<App />);
    await screen.findByRole('navigation', { name: 'Stations of the reading' });
    await user.keyboard('{Alt>}4{/Alt}');
    expect(window.location.hash).toBe(`#/reading/${id}/cylinders`);
  });

  it('has the focus again after the sheet of keys and after a message, so that typing goes on', async () => {
    go(`#/reading/${id}/plugs`);
    render(<App />);
    await screen.findByRole('listbox', { name: /Tray/ });
    await user.keyboard('?');
    await screen.findByRole('dialog', { name: 'Keys' });
    await user.keyboard('{Escape}oc');
    await user.click(screen.getByRole('button', { name: 'Close' }));
    await user.keyboard(']{Delete}');
    expect(store().reading!.history.now.sheet.plugs.map(({ tip }) => tip?.overall)).toEqual(['looks normal', 'looks normal', 'looks normal', 'looks normal']);
    await user.keyboard('{ArrowUp}{Delete}');
    expect(store().reading!.history.now.sheet.plugs.map(({ tip }) => tip?.overall)).toEqual(['looks normal', undefined, 'looks normal', 'looks normal']);
  });

  it('undoes by Ctrl Z, but leaves Ctrl Z to a field that is typed in', async () => {
    render(<App />);
    await screen.findByRole('navigation', { name: 'Stations of the reading' });
    act(() => store().act({ type: 'tip', plug: '1', facet: 'deposit', value: 'dry soot' }));
    await user.click(screen.getByRole('button', { name: /14 March 2026/ }));
    await user.type(await screen.findByRole('textbox', { name: 'What this reading is called' }), 'a{Control>}z{/Control}');
    expect(store().reading!.history.now.sheet.plugs[0]?.tip).toBeDefined();
    await user.keyboard('{Escape}');
    act(() => (document.activeElement as HTMLElement).blur());
    await user.keyboard('{Control>}z{/Control}{Control>}z{/Control}');
    expect(store().reading!.history.now.sheet.plugs[0]?.tip).toBeUndefined();
  });

  it('says where it undid something when that cannot be seen', async () => {
    render(<App />);
    await user.click(await screen.findByRole('radio', { name: 'Petrol' }));
    act(() => store().act({ type: 'tip', plug: '1', facet: 'deposit', value: 'dry soot' }));
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(await screen.findByText('Undone at another station: The plugs.')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(store().reading!.history.now.sheet.conditions).toBeUndefined();
    expect(store().messages).toHaveLength(1);
    await user.keyboard('{Control>}yy{/Control}');
    expect(await screen.findByText('Done again at another station: The plugs.')).toBeTruthy();
  });

  it('is called open on the shelf while it is a draft, and counted once it is kept', async () => {
    go('#/');
    render(<App />);
    expect((await screen.findByRole('link', { name: /^Bench four/ })).textContent).toContain('a draft is open');
    await user.click(screen.getByRole('button', { name: 'Go on with the draft of Bench four' }));
    await user.click(await screen.findByRole('button', { name: 'Keep this reading' }));
    await user.click(await screen.findByRole('link', { name: 'All engines' }));
    expect((await screen.findByText(/1 reading/)).textContent).not.toContain('draft');
    expect(screen.getByRole('button', { name: 'Start a reading of Bench four' })).toBeTruthy();
  });

  it('is kept, closed, and found in the log', async () => {
    render(<App />);
    await user.click(await screen.findByRole('button', { name: 'Keep this reading' }));
    expect(await screen.findByText('Kept with its findings: 14 March 2026.')).toBeTruthy();
    expect((await screen.findByRole('link', { name: /14 March 2026/ })).getAttribute('href')).toBe(`#/reading/${id}/findings`);
  });

  it('is kept by one key, also from a field that is typed in', async () => {
    render(<App />);
    await user.type(await screen.findByLabelText('Distance on these plugs'), '1200');
    await user.keyboard('{Control>}{Enter}{/Control}');
    expect(await screen.findByText('Kept with its findings: 14 March 2026.')).toBeTruthy();
    expect(store().reading).toMatchObject({ state: 'kept', history: { now: { sheet: { conditions: { distanceKm: 1200 } } } } });
  });

  it('says when it is kept with a number that could not be taken', async () => {
    render(<App />);
    await user.type(await screen.findByLabelText('Distance on these plugs'), '12oo');
    await user.click(screen.getByRole('button', { name: 'Keep this reading' }));
    expect(await screen.findByText(/Kept with its findings: .* One number in it could not be taken/)).toBeTruthy();
  });

  it('says when it is not saved, and offers a copy as a file', async () => {
    const host = freshPage();
    id = await openReadingOf(four);
    go(`#/reading/${id}/run`);
    host.failing['reading.save'] = { code: 'disk-full', message: 'The disk is full: free some space.' };
    render(<App />);
    await screen.findByRole('navigation', { name: 'Stations of the reading' });
    act(() => store().act({ type: 'tag', tag: 'old leads', on: true }));
    expect((await screen.findByRole('alert')).textContent).toContain('The disk is full: free some space.');
    expect(screen.getByRole('button', { name: 'Save a copy as a file' })).toBeTruthy();
    delete host.failing['reading.save'];
    await user.click(screen.getByRole('button', { name: 'Try again' }));
    expect(await screen.findByText('Saved')).toBeTruthy();
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

it('a reading that is not saved is told on every screen, and the window asks before it closes', async () => {
  const host = freshPage();
  const id = await openReadingOf(four);
  host.failing['reading.save'] = { code: 'disk-full', message: 'The disk is full: free some space.' };
  go('#/settings');
  render(<App />);
  await screen.findByRole('heading', { name: 'Settings' });
  await act(() => store().openReading(id));
  act(() => store().act({ type: 'tag', tag: 'old leads', on: true }));
  expect((await screen.findByRole('alert')).textContent).toContain('This reading is not saved');
  const closing = new Event('beforeunload', { cancelable: true });
  window.dispatchEvent(closing);
  expect(closing.defaultPrevented).toBe(true);
});

it('the window is named after its screen', async () => {
  freshPage();
  const id = await openReadingOf(four);
  go(`#/reading/${id}/cylinders`);
  render(<App />);
  await screen.findByRole('navigation', { name: 'Stations of the reading' });
  expect(document.title).toBe('The cylinders · Bench four · Corenose');
});

it('an engine that was being written down when the page went away is offered again, in its own library only', async () => {
  freshPage();
  await store().start();
  store().setEngineDraft('new', { fields: { name: 'Half written', cylinders: 3, fitment: { heat: { scale: 'Kelvane' } as never } }, raw: { 'fitment.reachMm': '19mm' } });
  await store().draftsSettled();
  useStore.setState(useStore.getInitialState(), true);
  render(<App />);
  expect(await screen.findByText('Half written is not saved yet.')).toBeTruthy();
  await act(async () => { await store().openLibrary('demo'); });
  expect(screen.queryByText('Half written is not saved yet.')).toBeNull();
  await act(async () => { await store().openLibrary('own'); });
  await user.click(screen.getByRole('link', { name: 'Go on' }));
  expect(await screen.findByDisplayValue('Half written')).toBeTruthy();
});

it('the keys of the plugs work at once when a reading is opened from its log', async () => {
  freshPage();
  await openReadingOf(four);
  const { id, engineId } = store().reading!;
  useStore.setState({ reading: null });
  go(`#/engine/${engineId}`);
  render(<App />);
  await user.click(await screen.findByRole('link', { name: /14 March 2026/ }));
  await screen.findByText('Nose colour');
  await user.keyboard('o');
  expect(store().reading).toMatchObject({ id, history: { now: { sheet: { plugs: [{ tip: { overall: 'looks normal' } }, {}, {}, {}] } } } });
});

it('the keys of the plugs work at once when their station is gone to', async () => {
  freshPage();
  const id = await openReadingOf(four);
  go(`#/reading/${id}/run`);
  render(<App />);
  await screen.findByRole('navigation', { name: 'Stations of the reading' });
  await user.keyboard('{Alt>}2{/Alt}');
  await screen.findByText('Nose colour');
  await user.keyboard('o');
  expect(store().reading!.history.now.sheet.plugs[0]?.tip).toEqual({ overall: 'looks normal' });
});
