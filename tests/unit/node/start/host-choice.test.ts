import { describe, expect, it } from 'vitest';
import { chooseHost, hasDisplay } from '../../../../electron/start/host-choice.ts';

const person = { display: true, administrator: false, electron: async () => '/electron' };
const plain = { host: undefined, open: true } as const;

describe('the host', () => {
  it('is Electron where its binary is and a window can be shown', async () => {
    expect(await chooseHost(plain, person)).toEqual({ binary: '/electron', why: 'its binary is here' });
  });

  it.each([
    ['it was asked for', { host: 'loopback', open: true } as const, person],
    ['no window was wanted', { host: undefined, open: false } as const, person],
    ['this machine has no display', plain, { ...person, display: false }],
    ['Electron keeps its sandbox only for an ordinary user, not for root', plain, { ...person, administrator: true }],
    ['the Electron binary is not here and could not be fetched within seconds', plain, { ...person, electron: async () => null }],
  ])('is the loopback host because %s', async (why, options, machine) => {
    expect(await chooseHost(options, machine)).toEqual({ binary: null, why });
  });

  it('is chosen without going to the network where a browser will do', async () => {
    const fetching = { ...person, electron: () => Promise.reject(new Error('asked for Electron')) };
    await chooseHost({ host: 'loopback', open: true }, fetching);
    await chooseHost(plain, { ...fetching, display: false });
  });
});

describe('a display', () => {
  it.each([
    ['darwin', {}, true], ['win32', {}, true], ['linux', {}, false], ['linux', { DISPLAY: ':0' }, true], ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, true], ['linux', { DISPLAY: '' }, false],
  ] as const)('on %s with %j: %s', (platform, env, there) => {
    expect(hasDisplay(platform, env)).toBe(there);
  });
});
