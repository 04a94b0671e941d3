import { describe, expect, it } from 'vitest';
import { accessFor } from '../../../../electron/loopback/access.ts';

const PORT = 4801;
const host = `127.0.0.1:${PORT}`;
const origin = `http://${host}`;

function visited() {
  let at = 0;
  const access = accessFor(PORT, () => at);
  const cookie = access.redeem(access.key)?.split('; ')[0] ?? '';
  return { access, cookie, pass: (ms: number) => { at += ms; } };
}

describe('who may talk to the loopback host', () => {
  it('is our own page, by its cookie, on our own address', () => {
    const { access, cookie } = visited();
    expect(access.admits({ host, cookie }, 'GET')).toBe(true);
    expect(access.admits({ host, cookie, origin }, 'POST')).toBe(true);
    expect(access.admits({ host, cookie: `theme=dark; ${cookie}; other=1` }, 'GET')).toBe(true);
  });

  it.each([
    ['another name for this machine, as rebinding uses', { host: `plugs.example:${PORT}` }],
    ['localhost by name', { host: `localhost:${PORT}` }],
    ['another port', { host: '127.0.0.1:80' }],
    ['no host at all', { host: undefined }],
    ['another origin', { origin: 'https://x.example' }],
    ['an origin that looks alike', { origin: `${origin}.example` }],
    ['an opaque origin', { origin: 'null' }],
    ['no origin on a call', { origin: undefined }],
    ['no cookie', { cookie: undefined }],
    ['a wrong cookie', { cookie: `corenose-${PORT}=guess` }],
    ['an empty cookie', { cookie: `corenose-${PORT}=` }],
    ['the cookie of another port', { cookie: 'corenose-4802=x' }],
  ])('is nobody with %s', (_what, wrong) => {
    const { access, cookie } = visited();
    expect(access.admits({ host, cookie, origin }, 'POST')).toBe(true);
    expect(access.admits({ host, cookie, origin, ...wrong }, 'POST')).toBe(false);
  });

  it('gets a cookie that scripts cannot read and other sites cannot send', () => {
    const { access } = visited();
    expect(access.redeem(access.key)).toMatch(/^corenose-4801=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/$/);
    for (const guess of ['', 'x', access.key.slice(1), `${access.key}x`]) expect(access.redeem(guess)).toBeNull();
  });

  it('opens by a ticket once, and only for a minute', () => {
    const { access, pass } = visited();
    const first = access.ticket();
    expect(access.redeem(first)).not.toBeNull();
    expect(access.redeem(first)).toBeNull();
    const second = access.ticket();
    pass(60_000);
    expect(access.redeem(second)).toBeNull();
    expect(access.redeem(access.key)).not.toBeNull();
  });

  it('never shares a key or a cookie with another run', () => {
    const [a, b] = [visited(), visited()];
    expect(a.access.key).not.toBe(b.access.key);
    expect(b.access.admits({ host, cookie: a.cookie }, 'GET')).toBe(false);
  });
});
