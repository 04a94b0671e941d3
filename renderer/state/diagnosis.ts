import { bridge } from '../app/bridge.ts';
import type { OpenReading } from './reading-slice.ts';

type Current = () => OpenReading | null;
type Patch = (change: (open: OpenReading) => Partial<OpenReading>) => void;

const PAUSE_MS = 150;

/** Asks for findings once the typing pauses. An answer to an older sheet is dropped. */
export function createDiagnosis(current: Current, patch: Patch): { request: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;

  const ask = async (): Promise<void> => {
    const asked = current();
    if (asked === null) return;
    const { sheet } = asked.history.now;
    const reply = await bridge.diagnose({ sheet });
    if (current()?.id !== asked.id || current()?.history.now.sheet !== sheet) return;
    patch(() => (reply.ok ? { findings: reply.value, diagnosis: { kind: 'current' } } : { diagnosis: { kind: 'failed', error: reply.error } }));
  };
  return {
    request: () => {
      clearTimeout(timer);
      patch(() => ({ diagnosis: { kind: 'working' } }));
      timer = setTimeout(() => void ask(), PAUSE_MS);
    },
  };
}
