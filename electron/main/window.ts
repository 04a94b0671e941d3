import { join } from 'node:path';
import { app, BrowserWindow, dialog, screen } from 'electron';
import { PAGE_ADDRESS } from './scheme.ts';
import { readWindowState, writeWindowState } from './window-state.ts';

const MOST_RELOADS_MS = 10_000;

/** Opens the one window of the program where it was last time. */
export function openWindow(): BrowserWindow {
  const stateFile = join(app.getPath('userData'), 'window.json');
  const { maximised = false, ...bounds } = readWindowState(stateFile, screen.getAllDisplays());
  const window = new BrowserWindow({
    ...bounds, minWidth: 800, minHeight: 560, show: false, title: 'Corenose', backgroundColor: '#808080',
    webPreferences: { preload: join(app.getAppPath(), 'dist/electron/preload.cjs'), spellcheck: false },
  });
  if (maximised) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('close', () => { try { writeWindowState(stateFile, window.getNormalBounds(), window.isMaximized()); } catch { /* the place of a window is no loss */ } });
  reviveWhenGone(window);
  askBeforeLosing(window);
  void window.loadURL(PAGE_ADDRESS);
  return window;
}

/** A page that died is loaded again; what it saved is still there. One that dies again at once is given up, with words. */
function reviveWhenGone(window: BrowserWindow): void {
  let last = -Infinity;
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason === 'clean-exit') return;
    const again = performance.now() - last < MOST_RELOADS_MS;
    last = performance.now();
    if (!again) return window.reload();
    dialog.showErrorBox('Corenose cannot show its page', `The page stopped twice (${reason}). What was saved is safe. Start the program again.`);
    app.quit();
  });
}

/** The page holds on to its window while something could not be saved. The person decides; without this the window would just not close. */
function askBeforeLosing(window: BrowserWindow): void {
  window.webContents.on('will-prevent-unload', (event) => {
    const answer = dialog.showMessageBoxSync(window, {
      type: 'warning', message: 'The open reading is not saved.', buttons: ['Go back', 'Close all the same'], defaultId: 0, cancelId: 0,
      detail: 'Go back to try again or to save a copy of it as a file. Closing loses what was entered since it was saved last.',
    });
    if (answer === 1) event.preventDefault();
  });
}
