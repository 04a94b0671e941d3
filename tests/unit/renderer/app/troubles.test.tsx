import { act, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../../../renderer/app/app.tsx';
import { useStore } from '../../../../renderer/state/store.ts';
import { fakeHost } from '../support/fake-host.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const user = userEvent.setup();
const four = { name: 'Bench four', use: 'road', cylinders: 4 } as const;
const go = (hash: string) => act(() => { window.location.hash = hash; window.dispatchEvent(new HashChangeEvent('hashchange')); });
const store = () => useStore.getState();

describe('a page that outlived the program behind it', () => {
  beforeEach(() => {
    freshPage();
    vi.stubGlobal('corenose', undefined);
  });

  it('is told that Corenose was started anew, and the way back, not an error', async () => {
    vi.stubGlobal('fetch', async () => new Response('Open it by its address.', { status: 403 }));
    render(<App />);
    const notice = (await screen.findAllByRole('alert'))[0];
    expect(notice?.textContent).toContain('Corenose was started anew');
    expect(notice?.textContent).toContain('Go on in the window that Corenose opened');
  });

  it('goes on by itself once the program answers again', async () => {
    const host = fakeHost();
    let there = false;
    vi.stubGlobal('fetch', async (address: string, { body }: RequestInit) => {
      if (!there) throw new TypeError('refused');
      return Response.json(await host.bridge[address.replace('/call/', '') as 'app.info'](JSON.parse(body as string) as null));
    });
    render(<App />);
    expect((await screen.findAllByRole('alert'))[0]?.textContent).toContain('The program behind this page does not answer');
    there = true;
    await user.click(screen.getByRole('button', { name: 'Try again' }));
    await screen.findByRole('heading', { name: 'An empty bench' });
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

describe('a library that can only be read', () => {
  it('offers nothing that would change it', async () => {
    const host = freshPage();
    const id = await openReadingOf(four);
    const library = { kind: 'own', folder: '/bench', readOnly: true, trouble: { code: 'in-use', message: 'Another Corenose has /bench open.', backups: [] } } as const;
    const bridge = { ...host.bridge, 'app.info': async () => ({ ok: true as const, value: { version: '0', host: 'loopback' as const, knowledge: 'test', library } }) };
    vi.stubGlobal('corenose', bridge);
    const { engineId } = store().reading!;
    useStore.setState(useStore.getInitialState(), true);
    render(<App />);
    await screen.findByRole('link', { name: /^Bench four/ });
    const changing = /Go on with the draft|Start a reading|Add an engine|Import|Change the engine|Keep this reading|Open it again/;
    expect(screen.queryByRole('button', { name: changing }) ?? screen.queryByRole('link', { name: changing })).toBeNull();
    go(`#/engine/${engineId}`);
    await screen.findByRole('heading', { name: 'Bench four' });
    expect(screen.queryByRole('button', { name: changing }) ?? screen.queryByRole('link', { name: changing })).toBeNull();
    go(`#/reading/${id}/plugs`);
    await screen.findByRole('navigation', { name: 'Stations of the reading' });
    expect(screen.queryByRole('button', { name: changing })).toBeNull();
  });
});
