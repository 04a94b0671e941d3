import type { MenuItemConstructorOptions } from 'electron';

/** The ordinary menus of the platform; everything of our own is in the page, where the keyboard reaches it. */
export const menuTemplate = (platform: NodeJS.Platform): MenuItemConstructorOptions[] => [
  ...(platform === 'darwin' ? [{ role: 'appMenu' as const }] : []),
  { role: 'fileMenu' }, { role: 'editMenu' }, { role: 'viewMenu' }, { role: 'windowMenu' },
];
