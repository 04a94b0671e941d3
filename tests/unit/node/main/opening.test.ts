import { describe, expect, it } from 'vitest';
import { listenForFiles } from '../../../../electron/main/opening.ts';
import { openedFiles } from '../../../../electron/node/opened-files.ts';

type Listener = (...args: unknown[]) => void;

/** The events of the app, and a window that notes what was done to it. */
function desk(isMinimized = false) {
  const listeners = new Map<string, Listener>();
  const done: string[] = [];
  const window = {
    isMinimized: () => isMinimized, restore: () => done.push('restore'), focus: () => done.push('focus'),
    webContents: { send: (channel: string) => done.push(channel) },
  };
  const opened = openedFiles();
  let shown = false;
  const app = { on: (name: string, listener: Listener) => { listeners.set(name, listener); } };
  listenForFiles(app as never, opened, () => (shown ? (window as never) : undefined));
  return { done, opened, show: () => { shown = true; }, emit: (name: string, ...args: unknown[]) => listeners.get(name)?.(...args) };
}

describe('a file opened from outside', () => {
  it('waits while there is no window yet', async () => {
    const { emit, opened, done } = desk();
    emit('open-file', { preventDefault: () => undefined }, '/srv/gone.corenose');
    expect(done).toEqual([]);
    expect(await opened.take()).toEqual({ name: 'gone.corenose', unread: 'missing' });
  });

  it('is claimed from macOS, and told to the window, which comes to the front', () => {
    const { emit, done, show } = desk(true);
    let claimed = false;
    show();
    emit('open-file', { preventDefault: () => { claimed = true; } }, '/srv/gone.corenose');
    expect(claimed).toBe(true);
    expect(done).toEqual(['restore', 'focus', 'corenose-file-opened']);
  });

  it('is taken from what a second start hands over, never from its command line', async () => {
    const { emit, opened, done, show } = desk();
    show();
    emit('second-instance', {}, ['corenose', '/srv/other.corenose'], '/srv', { files: ['/srv/gone.corenose'] });
    expect(done).toEqual(['focus', 'corenose-file-opened']);
    expect([await opened.take(), await opened.take()]).toEqual([{ name: 'gone.corenose', unread: 'missing' }, null]);
  });

  it.each([undefined, null, 'x', { files: 'x' }, { files: [7] }])('is none when a second start hands over %j; the window comes to the front', async (handed) => {
    const { emit, opened, done, show } = desk();
    show();
    emit('second-instance', {}, [], '/', handed);
    expect(done).toEqual(['focus']);
    expect(await opened.take()).toBeNull();
  });
});
