import { fork } from 'node:child_process';
import type { Task, Told } from './photo-task.ts';

/** A process of its own that decodes photos, however its host starts it. */
export type PhotoProcess = {
  readonly send: (task: Task) => void;
  readonly onTold: (listener: (told: Told) => void) => void;
  /** Called once, when the process has ended for whatever reason. */
  readonly onEnd: (listener: () => void) => void;
  readonly end: () => void;
};

/** Starts the process under Node. It ends with this one, and does not keep this one alive. */
export function forkedPhotoProcess(file: URL): PhotoProcess {
  const child = fork(file, { execArgv: ['--max-old-space-size=512'], stdio: 'ignore' });
  child.unref();
  child.channel?.unref();
  return {
    send: (task) => { child.send(task, () => undefined); },
    onTold: (listener) => { child.on('message', (told) => { listener(told as Told); }); },
    onEnd: (listener) => {
      child.once('exit', listener);
      child.once('error', listener);
    },
    end: () => { child.kill('SIGKILL'); },
  };
}
