import { Worker } from 'node:worker_threads';
import { err, type Result } from '../../../shared/result.ts';
import { LIMITS } from './limits.ts';
import type { MeasuredPhoto, PointedOut } from './photo-job.ts';
import type { PhotoError } from './photo-error.ts';
import type { Answer, Task } from './worker.ts';

type Outcome = Result<MeasuredPhoto, PhotoError>;

/** Measures photos one after another in a thread of its own, warmed when it starts. A photo that kills the thread, or takes too long, costs that photo only. */
export class PhotoReader {
  readonly #seconds: number;
  readonly #file: URL;
  #worker: Promise<Worker> | undefined;
  #last: Promise<unknown> = Promise.resolve();
  #next = 0;

  constructor({ seconds = LIMITS.seconds, file = new URL('./worker.ts', import.meta.url) }: { readonly seconds?: number; readonly file?: URL } = {}) {
    this.#seconds = seconds;
    this.#file = file;
    this.#worker = this.#started();
    this.#worker.catch(() => undefined);
  }

  /** Resolves always; an error speaks of this photo alone. The bytes are copied. */
  measure(bytes: Uint8Array, pointedOut: PointedOut = {}): Promise<Outcome> {
    const outcome = this.#last.then(() => this.#measureNow(bytes, pointedOut));
    this.#last = outcome;
    return outcome;
  }

  /** Ends the thread; what is still being measured is answered as stopped. */
  async close(): Promise<void> {
    const worker = await this.#worker?.catch(() => undefined);
    this.#worker = undefined;
    await worker?.terminate();
  }

  #started(): Promise<Worker> {
    const worker = new Worker(this.#file, { stdout: true, stderr: true, resourceLimits: { maxOldGenerationSizeMb: 512 } });
    const started = new Promise<Worker>((resolve, reject) => {
      worker.once('message', () => {
        worker.unref();
        resolve(worker);
      });
      worker.on('error', reject);
    });
    worker.once('exit', () => { if (this.#worker === started) this.#worker = undefined; });
    return started;
  }

  async #measureNow(bytes: Uint8Array, pointedOut: PointedOut): Promise<Outcome> {
    this.#worker ??= this.#started();
    const worker = await this.#worker.catch(() => undefined);
    if (worker === undefined) return this.#lost('stopped');
    this.#next += 1;
    const task: Task = { id: this.#next, bytes, pointedOut };
    const outcome = await this.#answerOf(worker, task);
    if (outcome !== undefined) return outcome;
    await worker.terminate();
    return this.#lost('too-slow');
  }

  #lost(code: 'stopped' | 'too-slow'): Outcome {
    this.#worker = undefined;
    return err(code === 'stopped' ? { code } : { code, seconds: this.#seconds });
  }

  /** Nothing when the time is up. */
  #answerOf(worker: Worker, task: Task): Promise<Outcome | undefined> {
    return new Promise((resolve) => {
      const end = (outcome: Outcome | undefined): void => {
        clearTimeout(alarm);
        worker.off('message', answer).off('error', died).off('exit', died);
        resolve(outcome);
      };
      const answer = ({ id, result }: Answer): void => { if (id === task.id) end(result); };
      const died = (): void => { end(this.#lost('stopped')); };
      const alarm = setTimeout(() => { end(undefined); }, this.#seconds * 1000);
      worker.on('message', answer).on('error', died).on('exit', died);
      worker.postMessage(task);
    });
  }
}
