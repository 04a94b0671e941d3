import type { AppError } from '../../shared/channels.ts';
import { bridge } from '../app/bridge.ts';
import type { EngineDraft } from './engine-draft.ts';

export type Drafts = Readonly<Record<string, EngineDraft>>;

export type DraftKeeping = {
  /** Has the library keep the draft of this engine as it is now. */
  readonly keep: (of: string) => void;
  /** Resolves once nothing is on its way to the library any more. */
  readonly settled: () => Promise<void>;
};

/** Engines that are being written down in the open library; none when they cannot be read. */
export async function keptDrafts(): Promise<Drafts> {
  const reply = await bridge['engine-draft.list'](null);
  return reply.ok ? reply.value : {};
}

/** Sends drafts to the library, one at a time; what changes meanwhile goes with the next one. `told`: what came of the last. */
export function createDraftKeeping(current: () => Drafts, told: (error: AppError | null) => void): DraftKeeping {
  const waiting = new Set<string>();
  let running: Promise<void> | null = null;
  const run = async (): Promise<void> => {
    for (const of of waiting) {
      waiting.delete(of);
      const reply = await bridge['engine-draft.keep']({ of, draft: current()[of] ?? null });
      told(reply.ok ? null : reply.error);
    }
  };
  return {
    keep: (of) => {
      waiting.add(of);
      running ??= run().finally(() => { running = null; });
    },
    settled: async () => { await running; },
  };
}
