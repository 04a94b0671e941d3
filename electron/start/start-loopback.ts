import { runLoopback, type LoopbackRun } from '../loopback/run.ts';
import { findBrowser, openAsWindow, openInDefaultBrowser } from './browsers.ts';
import { PAGE } from './targets.ts';

export type LoopbackStart = { readonly version: string; readonly folder: string; readonly demo: boolean; readonly port: number; readonly open: boolean };

/** Serves the program, shows it where that is wanted and possible, and stays up until Ctrl-C. */
export async function startLoopback({ open, ...options }: LoopbackStart, say: (text: string) => void): Promise<void> {
  let run: LoopbackRun;
  try {
    run = await runLoopback({ ...options, page: PAGE }, (line) => process.stderr.write(`${line}\n`));
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EADDRINUSE')) throw error;
    process.stderr.write(`Port ${options.port} is taken. Choose another with --port, or leave it out.\n`);
    process.exitCode = 1;
    return;
  }
  const library = run.program.library();
  say(`Library: ${library.folder}${library.kind === 'demo' ? ' (demo)' : ''}\n`);
  if (library.trouble !== null) say(`${library.trouble.message}\n`);
  const shown = open ? await show(run) : 'Open';
  say(`${shown} ${run.served.address}\nCtrl-C ends the program.\n`);
  await ended();
  await run.close();
  say('Closed.\n');
}

async function show({ served }: LoopbackRun): Promise<string> {
  const browser = findBrowser();
  if (browser !== null && (await openAsWindow(browser, served.ticketAddress()))) return 'A window was opened. Its address, should it be closed:';
  if (await openInDefaultBrowser(served.ticketAddress())) return 'The browser was asked to open';
  return 'No browser was found. Open';
}

/** Resolves at Ctrl-C or when the system asks to end. The signal may come twice, from the terminal and from npm; the second changes nothing. */
const ended = (): Promise<void> => new Promise((done) => {
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => done());
});
