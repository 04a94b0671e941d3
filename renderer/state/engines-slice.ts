import type { AppError, EngineRecord, OpenedFile, Output, ReadingSummary } from '../../shared/channels.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import { bridge } from '../app/bridge.ts';
import type { EngineDraft } from './engine-draft.ts';
import { createDraftKeeping, type DraftKeeping } from './kept-drafts.ts';
import type { SliceCreator } from './store.ts';

export type EnginesSlice = {
  readonly engines: readonly EngineRecord[];
  /** Why the engines could not be read, when they could not. */
  readonly enginesProblem: AppError | null;
  /** The readings of the engine last looked at. */
  readonly log: { readonly engineId: string; readonly readings: readonly ReadingSummary[] } | null;
  /** Engines being written down and not saved yet, by engine id; 'new' is one that is not on the shelf. They outlive a change of screen and a lost page. */
  readonly engineDrafts: Readonly<Record<string, EngineDraft>>;
  /** Why the last change of one could not be kept; it is still on the screen. */
  readonly engineDraftProblem: AppError | null;
  readonly draftsSettled: DraftKeeping['settled'];
  readonly setEngineDraft: (id: string, draft: EngineDraft | undefined) => void;
  readonly loadEngines: () => Promise<AppError | null>;
  readonly saveEngine: (id: string | null, engine: Engine) => Promise<Result<EngineRecord, AppError>>;
  readonly removeEngine: (id: string) => Promise<AppError | null>;
  readonly restoreEngine: (id: string) => Promise<AppError | null>;
  readonly loadLog: (engineId: string) => Promise<AppError | null>;
  readonly startReading: (engineId: string) => Promise<Result<string, AppError>>;
  readonly removeReading: (id: string) => Promise<AppError | null>;
  readonly restoreReading: (id: string) => Promise<AppError | null>;
  readonly importReading: (text: string) => Promise<Result<Output<'reading.import'>, AppError>>;
  /** The next file that the system asked to open with the program; null when there is none. */
  readonly openedFile: () => Promise<Result<OpenedFile | null, AppError>>;
};

export const createEnginesSlice: SliceCreator<EnginesSlice> = (set, get) => {
  const keeping = createDraftKeeping(() => get().engineDrafts, (engineDraftProblem) => set({ engineDraftProblem }));
  const reload = async (): Promise<void> => {
    await get().loadEngines();
    const open = get().log;
    if (open !== null) await get().loadLog(open.engineId);
  };
  const change = async (reply: Promise<Result<unknown, AppError>>): Promise<AppError | null> => {
    const done = await reply;
    if (!done.ok) return done.error;
    await reload();
    return null;
  };
  /** Puts the open reading away when this was done to it or to its engine, so that it is fetched anew; not before all of it is saved. */
  const putAway = (id: string): void => {
    const open = get().reading;
    if (open !== null && (open.id === id || open.engineId === id) && open.version === open.savedVersion) set({ reading: null });
  };
  const takeOff = async (id: string, reply: Promise<Result<unknown, AppError>>): Promise<AppError | null> => {
    const error = await change(reply);
    if (error === null) putAway(id);
    return error;
  };
  return {
    engines: [],
    enginesProblem: null,
    log: null,
    engineDrafts: {},
    engineDraftProblem: null,
    draftsSettled: keeping.settled,
    setEngineDraft: (id, draft) => {
      const { [id]: _, ...others } = get().engineDrafts;
      set({ engineDrafts: draft === undefined ? others : { ...others, [id]: draft } });
      keeping.keep(id);
    },
    loadEngines: async () => {
      const reply = await bridge['engine.list'](null);
      set(reply.ok ? { engines: reply.value, enginesProblem: null } : { engines: [], enginesProblem: reply.error });
      return reply.ok ? null : reply.error;
    },
    saveEngine: async (id, engine) => {
      const reply = await bridge['engine.save']({ id, engine });
      if (!reply.ok) return reply;
      putAway(reply.value.id);
      await reload();
      return reply;
    },
    removeEngine: (id) => takeOff(id, bridge['engine.remove']({ id })),
    restoreEngine: (id) => change(bridge['engine.restore']({ id })),
    loadLog: async (engineId) => {
      const reply = await bridge['reading.list']({ engineId });
      if (reply.ok) set({ log: { engineId, readings: reply.value } });
      return reply.ok ? null : reply.error;
    },
    startReading: async (engineId) => {
      if (!(await get().flushReading())) return err({ code: 'conflict', message: 'The open reading is not saved yet.' });
      const reply = await bridge['reading.start']({ engineId });
      if (reply.ok) get().showReading(reply.value);
      return reply.ok ? ok(reply.value.id) : reply;
    },
    removeReading: (id) => takeOff(id, bridge['reading.remove']({ id })),
    restoreReading: (id) => change(bridge['reading.restore']({ id })),
    importReading: async (text) => {
      const reply = await bridge['reading.import']({ text });
      if (reply.ok) await reload();
      return reply;
    },
    openedFile: () => bridge['reading.opened'](null),
  };
};
