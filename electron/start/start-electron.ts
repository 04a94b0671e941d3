import { spawn } from 'node:child_process';
import { ROOT } from './targets.ts';

/** An Electron that ends with an error this soon never showed a window. */
const STARTS_WITHIN_MS = 10_000;

/**
 * Runs the desktop host until it is closed.
 * @returns null when it ran, else the reason why it would not start, in a few words.
 */
export function startElectron(binary: string, { folder, demo }: { readonly folder: string; readonly demo: boolean }): Promise<string | null> {
  return new Promise((done) => {
    const begun = performance.now();
    let lastWords = '';
    const running = spawn(binary, [ROOT, `--library=${folder}`, ...(demo ? ['--demo'] : [])], { stdio: ['ignore', 'inherit', 'pipe'] });
    running.stderr.on('data', (chunk: Buffer) => {
      process.stderr.write(chunk);
      lastWords = chunk.toString('utf8').trim().split('\n').at(-1)?.slice(0, 160) ?? lastWords;
    });
    const pass = (signal: NodeJS.Signals): void => { if (signal !== 'SIGINT' || !process.stdin.isTTY) running.kill(signal); }; // a terminal sends Ctrl-C to both
    process.on('SIGINT', pass).on('SIGTERM', pass);
    running.once('error', (error) => done(error.message));
    running.once('exit', (code, signal) => {
      process.off('SIGINT', pass).off('SIGTERM', pass);
      const fell = code !== 0 && signal !== 'SIGINT' && signal !== 'SIGTERM' && performance.now() - begun < STARTS_WITHIN_MS;
      done(fell ? lastWords || `it ended with ${code ?? signal}` : null);
    });
  });
}
