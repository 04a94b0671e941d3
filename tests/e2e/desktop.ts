import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { chromium, _electron, type Page } from 'playwright-core';
import { electronBinary } from '../../electron/start/electron-binary.ts';
import { ROOT } from '../../electron/start/targets.ts';
import { meant, shown } from './electron-stand-in/addresses.ts';

export type DesktopGiven = {
  readonly library: string;
  readonly profile: string;
  readonly args?: readonly string[];
  /** A file that macOS asks to open before the program is ready. On the stand-in only. */
  readonly openWhileStarting?: string;
  /** The program as it was packed, taken out of its archive into this folder; without it, as it was built here. On the stand-in only. */
  readonly packed?: string;
};

/** The program in its window, as a person has it in front of them. */
export type Desktop = {
  readonly page: Page;
  /** Every address the page asked for so far, as the program sees it. */
  readonly requests: readonly string[];
  /** What the program wrote to standard error. */
  readonly stderr: () => string;
  /** Resolves when a second start brought this window to the front. */
  readonly focused: Promise<void>;
  readonly close: () => Promise<void>;
  /** Asks to open a file as macOS does, while the program runs or while it starts. */
  readonly openFile: (path: string) => Promise<void>;
  /** Asks the program to end, which it may refuse. */
  readonly askToClose: () => void;
  /** Ends the program at once, as a power cut would. */
  readonly kill: () => Promise<void>;
};

/** `npm run e2e:desktop` sets this; the same specs then run on the real binary. */
export const onBinary = process.env['CORENOSE_E2E_BINARY'] === '1';
export const skipReason = onBinary ? whyNotOnBinary() : null;

/** Why the real binary cannot be driven on this machine; null when it can. */
export function whyNotOnBinary(): string | null {
  if (electronBinary() === null) return 'skipped: no Electron binary';
  return process.platform !== 'win32' && process.getuid?.() === 0 ? 'skipped: the sandbox needs an ordinary user' : null;
}

/** An address of the program as it must be written in this window. */
export const shownOn = (address: string): string => (onBinary ? address : shown(address));

export const openDesktop = (given: DesktopGiven): Promise<Desktop> => (onBinary ? openOnBinary(given) : openOnStandIn(given));

const REGISTER = new URL('./electron-stand-in/register.ts', import.meta.url).href;

function start({ library, profile, args = [], packed }: DesktopGiven): { process: ChildProcess; stderr: () => string } {
  const root = packed ?? ROOT;
  const started = spawn(process.execPath, ['--import', REGISTER, join(root, 'dist/electron/main.cjs'), `--library=${library}`, ...args], {
    cwd: root, env: { ...process.env, CORENOSE_STAND_IN_PROFILE: profile, CORENOSE_STAND_IN_PACKED: packed === undefined ? '' : '1' }, stdio: ['ignore', 'inherit', 'pipe', 'ipc'],
  });
  let errors = '';
  started.stderr?.on('data', (chunk: Buffer) => { errors += chunk.toString(); });
  return { process: started, stderr: () => errors };
}

/** Starts the program where it is running already. Resolves to what it said and how it ended. */
export async function startAgain(given: DesktopGiven): Promise<{ readonly code: number | null; readonly stderr: string }> {
  const again = start(given);
  const [code] = (await once(again.process, 'exit')) as [number | null];
  return { code, stderr: again.stderr() };
}

async function openOnStandIn(given: DesktopGiven): Promise<Desktop> {
  const { process: running, stderr } = start(given);
  const exited = once(running, 'exit');
  if (given.openWhileStarting !== undefined) running.send({ openFile: given.openWhileStarting });
  let focus = (): void => undefined;
  const focused = new Promise<void>((done) => { focus = done; });
  const endpoint = await new Promise<string>((done, failed) => {
    running.on('message', (message: { endpoint?: string; focused?: true }) => { if (message.endpoint) done(message.endpoint); if (message.focused) focus(); });
    void exited.then(() => failed(new Error(`the program ended before it showed a window:\n${stderr()}`)));
  });
  const browser = await chromium.connectOverCDP(endpoint);
  const context = browser.contexts()[0];
  if (context === undefined) throw new Error('no window');
  const page = context.pages()[0] ?? (await context.waitForEvent('page'));
  const requests: string[] = [];
  page.on('request', (request) => requests.push(meant(request.url())));
  page.on('dialog', () => undefined); // the program answers
  await page.waitForURL(/corenose\.invalid/);
  return {
    page, requests, stderr, focused,
    close: async () => { running.send('quit'); await exited; },
    openFile: async (path) => { running.send({ openFile: path }); },
    askToClose: () => { running.send('quit'); },
    kill: async () => { running.kill('SIGKILL'); await exited; },
  };
}

async function openOnBinary({ library, profile, args = [] }: DesktopGiven): Promise<Desktop> {
  const executablePath = electronBinary();
  if (executablePath === null) throw new Error('no Electron binary');
  const app = await _electron.launch({ executablePath, args: [ROOT, `--user-data-dir=${profile}`, `--library=${library}`, ...args], chromiumSandbox: true });
  const running = app.process();
  let errors = '';
  running.stderr?.on('data', (chunk: Buffer) => { errors += chunk.toString(); });
  const page = await app.firstWindow();
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  return {
    page, requests, stderr: () => errors,
    focused: app.evaluate(({ app: electronApp }) => new Promise<void>((done) => { electronApp.once('second-instance', () => done()); })).catch(() => undefined),
    close: () => app.close(),
    openFile: (path) => app.evaluate(({ app: electronApp }, file) => { electronApp.emit('open-file', { preventDefault: () => undefined }, file); }, path),
    askToClose: () => { void app.evaluate(({ app: electronApp }) => electronApp.quit()).catch(() => undefined); },
    kill: async () => { const exited = once(running, 'exit'); running.kill('SIGKILL'); await exited; },
  };
}
