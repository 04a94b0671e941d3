import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, watch, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { App } from 'electron';
import type { BrowserContext } from 'playwright-core';
import { launchChromium } from './chromium.ts';
import { events, preventable } from './events.ts';

const { on, once, emit } = events();
const profile = process.env['CORENOSE_STAND_IN_PROFILE'] ?? '';
mkdirSync(profile, { recursive: true });
/** A packed program finds its arguments right behind the name of its binary. */
const packed = process.env['CORENOSE_STAND_IN_PACKED'] === '1';
if (packed) process.argv.splice(1, 1);

export const state = { sandboxed: false, ready: false, quitting: false, context: null as BrowserContext | null, windows: new Set<{ close: () => void }>() };
export const emitOnApp = emit;

let launched: Promise<void> | undefined;
let holdsLock: DatabaseSync | undefined;

type Call = { readonly argv: string[]; readonly folder: string; readonly handed: unknown };

/** Electron's lock is one a profile and ends with its process; so is SQLite's. A second process leaves how it was started in a file the first one watches. */
function requestSingleInstanceLock(handed?: Record<string, unknown>): boolean {
  const call = join(profile, 'second-instance');
  const lock = new DatabaseSync(join(profile, 'instance.lock'));
  try {
    lock.exec('BEGIN EXCLUSIVE');
  } catch {
    writeFileSync(`${call}.new`, JSON.stringify({ argv: process.argv, folder: process.cwd(), handed } satisfies Call));
    renameSync(`${call}.new`, call);
    return false;
  }
  holdsLock = lock;
  rmSync(call, { force: true });
  watch(profile, (_event, name) => {
    if (name !== 'second-instance' || !existsSync(call)) return;
    const { argv, folder, handed: data } = JSON.parse(readFileSync(call, 'utf8')) as Call;
    rmSync(call);
    emit('second-instance', {}, argv, folder, data);
  });
  return true;
}

function quit(): void {
  state.quitting = true;
  for (const window of [...state.windows]) window.close();
  if (state.windows.size > 0) return;
  const event = preventable();
  emit('will-quit', event);
  if (!event.defaultPrevented) exit(0);
}

function exit(code = 0): void {
  holdsLock?.close();
  void (state.context?.close() ?? Promise.resolve()).finally(() => process.exit(code));
}

export function windowGone(window: { close: () => void }): void {
  state.windows.delete(window);
  if (state.windows.size > 0) return;
  if (state.quitting) quit();
  else emit('window-all-closed');
}

export const app = {
  on, once, quit, exit, requestSingleInstanceLock,
  isPackaged: packed,
  enableSandbox: () => { if (state.ready) throw new Error('enableSandbox() comes before ready'); state.sandboxed = true; },
  whenReady: () => (launched ??= launchChromium(profile).then((context) => { state.context = context; state.ready = true; })),
  getVersion: () => (JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }).version,
  getAppPath: () => process.cwd(),
  getPath: () => profile,
} satisfies Partial<App>;

process.on('message', (message: 'quit' | { readonly openFile: string }) => {
  if (message === 'quit') return quit();
  const event = preventable();
  emit('open-file', event, message.openFile);
  if (!event.defaultPrevented) process.stderr.write(`nobody opened ${message.openFile}\n`);
});
for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, quit);
