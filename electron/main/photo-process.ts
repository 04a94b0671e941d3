import { utilityProcess } from 'electron';
import type { PhotoProcess } from '../node/photo/photo-process.ts';
import type { Told } from '../node/photo/photo-task.ts';

/** Starts the process that decodes photos as a utility process: it may die, and the program goes on. */
export function utilityPhotoProcess(file: string): PhotoProcess {
  const child = utilityProcess.fork(file, [], { execArgv: ['--max-old-space-size=512'], stdio: 'ignore', serviceName: 'Corenose photos' });
  return {
    send: (task) => child.postMessage(task),
    onTold: (listener) => { child.on('message', (told: Told) => listener(told)); },
    onEnd: (listener) => { child.once('exit', () => listener()); },
    end: () => { child.kill(); },
  };
}
