import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { openDesktop, skipReason } from './desktop.ts';
import { launchBrowser, libraryIn, startLoopback } from './loopback-host.ts';

/** One person at the program, from its start to the moment it is cut off. */
export type Sitting = {
  readonly page: Page;
  /** Ends the program and its window at once, as a power cut would. */
  readonly cutOff: () => Promise<void>;
};

export type House = {
  readonly name: string;
  /** Why nobody can sit down there on this machine; null when one can. */
  readonly closed: string | null;
  /** @param name of the library, which is the same one at the next sitting */
  readonly sitDown: (scratch: string, name: string, args?: readonly string[]) => Promise<Sitting>;
};

async function atLoopback(scratch: string, name: string, args: readonly string[] = []): Promise<Sitting> {
  const host = await startLoopback(['--library', libraryIn(scratch, name), ...args]);
  const browser = await launchBrowser();
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(host.address);
  await page.waitForURL((url) => url.pathname === '/');
  return { page, cutOff: async () => { await host.kill(); await browser.close(); } };
}

async function atDesktop(scratch: string, name: string, args: readonly string[] = []): Promise<Sitting> {
  const desktop = await openDesktop({ library: libraryIn(scratch, name), profile: join(scratch, name, 'profile'), args });
  return { page: desktop.page, cutOff: desktop.kill };
}

/** Both hosts that show the page in a window. */
export const HOUSES: readonly House[] = [
  { name: 'the loopback host', closed: null, sitDown: atLoopback },
  { name: 'the desktop program', closed: skipReason, sitDown: atDesktop },
];
