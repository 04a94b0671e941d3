import type { StartOptions } from '../node/options.ts';

/** What is known of the machine when a host is chosen. `electron` is asked only when nothing else decides, as it may go to the network. */
export type Circumstances = {
  readonly display: boolean;
  readonly administrator: boolean;
  readonly electron: () => Promise<string | null>;
};

export type HostChoice = { readonly binary: string | null; readonly why: string };

/** Which host to take, and why in words that fit behind "because". A null binary means the loopback host. */
export async function chooseHost({ host, open }: Pick<StartOptions, 'host' | 'open'>, { display, administrator, electron }: Circumstances): Promise<HostChoice> {
  if (host === 'loopback') return { binary: null, why: 'it was asked for' };
  if (!open) return { binary: null, why: 'no window was wanted' };
  if (!display) return { binary: null, why: 'this machine has no display' };
  if (administrator) return { binary: null, why: 'Electron keeps its sandbox only for an ordinary user, not for root' };
  const binary = await electron();
  return binary === null ? { binary, why: 'the Electron binary is not here and could not be fetched within seconds' } : { binary, why: host === 'electron' ? 'it was asked for' : 'its binary is here' };
}

/** Whether windows can be shown: always on macOS and Windows, elsewhere where a display server is named. */
export const hasDisplay = (platform: NodeJS.Platform, env: NodeJS.ProcessEnv): boolean =>
  platform === 'darwin' || platform === 'win32' || Boolean(env['DISPLAY']) || Boolean(env['WAYLAND_DISPLAY']);
