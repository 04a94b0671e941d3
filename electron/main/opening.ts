import type { App, BrowserWindow } from 'electron';
import { z } from 'zod';
import { FILE_OPENED } from '../../shared/channel-names.ts';
import type { OpenedFiles } from '../node/opened-files.ts';

/** What a second start hands over. Its command line would not do: Chromium changes it, and its paths may start from another folder. */
const handedOver = z.object({ files: z.array(z.string()) });

/**
 * Takes the files that a second start or macOS asks to open while the program runs, or before it is ready, and brings its window to the front.
 * @param shown the window, once there is one; until then files wait, and the page asks for them when it starts
 */
export function listenForFiles(app: Pick<App, 'on'>, opened: OpenedFiles, shown: () => BrowserWindow | undefined): void {
  const open = (files: readonly string[]): void => {
    opened.add(files);
    const window = shown();
    if (window === undefined) return;
    if (window.isMinimized()) window.restore();
    window.focus();
    if (files.length > 0) window.webContents.send(FILE_OPENED);
  };
  app.on('open-file', (event, path) => {
    event.preventDefault();
    open([path]);
  });
  app.on('second-instance', (_event, _argv, _folder, handed) => {
    const { success, data } = handedOver.safeParse(handed);
    open(success ? data.files : []);
  });
}
