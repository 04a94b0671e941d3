import { fork } from 'node:child_process';
import type { UtilityProcess } from 'electron';

/** A child of Node in the place of Electron's utility process: the same messages, without its sandbox. */
export const utilityProcess = {
  fork: (modulePath: string, args: string[] = [], { execArgv = [] }: { execArgv?: string[] } = {}): UtilityProcess => {
    const child = fork(modulePath, args, { execArgv, stdio: 'ignore' });
    return {
      postMessage: (message: object) => { child.send(message); },
      on: (event: 'message', listener: (message: unknown) => void) => child.on(event, listener),
      once: (event: 'exit', listener: (code: number) => void) => child.once(event, (code) => listener(code ?? 1)),
      kill: () => child.kill(),
    } satisfies { [K in 'postMessage' | 'kill' | 'on' | 'once']: (...given: never[]) => unknown } as unknown as UtilityProcess;
  },
};
