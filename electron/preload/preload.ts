import { contextBridge, ipcRenderer } from 'electron';
import { CHANNELS } from '../../shared/channel-names.ts';

if (!process.contextIsolated || !process.sandboxed) throw new Error('The page must be isolated and sandboxed.');

/** One function a channel; nothing of Electron passes through. */
contextBridge.exposeInMainWorld('corenose', Object.fromEntries(CHANNELS.map((name) => [name, (input: unknown): Promise<unknown> => ipcRenderer.invoke(name, input)])));
