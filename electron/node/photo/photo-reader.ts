import { availableParallelism } from 'node:os';
import { err, type Result } from '../../../shared/result.ts';
import { LIMITS } from './limits.ts';
import type { PhotoError } from './photo-error.ts';
import type { PhotoProcess } from './photo-process.ts';
import type { PhotoAnswers, PhotoTask, Told } from './photo-task.ts';

type Outcome = Result<unknown, PhotoError>;
type Waiting = { readonly task: PhotoTask; readonly answer: (outcome: Outcome) => void };

/** One process, and what it is doing. */
type Lane = { process: PhotoProcess | undefined; ready: boolean; now: (Waiting & { readonly id: number; readonly alarm: NodeJS.Timeout }) | undefined };

/** A cold start may take this much longer than a photo. */
const STARTING_SECONDS = 30;

export type PhotoReaderGiven = { readonly start: () => PhotoProcess; readonly seconds?: number; readonly lanes?: number };

/**
 * Decodes photos in processes of their own, as many at a time as the machine has cores, at most two. A photo that kills its process, or takes too long,
 * costs that photo only: the next one starts a new process.
 */
export class PhotoReader {
  readonly #seconds: number;
  readonly #start: () => PhotoProcess;
  readonly #lanes: readonly Lane[];
  readonly #queue: Waiting[] = [];
  #next = 0;

  constructor({ start, seconds = LIMITS.seconds, lanes = Math.min(2, availableParallelism()) }: PhotoReaderGiven) {
    this.#start = start;
    this.#seconds = seconds;
    this.#lanes = Array.from({ length: lanes }, () => ({ process: undefined, ready: false, now: undefined }));
  }

  /** Starts the processes before the first photo comes. */
  warm(): void {
    for (const lane of this.#lanes) if (lane.process === undefined) this.#startIn(lane);
  }

  /** Resolves always; an error speaks of this photo alone. */
  do<K extends PhotoTask['kind']>(task: Extract<PhotoTask, { kind: K }>): Promise<Result<PhotoAnswers[K], PhotoError>> {
    return new Promise((resolve) => {
      this.#queue.push({ task, answer: (outcome) => { resolve(outcome as Result<PhotoAnswers[K], PhotoError>); } });
      this.#goOn();
    });
  }

  /** Ends the processes; what was not done is answered as stopped. */
  close(): void {
    for (const waiting of this.#queue.splice(0)) waiting.answer(err({ code: 'stopped' }));
    for (const lane of this.#lanes) {
      lane.process?.end();
      this.#lost(lane, { code: 'stopped' });
    }
  }

  #goOn(): void {
    const ofBest = (lane: Lane): number => (lane.ready ? 0 : lane.process === undefined ? 2 : 1);
    const free = this.#lanes.filter(({ now }) => now === undefined).sort((one, other) => ofBest(one) - ofBest(other));
    for (const lane of free) {
      const waiting = this.#queue.shift();
      if (waiting === undefined) return;
      this.#give(lane, waiting);
    }
  }

  #give(lane: Lane, waiting: Waiting): void {
    const process = lane.process ?? this.#startIn(lane);
    const id = (this.#next += 1);
    const seconds = this.#seconds + (lane.ready ? 0 : STARTING_SECONDS);
    const alarm = setTimeout(() => {
      process.end();
      this.#lost(lane, { code: 'too-slow', seconds: this.#seconds });
    }, 1000 * seconds);
    lane.now = { ...waiting, id, alarm };
    process.send({ id, task: waiting.task });
  }

  #startIn(lane: Lane): PhotoProcess {
    const process = this.#start();
    lane.process = process;
    lane.ready = false;
    process.onTold((told) => { if (lane.process === process) this.#hear(lane, told); });
    process.onEnd(() => { if (lane.process === process) this.#lost(lane, { code: 'stopped' }); });
    return process;
  }

  #hear(lane: Lane, told: Told): void {
    if (told === 'ready') lane.ready = true;
    else if (told.id === lane.now?.id) this.#answer(lane, told.result);
  }

  #lost(lane: Lane, error: PhotoError): void {
    lane.process = undefined;
    lane.ready = false;
    this.#answer(lane, err(error));
  }

  #answer(lane: Lane, outcome: Outcome): void {
    const { now } = lane;
    lane.now = undefined;
    if (now !== undefined) {
      clearTimeout(now.alarm);
      now.answer(outcome);
    }
    this.#goOn();
  }
}
