/**
 * Stands in for the `electron` module where its binary cannot be had: the real bundled main and preload run on it unchanged, in a real Chromium.
 * It offers what they use and no more; a call of anything else fails. It cannot show the sandbox, fuses or the real scheme: that takes the binary.
 */
export { app } from './app.ts';
export { BrowserWindow } from './browser-window.ts';
export { ipcMain } from './ipc-main.ts';
export { protocol } from './protocol.ts';
export { session } from './session.ts';
export { dialog, Menu, screen } from './desktop.ts';
export { utilityProcess } from './utility-process.ts';
