import { useEffect, useRef, useState } from 'react';
import { driveAnswer, type DriveQuestion } from '../../../core/heat/drive-answer.ts';

export type Driven = ReturnType<typeof driveAnswer>;
type Reply = { readonly number: number; readonly answer: Driven };

/** A worker that answers drives; undefined where the browser has none, and the page computes by itself. */
const newWorker = (): Worker | undefined =>
  (typeof Worker === 'undefined' ? undefined : new Worker(new URL('./drive-worker.ts', import.meta.url), { type: 'module' }));

/**
 * The answer to a drive, computed beside the page; the last answer stays until the next one is there.
 * @param question the same object while nothing changed
 */
export function useDrive(question: DriveQuestion | undefined): { readonly answer: Driven | undefined; readonly computing: boolean } {
  const worker = useRef<Worker | undefined>(undefined);
  const [asked, setAsked] = useState(0);
  const [reply, setReply] = useState<Reply | undefined>(undefined);
  useEffect(() => {
    const made = newWorker();
    worker.current = made;
    made?.addEventListener('message', ({ data }: MessageEvent<Reply>) => setReply(data));
    return () => made?.terminate();
  }, []);
  useEffect(() => {
    if (question === undefined) return;
    setAsked((before) => {
      const number = before + 1;
      if (worker.current === undefined) setReply({ number, answer: driveAnswer(question) });
      else worker.current.postMessage({ number, question });
      return number;
    });
  }, [question]);
  return { answer: question === undefined ? undefined : reply?.answer, computing: question !== undefined && reply?.number !== asked };
}
