import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'microsoft-edge-stable', 'microsoft-edge', 'brave-browser', 'vivaldi-stable'];
const MAC_APPS = ['Chromium', 'Google Chrome', 'Microsoft Edge', 'Brave Browser', 'Vivaldi'];
const WINDOWS_APPS = ['Chromium\\Application\\chrome.exe', 'Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe', 'BraveSoftware\\Brave-Browser\\Application\\brave.exe'];

export type Machine = { readonly platform: NodeJS.Platform; readonly env: Readonly<Record<string, string | undefined>> };

/** Where a Chromium-family browser may lie on this machine, the likeliest first. */
export function browserPlaces({ platform, env }: Machine): string[] {
  const named = env['CORENOSE_CHROMIUM'];
  const chosen = named === undefined || named === '' ? [] : [named];
  if (platform === 'darwin') {
    const folders = ['/Applications', join(env['HOME'] ?? '', 'Applications')];
    return [...chosen, ...folders.flatMap((folder) => MAC_APPS.map((app) => `${folder}/${app}.app/Contents/MacOS/${app}`))];
  }
  if (platform === 'win32') {
    const folders = [env['LOCALAPPDATA'], env['PROGRAMFILES'], env['PROGRAMFILES(X86)']].filter((folder) => folder !== undefined);
    return [...chosen, ...folders.flatMap((folder) => WINDOWS_APPS.map((app) => `${folder}\\${app}`))];
  }
  const folders = (env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  return [...chosen, ...NAMES.flatMap((name) => folders.map((folder) => join(folder, name)))];
}

/** The first Chromium-family browser found, or null. `CORENOSE_CHROMIUM` names one outright. */
export const findBrowser = (machine: Machine = process): string | null => browserPlaces(machine).find((path) => existsSync(path)) ?? null;

/** Starts a program that lives on its own. Resolves to whether it could be started. */
function launch(command: string, args: readonly string[]): Promise<boolean> {
  return new Promise((done) => {
    const started = spawn(command, args, { stdio: 'ignore', detached: true });
    started.once('error', () => done(false));
    started.once('spawn', () => { started.unref(); done(true); });
  });
}

export const openAsWindow = (browser: string, address: string): Promise<boolean> => launch(browser, [`--app=${address}`]);

export function openInDefaultBrowser(address: string, platform: NodeJS.Platform = process.platform): Promise<boolean> {
  if (platform === 'darwin') return launch('open', [address]);
  if (platform === 'win32') return launch('rundll32', ['url.dll,FileProtocolHandler', address]);
  return launch('xdg-open', [address]);
}
