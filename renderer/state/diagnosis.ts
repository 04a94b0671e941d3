import { bridge } from '../app/bridge.ts';
import type { OpenReading } from './reading-slice.ts';

type Current = () => OpenReading | null;
type Patch = (change: (open: OpenReading) => Partial<OpenReading>) => void;

const PAUSE_MS = 150;

/**
 * Asks for findings once the typing pauses, one question at a time, so that a host that thinks long is never asked about sheets that are
 * gone. An answer to an older sheet is dropped and the question put again.
 */
export function createDiagnosis(current: Current, patch: Patch): { request: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let asking = false;

  const isStill = (asked: OpenReading): boolean => current()?.id === asked.id && current()?.history.now.sheet === asked.history.now.sheet;
  const ask = async (): Promise<void> => {
    const asked = current();
    if (asked === null || asking) return;
    asking = true;
    const reply = await bridge.diagnose({ sheet: asked.history.now.sheet });
    asking = false;
    if (!isStill(asked)) {
      if (current()?.diagnosis.kind === 'working') request();
      return;
    }
    patch(() => (reply.ok ? { findings: reply.value, diagnosis: { kind: 'current' } } : { diagnosis: { kind: 'failed', error: reply.error } }));
  };
  const request = (): void => {
    clearTimeout(timer);
    patch(() => ({ diagnosis: { kind: 'working' } }));
    timer = setTimeout(() => void ask(), PAUSE_MS);
  };
  return { request };
}
