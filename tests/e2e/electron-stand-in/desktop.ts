import type { Dialog, MessageBoxSyncOptions, Menu as ElectronMenu, MenuItemConstructorOptions, Screen } from 'electron';

const workArea = { x: 0, y: 0, width: 1920, height: 1080 };

export const screen = { getAllDisplays: () => [{ workArea }] as Electron.Display[] } satisfies Partial<Screen>;

/** Says what it would show; a question is answered as somebody does who closes it. */
export const dialog = {
  showErrorBox: (title, content) => { process.stderr.write(`dialog: ${title}: ${content}\n`); },
  showMessageBoxSync: (_window: unknown, options?: MessageBoxSyncOptions) => {
    process.stderr.write(`dialog: ${options?.message ?? ''}\n`);
    return options?.cancelId ?? 0;
  },
} satisfies Partial<Dialog>;

export const Menu = {
  buildFromTemplate: (template: MenuItemConstructorOptions[]) => template as unknown as ElectronMenu,
  setApplicationMenu: () => undefined,
} satisfies Partial<typeof ElectronMenu>;
