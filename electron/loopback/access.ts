import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';

const TICKET_LIFE_MS = 60_000;

/**
 * Who may talk to the loopback host. The address holds a key that is exchanged for a cookie. The key that is printed holds as long as the program runs;
 * a ticket, made for a browser that is started by command line where other people of this machine could read it, opens once and soon ends.
 */
export type Access = {
  readonly key: string;
  readonly ticket: () => string;
  /** The value for a `set-cookie` header when the key or ticket is right. */
  readonly redeem: (key: string) => string | null;
  /** Whether the request comes from our own page, by its cookie, `Host` and `Origin`. */
  readonly admits: (headers: IncomingHttpHeaders, method: string | undefined) => boolean;
  readonly isOurHost: (headers: IncomingHttpHeaders) => boolean;
};

const secret = (): string => randomBytes(32).toString('base64url');
const same = (a: string, b: string): boolean => a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b));

export function accessFor(port: number, now: () => number = Date.now): Access {
  const key = secret();
  const session = secret();
  const cookie = `corenose-${port}`;
  const tickets = new Map<string, number>();
  const isOurHost = (headers: IncomingHttpHeaders): boolean => headers.host === `127.0.0.1:${port}`;

  const isKnown = (given: string): boolean => {
    const ends = tickets.get(given);
    tickets.delete(given);
    return same(given, key) || (ends !== undefined && ends > now());
  };
  const hasCookie = (header: string | undefined): boolean =>
    (header ?? '').split('; ').some((pair) => pair.startsWith(`${cookie}=`) && same(pair.slice(cookie.length + 1), session));
  const isOurOrigin = ({ origin }: IncomingHttpHeaders, method: string | undefined): boolean =>
    origin === undefined ? method === 'GET' : origin === `http://127.0.0.1:${port}`;

  return {
    key,
    ticket: () => {
      const ticket = secret();
      tickets.set(ticket, now() + TICKET_LIFE_MS);
      return ticket;
    },
    redeem: (given) => (isKnown(given) ? `${cookie}=${session}; HttpOnly; SameSite=Strict; Path=/` : null),
    admits: (headers, method) => isOurHost(headers) && isOurOrigin(headers, method) && hasCookie(headers.cookie),
    isOurHost,
  };
}
