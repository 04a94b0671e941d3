import { contextBridge, ipcRenderer } from 'electron';
import { CHANNELS, FILE_OPENED } from '../../shared/channel-names.ts';

if (!process.contextIsolated || !process.sandboxed) throw new Error('The page must be isolated and sandboxed.');

/** One function a channel; nothing of Electron passes through. */
contextBridge.exposeInMainWorld('corenose', Object.fromEntries(CHANNELS.map((name) => [name, (input: unknown): Promise<unknown> => ipcRenderer.invoke(name, input)])));

/** The one thing the host says unasked. It carries nothing: the page asks for the file through its channel. */
ipcRenderer.on(FILE_OPENED, () => { (globalThis as unknown as EventTarget).dispatchEvent(new Event(FILE_OPENED)); });
