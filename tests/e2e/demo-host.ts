import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { launchBrowser, libraryIn, startLoopback, type Started } from './loopback-host.ts';
import { scratchFolder } from './scratch.ts';

/** A browser and the demo library behind the loopback host, there for all tests of a file. */
export function demoHost(name: string): { readonly browser: Browser; readonly address: string } {
  const scratch = scratchFolder();
  let browser: Browser;
  let host: Started;
  beforeAll(async () => {
    browser = await launchBrowser();
    host = await startLoopback(['--demo', '--library', libraryIn(scratch, name)]);
  });
  afterAll(async () => {
    await host.stop();
    await browser.close();
  });
  return { get browser() { return browser; }, get address() { return host.address; } };
}
