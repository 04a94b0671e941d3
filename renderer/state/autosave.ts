import { bridge } from '../app/bridge.ts';
import type { OpenReading } from './reading-slice.ts';

type Current = () => OpenReading | null;
type Patch = (change: (open: OpenReading) => Partial<OpenReading>) => void;

const RETRY_AFTER_MS = 5000;

const isSaved = (open: OpenReading | null): boolean => open === null || open.version === open.savedVersion;
const inConflict = (open: OpenReading): boolean => open.save.kind === 'not saved' && open.save.error.code === 'conflict';

/** Sends what is on the screen once. True when the host has it. */
async function saveOnce(open: OpenReading, current: Current, patch: Patch): Promise<boolean> {
  const carried = open.version;
  patch(() => ({ save: { kind: 'saving' } }));
  const reply = await bridge['reading.save']({ id: open.id, revision: open.revision, ...open.history.now });
  if (current()?.id !== open.id) return reply.ok;
  if (reply.ok) patch(({ version }) => ({ revision: reply.value.revision, savedVersion: carried, save: { kind: version === carried ? 'saved' : 'saving' } }));
  else patch(() => ({ save: { kind: 'not saved', error: reply.error } }));
  return reply.ok;
}

/**
 * Saves every change at once, one save in flight at a time; what changes meanwhile goes with the next one. A save that failed is tried again
 * after five seconds and with the next change; a conflict waits for the person to choose.
 */
export function createAutosave(current: Current, patch: Patch): { pump: () => Promise<boolean> } {
  let running: Promise<boolean> | null = null;
  let retry: ReturnType<typeof setTimeout> | undefined;

  const run = async (): Promise<boolean> => {
    for (;;) {
      const open = current();
      if (open === null || isSaved(open)) return true;
      if (inConflict(open)) return false;
      if (await saveOnce(open, current, patch)) continue;
      retry = setTimeout(() => void pump(), RETRY_AFTER_MS);
      return false;
    }
  };
  const pump = (): Promise<boolean> => {
    clearTimeout(retry);
    running ??= run().finally(() => { running = null; });
    return running;
  };
  return { pump };
}
