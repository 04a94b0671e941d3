import type { IpcMain, WebFrameMain } from 'electron';
import { CHANNELS } from '../../shared/channel-names.ts';
import type { Door } from '../node/door.ts';
import { SCHEME } from './scheme.ts';

/** Whether a frame is our own page, alone at the top of its window. */
export function isOurPage(frame: Pick<WebFrameMain, 'url' | 'parent'> | null): boolean {
  if (frame === null || frame.parent !== null || !URL.canParse(frame.url)) return false;
  const { protocol, host } = new URL(frame.url);
  return protocol === `${SCHEME}:` && host === 'app';
}

export function register(ipc: Pick<IpcMain, 'handle'>, door: Door): void {
  for (const name of CHANNELS) ipc.handle(name, (event, payload: unknown) => door.call(name, payload, isOurPage(event.senderFrame)));
}
