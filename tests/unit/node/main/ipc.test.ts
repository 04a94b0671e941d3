import { describe, expect, it } from 'vitest';
import { isOurPage, register } from '../../../../electron/main/ipc.ts';
import { openDoor } from '../../../../electron/node/door.ts';
import { CHANNELS } from '../../../../shared/channel-names.ts';
import { testProgram } from '../../../fixtures/test-program.ts';

const frame = (url: string, parent: object | null = null) => ({ url, parent: parent as never });

describe('our own page', () => {
  it.each(['corenose://app/index.html', 'corenose://app/', 'corenose://app/index.html#/tray'])('is known by scheme and host: %s', (url) => {
    expect(isOurPage(frame(url))).toBe(true);
  });

  it.each([
    'corenose://application/index.html', 'corenose://app.example/index.html', 'corenose://app@example/', 'corenose://example/app', 'corenose:app', 'corenose:///app/',
    'https://app/index.html', 'https://x.example/?next=corenose://app', 'https://corenose/app', 'file:///corenose/app', 'data:text/html,corenose://app',
    'about:blank', 'about:srcdoc', 'blob:corenose://app/1', 'chrome-error://chromewebdata/', 'javascript:0', '', 'not an address',
  ])('is not %s', (url) => {
    expect(isOurPage(frame(url))).toBe(false);
  });

  it('is not a frame inside it, nor a frame that is gone', () => {
    expect(isOurPage(frame('corenose://app/index.html', frame('corenose://app/index.html')))).toBe(false);
    expect(isOurPage(null)).toBe(false);
  });
});

describe('the calls of the desktop page', () => {
  it('are registered one by one, and a stranger gets an answer that says no', async () => {
    const { handlers } = await testProgram();
    const registered = new Map<string, (event: never, payload: unknown) => unknown>();
    register({ handle: (name, handler) => { registered.set(name, handler as never); } }, openDoor(handlers, () => undefined));
    expect([...registered.keys()]).toEqual([...CHANNELS]);
    const call = (url: string): unknown => registered.get('engine.list')?.({ senderFrame: frame(url) } as never, null);
    expect(await call('corenose://app/index.html')).toEqual({ ok: true, value: [] });
    expect(await call('https://x.example/')).toEqual({ ok: false, error: { code: 'forbidden' } });
  });
});
