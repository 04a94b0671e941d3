import type { IpcMain, IpcMainInvokeEvent } from 'electron';
import type { Frame } from 'playwright-core';
import { meant } from './addresses.ts';

type Handler = (event: IpcMainInvokeEvent, ...args: unknown[]) => unknown;
const handlers = new Map<string, Handler>();

export const ipcMain = {
  handle: (channel: string, handler: Handler) => {
    if (handlers.has(channel)) throw new Error(`a second handler for ${channel}`);
    handlers.set(channel, handler);
  },
} satisfies Partial<IpcMain>;

const frameOf = (frame: Frame): Pick<NonNullable<IpcMainInvokeEvent['senderFrame']>, 'url'> & { parent: object | null } =>
  ({ url: meant(frame.url()), parent: frame.parentFrame() === null ? null : {} });

/** A call of the preload's `ipcRenderer.invoke`. Of an error, as in Electron, only the message passes. */
export async function invoked(frame: Frame, channel: string, args: readonly unknown[]): Promise<unknown> {
  const handler = handlers.get(channel);
  if (handler === undefined) throw new Error(`No handler registered for '${channel}'`);
  return handler({ senderFrame: frameOf(frame) } as unknown as IpcMainInvokeEvent, ...args);
}
