import { join } from 'node:path';
import { app, dialog, ipcMain, Menu, protocol, session, type BrowserWindow } from 'electron';
import { openedFiles, pathNamed } from '../node/opened-files.ts';
import { optionsAmong } from '../node/options.ts';
import type { PhotoProcess } from '../node/photo/photo-process.ts';
import { openProgram, type Program } from '../node/program.ts';
import { libraryFolder } from '../node/storage/place.ts';
import { register } from './ipc.ts';
import { menuTemplate } from './menu.ts';
import { listenForFiles } from './opening.ts';
import { utilityPhotoProcess } from './photo-process.ts';
import { registerScheme, serveScheme } from './scheme.ts';
import { confinePages, refusePermissions } from './security.ts';
import { openWindow } from './window.ts';

const log = (line: string): void => { process.stderr.write(`${line}\n`); };
const { demo, library, files } = optionsAmong(process.argv.slice(app.isPackaged ? 1 : 2));
const asked = files.map(pathNamed);
const opened = openedFiles();
let window: BrowserWindow | undefined;

async function run(): Promise<void> {
  const startPhotoProcess = (): PhotoProcess => utilityPhotoProcess(join(app.getAppPath(), 'dist/electron/photo-worker.cjs'));
  const folder = libraryFolder(library, process.env);
  const seeds = join(app.getAppPath(), 'seeds');
  const program = await openProgram({ host: 'electron', version: app.getVersion(), folder, kind: demo ? 'demo' : 'own', log, seeds, opened, startPhotoProcess });
  closeBeforeQuitting(program);
  refusePermissions(session.defaultSession);
  serveScheme(protocol, join(app.getAppPath(), 'dist/page'), program.photos);
  register(ipcMain, program.door);
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform)));
  window = openWindow();
}

/** Calls that are still being answered are finished, and the library closed, before the process ends. */
function closeBeforeQuitting(program: Program): void {
  let closed = false;
  app.on('will-quit', (event) => {
    if (closed) return;
    event.preventDefault();
    void program.close().finally(() => { closed = true; app.quit(); });
  });
}

app.enableSandbox();
registerScheme(protocol);
confinePages(app);
app.on('window-all-closed', () => app.quit());
listenForFiles(app, opened, () => (window?.isDestroyed() === false ? window : undefined));

if (!app.requestSingleInstanceLock({ files: asked })) {
  log('Corenose is already open; its window was brought to the front.');
  app.quit();
} else {
  opened.add(asked);
  void app.whenReady().then(run).catch((error: unknown) => {
    log(error instanceof Error ? (error.stack ?? error.message) : String(error));
    dialog.showErrorBox('Corenose cannot start', error instanceof Error ? error.message : String(error));
    app.exit(1);
  });
}
