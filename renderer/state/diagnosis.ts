import { bridge } from '../app/bridge.ts';
import type { OpenReading } from './reading-slice.ts';

type Current = () => OpenReading | null;
type Patch = (change: (open: OpenReading) => Partial<OpenReading>) => void;

/** Whole findings keep the host busy for about a tenth of a second; within this pause the verdicts of the next change would have to wait for them. */
const PAUSE_MS = 400;

/** Runs the work unless it is running already. */
function oneAtATime(work: () => Promise<void>): () => void {
  let running = false;
  return () => {
    if (running) return;
    running = true;
    void work().finally(() => { running = false; });
  };
}

const isUndecided = ({ decided }: OpenReading): boolean => decided === null || decided.isOlder;

/**
 * Asks at once for a first look at every change, and for findings once the typing pauses. Of each one question at a time, so that a host that
 * thinks long is never asked about sheets that are gone. An answer to an older sheet is dropped and the newest asked about.
 */
export function createDiagnosis(current: Current, patch: Patch): { readonly request: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;

  /** With every change the state of the diagnosis is made anew, also where lines of the workshop changed and the sheet did not. */
  const isStill = (asked: OpenReading): boolean => current()?.diagnosis === asked.diagnosis;

  const look = oneAtATime(async () => {
    for (let open = current(); open !== null && isUndecided(open); open = current()) {
      const reply = await bridge['first-look']({ sheet: open.history.now.sheet });
      if (!isStill(open)) continue;
      if (!reply.ok) return;
      patch(() => ({ decided: { look: reply.value, isOlder: false } }));
    }
  });
  const explain = oneAtATime(async () => {
    const open = current();
    if (open?.diagnosis.kind !== 'working') return;
    const reply = await bridge.diagnose({ sheet: open.history.now.sheet });
    if (!isStill(open)) return later();
    patch(() => (reply.ok
      ? { findings: reply.value, decided: { look: reply.value, isOlder: false }, diagnosis: { kind: 'current' } }
      : { diagnosis: { kind: 'failed', error: reply.error } }));
  });
  const later = (): void => {
    clearTimeout(timer);
    timer = setTimeout(explain, PAUSE_MS);
  };
  return {
    request: () => {
      patch(({ decided }) => ({ diagnosis: { kind: 'working' }, decided: decided && { ...decided, isOlder: true } }));
      look();
      later();
    },
  };
}
