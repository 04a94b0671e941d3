import sharp from 'sharp';
import { err, type Result } from '../../../shared/result.ts';
import { shutOtherLoaders } from './loaders.ts';
import { measureFile, measurePhoto } from './photo-job.ts';
import type { PhotoError } from './photo-error.ts';
import type { Answer, PhotoTask, Task } from './photo-task.ts';
import { inspectPhoto, showPhoto } from './picture.ts';

/** A process that decodes one photo after another and may die over one. Runs under Node's `fork` and as a utility process of Electron. */

const WARMING = 3;
let asked = 0;

/** Rings as of a plug, drawn: 800 x 600. */
function drawnRings(): Buffer {
  const data = Buffer.alloc(800 * 600 * 3);
  for (let i = 0; i < 800 * 600; i += 1) {
    const [x, y] = [(i % 800) - 400, Math.floor(i / 800) - 300];
    const r = Math.hypot(x, y);
    data.fill(Math.abs(x) < 25 && y < 20 ? 136 : r < 60 ? 119 : r < 120 ? 190 : r < 190 ? 34 : r < 295 ? 153 : 60, 3 * i, 3 * i + 3);
  }
  return data;
}

/** The first picture costs the compilation of everything; a drawn one pays for it before a real one comes, unless that is here already. */
async function warmUp(): Promise<void> {
  const drawn = await sharp(drawnRings(), { raw: { width: 800, height: 600, channels: 3 } }).jpeg().toBuffer();
  for (let round = 0; round < WARMING && asked === 0; round += 1) await measurePhoto(drawn, {});
}

async function done(task: PhotoTask): Promise<Result<unknown, PhotoError>> {
  switch (task.kind) {
    case 'measure': return measureFile(task.file, task.pointedOut);
    case 'inspect': return inspectPhoto(task.file, task.small);
    case 'show': return showPhoto(task.file, task.size, task.to);
  }
}

/** Electron's way to the process that started this one; absent under Node. */
type ParentPort = { readonly on: (event: 'message', listener: (message: { data: Task }) => void) => void; readonly postMessage: (message: unknown) => void };
const electronPort = (process as { readonly parentPort?: ParentPort }).parentPort;
const send = (message: unknown): void => { if (electronPort === undefined) process.send?.(message); else electronPort.postMessage(message); };

/** One after another: the library keeps one record of errors for the whole process. */
let turn: Promise<unknown> = Promise.resolve();
function take({ id, task }: Task): void {
  asked += 1;
  turn = turn.then(() => done(task).catch((): Result<unknown, PhotoError> => err({ code: 'stopped' }))).then((result) => { send({ id, result } satisfies Answer); });
}

shutOtherLoaders();
sharp.cache(false);
sharp.concurrency(1);
if (electronPort === undefined) process.on('message', (message) => { take(message as Task); });
else electronPort.on('message', ({ data }) => { take(data); });
turn = warmUp().finally(() => { send('ready'); });
