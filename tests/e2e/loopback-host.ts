import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';
import { ROOT } from '../../electron/start/targets.ts';
import { findBrowser } from './browser.ts';

export type Started = {
  /** The address that was printed, with its key. */
  readonly address: string;
  readonly output: () => string;
  /** Ends the program as Ctrl-C does. Resolves to its exit code. */
  readonly stop: () => Promise<number | null>;
  /** Ends it at once, as a power cut would. */
  readonly kill: () => Promise<void>;
};

const running = new Set<ChildProcess>();
process.once('exit', () => { for (const each of running) each.kill('SIGKILL'); });

type Run = { readonly child: ChildProcess; readonly output: () => string; readonly errors: () => string; readonly ended: Promise<number | null> };

function run(args: readonly string[], env: NodeJS.ProcessEnv): Run {
  const command = ['electron/start/gate.mjs', 'electron/start/start.ts', ...args];
  const child = spawn(process.execPath, command, { cwd: ROOT, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  let complained = '';
  child.stdout.on('data', (chunk: Buffer) => { said += chunk.toString(); });
  child.stderr.on('data', (chunk: Buffer) => { complained += chunk.toString(); });
  running.add(child);
  const ended = once(child, 'close').then(([code]) => { running.delete(child); return code as number | null; });
  return { child, output: () => said, errors: () => complained, ended };
}

/** Runs `npm start -- --host loopback --no-open` with more arguments until it prints its address. */
export async function startLoopback(args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Started> {
  const { child, output, errors, ended } = run(['--host', 'loopback', '--no-open', ...args], env);
  const address = await new Promise<string>((done, failed) => {
    child.stdout?.on('data', () => { const found = /http:\/\/127\.0\.0\.1:\d+\/open\?key=[\w-]+(?=\s)/.exec(output())?.[0]; if (found !== undefined) done(found); });
    void ended.then((code) => failed(new Error(`npm start ended with ${String(code)}:\n${output()}${errors()}`)));
  });
  return {
    address, output,
    stop: () => { child.kill('SIGINT'); return ended; },
    kill: async () => { child.kill('SIGKILL'); await ended; },
  };
}

export type Ended = { readonly code: number | null; readonly stdout: string; readonly stderr: string };

/** Runs `npm start` with arguments that make it end by itself. */
export async function startAndEnd(args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Ended> {
  const { output, errors, ended } = run(args, env);
  return { code: await ended, stdout: output(), stderr: errors() };
}

export const launchBrowser = (): Promise<Browser> => chromium.launch({ executablePath: findBrowser(), args: ['--disable-gpu', '--no-first-run', '--disable-background-networking'] });

export const libraryIn = (scratch: string, name: string): string => join(scratch, name, 'library');
