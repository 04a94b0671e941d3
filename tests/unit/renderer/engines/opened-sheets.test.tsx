import { act, render, screen, waitFor } from '@testing-library/react';
import { describe, expect, it, vi } from 'vitest';
import { App } from '../../../../renderer/app/app.tsx';
import { FILE_OPENED } from '../../../../shared/channel-names.ts';
import type { OpenedFile } from '../../../../shared/channels.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage } from '../support/page.ts';

const sheet = (name: string) => JSON.stringify({ format: 'corenose.reading-sheet', version: 1, engine: { name, use: 'road', cylinders: 2 }, plugs: [{ cylinder: 1 }] });
const wrong = JSON.stringify({ format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 2 }, plugs: [{ cylinder: 3 }] });

/** The page in a desktop window, which was asked to open these files. */
function desktopPage(...files: readonly OpenedFile[]): FakeHost {
  const host = freshPage();
  host.opened.push(...files);
  const info = async () => {
    const reply = await host.bridge['app.info'](null);
    return reply.ok ? { ok: true as const, value: { ...reply.value, host: 'electron' as const } } : reply;
  };
  vi.stubGlobal('corenose', { ...host.bridge, 'app.info': info });
  return host;
}
const told = () => act(() => { window.dispatchEvent(new Event(FILE_OPENED)); });

describe('a sheet that the system asks to open', () => {
  it('is taken in and shown when the page starts', async () => {
    const host = desktopPage({ name: 'a.corenose', text: sheet('First twin') });
    render(<App />);
    await screen.findByText('The sheet was taken in.');
    expect(await screen.findByRole('link', { name: 'First twin' })).toBeTruthy();
    expect(window.location.hash).toBe(`#/reading/${[...host.readings.keys()][0]!}/plugs`);
  });

  it('is taken in when the host says that it came', async () => {
    const host = desktopPage();
    render(<App />);
    await screen.findByRole('link', { name: 'Add your engine' });
    host.opened.push({ name: 'b.corenose', text: sheet('Second twin') });
    told();
    expect(await screen.findByRole('link', { name: 'Second twin' })).toBeTruthy();
  });

  it('is told of with its file when it cannot be taken or read, and the next is taken all the same', async () => {
    const host = desktopPage({ name: 'wrong.corenose', text: wrong }, { name: 'gone.corenose', unread: 'missing' }, { name: 'good.corenose', text: sheet('Good twin') });
    render(<App />);
    const dialog = await screen.findByRole('dialog', { name: 'The sheet could not be taken' });
    await waitFor(() => { expect([...host.engines.values()].map(({ engine }) => engine.name)).toEqual(['Good twin']); });
    expect([...dialog.querySelectorAll('li')].map((line) => line.textContent)).toEqual([
      'wrong.corenose: plugs.0.cylinder: there is no cylinder 3; allowed are 1 to 2', 'gone.corenose: the file is not there.',
    ]);
  });

  it('is said to be unopened when the host cannot give it', async () => {
    const host = desktopPage();
    host.failing['reading.opened'] = { code: 'internal', message: 'The host made a mistake.' };
    render(<App />);
    expect((await screen.findByRole('dialog', { name: 'The sheet could not be taken' })).textContent).toContain('The host made a mistake.');
  });

  it('is not asked for in a browser, where nothing can be opened so', async () => {
    const host = freshPage();
    render(<App />);
    await screen.findByRole('link', { name: 'Add your engine' });
    told();
    expect(host.calls).not.toContain('reading.opened');
  });
});
