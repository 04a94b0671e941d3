import type { AppError } from '../../shared/channels.ts';
import { sendPhoto } from '../app/photo-door.ts';
import type { SliceCreator } from './store.ts';

/** A file on its way into a reading. `known`: the reading had it already. `error`: why it was refused, or could not be measured. */
export type Incoming = {
  readonly key: number;
  readonly readingId: string;
  readonly name: string;
  readonly state: 'waiting' | 'coming' | 'in' | 'known' | 'stopped' | 'refused';
  readonly error?: AppError;
};

export type IncomingSlice = {
  readonly incoming: readonly Incoming[];
  /** Takes files into a reading, two at a time. Ends when all are in, refused or stopped. */
  readonly bringIn: (readingId: string, files: readonly File[]) => Promise<void>;
  readonly stopIncoming: () => void;
  /** Puts away what is told of files that have come to an end. */
  readonly clearIncoming: () => void;
};

/** As many as the host measures at the same time. */
const LANES = 2;
const isUnderway = ({ state }: Incoming): boolean => state === 'waiting' || state === 'coming';

export const createIncomingSlice: SliceCreator<IncomingSlice> = (set, get) => {
  let lastKey = 0;
  let stop = new AbortController();
  let lanes = 0;
  const queue: { readonly key: number; readonly readingId: string; readonly file: File }[] = [];
  const patch = (key: number, change: Partial<Incoming>): void =>
    set(({ incoming }) => ({ incoming: incoming.map((one) => (one.key === key ? { ...one, ...change } : one)) }));

  const lane = async (): Promise<void> => {
    lanes += 1;
    for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
      const { key, readingId, file } = next;
      patch(key, { state: 'coming' });
      const reply = await sendPhoto(readingId, file, stop.signal);
      if (reply.ok) {
        const error = await get().welcomePhoto(reply.value.photo);
        patch(key, { state: reply.value.known ? 'known' : 'in', ...(error !== null && { error }) });
      } else patch(key, reply.error.stopped ? { state: 'stopped' } : { state: 'refused', error: reply.error.error });
    }
    lanes -= 1;
  };
  return {
    incoming: [],
    bringIn: async (readingId, files) => {
      if (stop.signal.aborted) stop = new AbortController();
      const added = files.map((file) => ({ key: (lastKey += 1), readingId, file }));
      set(({ incoming }) => ({
        incoming: [...incoming.filter(isUnderway), ...added.map(({ key, file }): Incoming => ({ key, readingId, name: file.name, state: 'waiting' }))],
      }));
      queue.push(...added);
      await Promise.all(Array.from({ length: LANES - lanes }, lane));
    },
    stopIncoming: () => {
      for (const { key } of queue.splice(0)) patch(key, { state: 'stopped' });
      stop.abort();
    },
    clearIncoming: () => set(({ incoming }) => ({ incoming: incoming.filter(isUnderway) })),
  };
};
