import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findBrowser } from '../../electron/start/browsers.ts';

const WHAT_TO_INSTALL = `No Chromium-family browser was found, and the browser tests need one. Any of these will do:
  Debian, Ubuntu   sudo apt-get install chromium
  Fedora           sudo dnf install chromium
  macOS            brew install --cask chromium
  Windows          the Edge that comes with it, or another Chromium-family browser
or name one that is already here: CORENOSE_CHROMIUM=/path/to/browser
`;

const mayInstall = (): boolean => process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/etc/debian_version');

function install(): void {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [['update'], ['install', '--yes', '--no-install-recommends', 'chromium']]) {
    spawnSync('apt-get', args, { env, stdio: ['ignore', 'inherit', 'inherit'] });
  }
}

/**
 * The browser to test in: one that is installed, else Debian's chromium where this user may install it.
 * @returns its path, or null after saying what to install.
 */
export function chromium(): string | null {
  const here = findBrowser();
  if (here !== null) return here;
  if (mayInstall()) {
    process.stdout.write('No Chromium-family browser here; installing Debian\'s chromium.\n');
    install();
    const installed = findBrowser();
    if (installed !== null) return installed;
  }
  process.stderr.write(WHAT_TO_INSTALL);
  return null;
}
