import { CHANNELS, type Channel } from '../../shared/channel-names.ts';
import type { Bridge, Input, Reply } from '../../shared/channels.ts';
import { err } from '../../shared/result.ts';
import { noteHost } from './host-presence.ts';

declare global {
  interface Window {
    readonly corenose?: Bridge;
  }
}

/** Browsers let a request outlive its page only up to 64 KiB in all; the rest is sent as an ordinary request. */
const OUTLIVES_THE_PAGE = 30_000;

/** The host that answers does not know this page's cookie. */
const FORBIDDEN = 403;

const isReply = (value: unknown): value is { ok: boolean } => typeof value === 'object' && value !== null && 'ok' in value && typeof value.ok === 'boolean';

async function post<C extends Channel>(name: C, input: Input<C>): Promise<Reply<C>> {
  const body = JSON.stringify(input);
  try {
    const response = await fetch(`/call/${name}`, {
      method: 'POST', headers: { 'content-type': 'application/json' }, body, keepalive: body.length < OUTLIVES_THE_PAGE,
    });
    noteHost(response.status === FORBIDDEN ? 'started anew' : 'here');
    if (response.status === FORBIDDEN) return err({ code: 'forbidden' });
    const reply: unknown = await response.json();
    if (isReply(reply)) return reply as Reply<C>;
    return err({ code: 'internal', message: `The program answered in a way this page does not understand (${response.status}).` });
  } catch {
    noteHost('gone');
    return err({ code: 'internal', message: 'The program behind this page does not answer. Is it still running?' });
  }
}

async function call<C extends Channel>(name: C, input: Input<C>): Promise<Reply<C>> {
  const host = window.corenose;
  if (host === undefined) return post(name, input);
  try {
    return await host[name](input);
  } catch (cause) {
    return err({ code: 'internal', message: cause instanceof Error ? cause.message : String(cause) });
  }
}

/** Every call to the host, by channel name. The preload's functions where there are any, else requests to the loopback host. Never throws. */
export const bridge: Bridge = Object.fromEntries(CHANNELS.map((name) => [name, (input: never) => call(name, input)])) as unknown as Bridge;
