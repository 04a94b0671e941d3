import { findBrowser as find } from '../../electron/start/browsers.ts';

/**
 * The Chromium-family browser the tests drive.
 * @throws when there is none, with what to install.
 */
export function findBrowser(): string {
  const browser = find();
  if (browser === null) throw new Error('no Chromium-family browser found. Install Chromium, Chrome, Edge or Brave, or name one in CORENOSE_CHROMIUM.');
  return browser;
}
