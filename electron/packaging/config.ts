import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { flipFuses } from '@electron/fuses';
import type { AfterPackContext, Configuration } from 'electron-builder';
import { SHEET_EXTENSION, SHEET_MEDIA_TYPE } from '../../shared/formats/sheet-file.ts';
import { FUSES } from './fuses.ts';

export type PackageGiven = {
  /** The unpacked Electron of this platform. */
  readonly electron: string;
  /** The folder with the drawn icons. */
  readonly icons: string;
  /** Where the packages are put. */
  readonly output: string;
};

/** How the desktop program is packaged, for electron-builder. Paths inside are from the root of the project. */
export const packageConfig = ({ electron, icons, output }: PackageGiven): Configuration => ({
  appId: 'org.corenose.desktop',
  productName: 'Corenose',
  copyright: 'Copyright (c) 2026 the Corenose contributors',
  directories: { output },
  electronDist: electron,
  electronLanguages: ['en-US'],
  // The bundles, the page and the demo's pictures; node_modules only what package.json has under "dependencies", which the bundles leave out.
  files: ['dist/electron/*.cjs', 'dist/page/**', 'seeds/*/photos/**', 'package.json', 'LICENSE'],
  asar: true,
  // The system loads these from disk.
  asarUnpack: ['node_modules/sharp/**', 'node_modules/@img/**'],
  npmRebuild: false,
  afterExtract: leaveOutSample,
  afterPack: setFuses,
  fileAssociations: [
    { ext: SHEET_EXTENSION, name: 'Corenose reading sheet', description: 'Reading sheet', mimeType: SHEET_MEDIA_TYPE, role: 'Editor', rank: 'Owner' },
  ],
  extraMetadata: { desktopName: 'corenose.desktop' },
  linux: {
    icon: icons, target: ['AppImage', 'deb'], category: 'Utility', maintainer: 'Corenose contributors <contributors@corenose.invalid>',
    syncDesktopName: true, executableArgs: ['%F'],
  },
  mac: { icon: join(icons, 'icon.icns'), target: 'dmg', category: 'public.app-category.utilities' },
  win: { icon: join(icons, 'icon.ico'), target: 'nsis' },
  nsis: { oneClick: false, allowToChangeInstallationDirectory: true },
});

/** Electron brings a program that shows itself where there is no other. */
async function leaveOutSample({ appOutDir, electronPlatformName }: AfterPackContext): Promise<void> {
  const resources = electronPlatformName === 'darwin' ? 'Electron.app/Contents/Resources' : 'resources';
  await rm(join(appOutDir, resources, 'default_app.asar'), { force: true });
}

/** Last before signing: nothing may change the binary afterwards. */
async function setFuses({ appOutDir, electronPlatformName, packager: { appInfo } }: AfterPackContext): Promise<void> {
  const binary = { darwin: `${appInfo.productFilename}.app`, win32: `${appInfo.productFilename}.exe` }[electronPlatformName] ?? appInfo.sanitizedName;
  await flipFuses(join(appOutDir, binary), FUSES);
}
