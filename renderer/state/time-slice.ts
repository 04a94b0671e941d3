import type { AppError, Output } from '../../shared/channels.ts';
import { bridge } from '../app/bridge.ts';
import type { SliceCreator } from './store.ts';

export type TimeSlice = {
  /** The readings in order of time of the engine last looked at. */
  readonly timeline: { readonly engineId: string; readonly readings: Output<'reading.timeline'> } | null;
  readonly loadTimeline: (engineId: string) => Promise<AppError | null>;
  /** Puts the open reading beside a kept one, or beside none. */
  readonly compareWith: (id: string | undefined) => Promise<AppError | null>;
};

export const createTimeSlice: SliceCreator<TimeSlice> = (set, get) => ({
  timeline: null,
  loadTimeline: async (engineId) => {
    const reply = await bridge['reading.timeline']({ engineId });
    if (reply.ok) set({ timeline: { engineId, readings: reply.value } });
    return reply.ok ? null : reply.error;
  },
  compareWith: async (id) => {
    if (id === undefined) {
      get().act({ type: 'since', since: undefined });
      return null;
    }
    const asked = get().reading?.id;
    const reply = await bridge['reading.since']({ id });
    if (!reply.ok) return reply.error;
    if (get().reading?.id === asked) get().act({ type: 'since', since: reply.value });
    return null;
  },
});
