import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type BrowserContext } from 'playwright-core';
import { findBrowser } from '../browser.ts';

/** Launches Chromium with a profile of its own and tells the test that started this process where to reach it. */
export async function launchChromium(profile: string): Promise<BrowserContext> {
  const folder = join(profile, 'chromium');
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: findBrowser(), viewport: null, acceptDownloads: true, handleSIGINT: false, handleSIGTERM: false, handleSIGHUP: false,
    args: ['--disable-gpu', '--no-first-run', '--disable-background-networking', '--remote-debugging-port=0', '--window-size=1280,800'],
  });
  const port = readFileSync(join(folder, 'DevToolsActivePort'), 'utf8').split('\n')[0];
  process.send?.({ endpoint: `http://127.0.0.1:${port ?? ''}` });
  return context;
}
