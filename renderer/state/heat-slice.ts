import type { AppError } from '../../shared/channels.ts';
import type { HeatEntry, HeatRecord, HeatSetting } from '../../shared/channels-heat.ts';
import { bridge } from '../app/bridge.ts';
import type { SliceCreator } from './store.ts';

/** What is being tried on the heat page of an engine. It outlives a change of screen. */
export type HeatTrial = {
  readonly setting?: HeatSetting;
  /** A setting put aside to compare with. */
  readonly aside?: HeatSetting | undefined;
  /** Legs of a drive, a line each, or an imported log with the name of its file. */
  readonly legs?: string;
  readonly log?: { readonly name: string; readonly text: string } | undefined;
  /** °C of the whole engine at the start of the drive. */
  readonly start?: number;
};

export type HeatSlice = {
  readonly heatTrials: Readonly<Record<string, HeatTrial>>;
  readonly tryHeat: (engineId: string, change: HeatTrial) => void;
  /** What the engine last looked at told about its heat. */
  readonly heat: { readonly engineId: string; readonly record: HeatRecord } | null;
  readonly loadHeat: (engineId: string) => Promise<AppError | null>;
  readonly addHeatEntry: (engineId: string, entry: HeatEntry) => Promise<AppError | null>;
  readonly removeHeatEntry: (id: string) => Promise<AppError | null>;
  readonly restoreHeatEntry: (id: string) => Promise<AppError | null>;
};

export const createHeatSlice: SliceCreator<HeatSlice> = (set, get) => {
  const change = async (reply: Promise<{ readonly ok: true } | { readonly ok: false; readonly error: AppError }>): Promise<AppError | null> => {
    const done = await reply;
    if (!done.ok) return done.error;
    const open = get().heat;
    return open === null ? null : get().loadHeat(open.engineId);
  };
  return {
    heat: null,
    heatTrials: {},
    tryHeat: (engineId, trial) => set(({ heatTrials }) => ({ heatTrials: { ...heatTrials, [engineId]: { ...heatTrials[engineId], ...trial } } })),
    loadHeat: async (engineId) => {
      const reply = await bridge['heat.record']({ engineId });
      if (reply.ok) set({ heat: { engineId, record: reply.value } });
      return reply.ok ? null : reply.error;
    },
    addHeatEntry: (engineId, entry) => change(bridge['heat.add']({ engineId, entry })),
    removeHeatEntry: (id) => change(bridge['heat.remove']({ id })),
    restoreHeatEntry: (id) => change(bridge['heat.restore']({ id })),
  };
};
