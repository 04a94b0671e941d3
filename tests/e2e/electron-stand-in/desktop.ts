import type { Dialog, Menu as ElectronMenu, MenuItemConstructorOptions, Screen } from 'electron';

const workArea = { x: 0, y: 0, width: 1920, height: 1080 };

export const screen = { getAllDisplays: () => [{ workArea }] as Electron.Display[] } satisfies Partial<Screen>;

export const dialog = { showErrorBox: (title, content) => { process.stderr.write(`dialog: ${title}: ${content}\n`); } } satisfies Partial<Dialog>;

export const Menu = {
  buildFromTemplate: (template: MenuItemConstructorOptions[]) => template as unknown as ElectronMenu,
  setApplicationMenu: () => undefined,
} satisfies Partial<typeof ElectronMenu>;
