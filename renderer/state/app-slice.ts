import { DEFAULT_SETTINGS, type AppError, type AppInfo, type Settings } from '../../shared/channels.ts';
import { bridge } from '../app/bridge.ts';
import { keptDrafts } from './kept-drafts.ts';
import type { SliceCreator } from './store.ts';

/** A short message at the edge of the bench; `undo` takes back what it tells of. */
export type Message = { readonly id: number; readonly text: string; readonly tone: 'plain' | 'problem'; readonly undo?: () => void };

export type AppSlice = {
  readonly info: AppInfo | null;
  /** Why the program could not start, when it could not. */
  readonly startProblem: AppError | null;
  readonly settings: Settings;
  /** Why the last change of a setting was not saved. It holds until the program is closed. */
  readonly settingsProblem: AppError | null;
  readonly messages: readonly Message[];
  readonly start: () => Promise<void>;
  readonly changeSettings: (change: Partial<Settings>) => Promise<void>;
  readonly openLibrary: (kind: 'own' | 'demo') => Promise<AppError | null>;
  readonly recoverLibrary: (backup: string) => Promise<AppError | null>;
  /** Takes the place of the same words said before. Gives back the id by which the message can be put away. */
  readonly tell: (message: Omit<Message, 'id'>) => number;
  readonly dismiss: (id: number) => void;
};

export const createAppSlice: SliceCreator<AppSlice> = (set, get) => {
  let lastMessage = 0;
  const adopt = async (info: AppInfo): Promise<void> => {
    set({ info, startProblem: null, reading: null, log: null, engineDrafts: await keptDrafts(), engineDraftProblem: null });
    await Promise.all([get().loadEngines(), get().loadShopLines()]);
  };
  return {
    info: null,
    startProblem: null,
    settings: DEFAULT_SETTINGS,
    settingsProblem: null,
    messages: [],
    start: async () => {
      const [info, settings] = await Promise.all([bridge['app.info'](null), bridge['settings.get'](null)]);
      if (settings.ok) set({ settings: settings.value });
      if (info.ok) await adopt(info.value);
      else set({ startProblem: info.error });
    },
    changeSettings: async (change) => {
      const settings = { ...get().settings, ...change };
      set({ settings });
      const reply = await bridge['settings.save'](settings);
      set({ settingsProblem: reply.ok ? null : reply.error });
    },
    openLibrary: async (kind) => {
      if (!(await get().flushReading())) return { code: 'conflict', message: 'The open reading is not saved yet; save it before the library is changed.' };
      await get().draftsSettled();
      const reply = await bridge['library.use']({ kind });
      if (reply.ok) await adopt(reply.value);
      return reply.ok ? null : reply.error;
    },
    recoverLibrary: async (backup) => {
      await get().draftsSettled();
      const reply = await bridge['library.recover']({ backup });
      if (reply.ok) await adopt(reply.value);
      return reply.ok ? null : reply.error;
    },
    tell: (message) => {
      const id = (lastMessage += 1);
      set(({ messages }) => ({ messages: [...messages.filter(({ text, undo }) => text !== message.text || undo !== undefined), { ...message, id }] }));
      return id;
    },
    dismiss: (id) => set(({ messages }) => ({ messages: messages.filter((message) => message.id !== id) })),
  };
};
