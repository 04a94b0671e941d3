import type { PlugKey } from '../../core/domain/plugs.ts';
import type { AppError, ReadingRecord } from '../../shared/channels.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { FirstLook } from '../../shared/formats/first-look.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { createAutosave } from './autosave.ts';
import { createDiagnosis } from './diagnosis.ts';
import { record, redone, startHistory, undone, type History, type Pending } from './history.ts';
import { keyOf, sheetPlaces } from './places.ts';
import { joinTarget, type ReadingAction } from './reading-action.ts';
import { readingReducer } from './reading-reducer.ts';
import type { SliceCreator } from './store.ts';
import { bridge } from '../app/bridge.ts';

export type SaveState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'not saved'; readonly error: AppError };

export type DiagnosisState = { readonly kind: 'none' | 'working' | 'current' } | { readonly kind: 'failed'; readonly error: AppError };

/** What was last decided, by a first look or by findings, which hold one. `isOlder`: of the sheet before the last change. */
export type Decided = { readonly look: FirstLook; readonly isOlder: boolean };

/** What undo brings back: the sheet and what was typed beside it. */
export type Entered = { readonly sheet: ReadingSheet; readonly pending: Pending };

/** The text of a field, by the path of the field in the sheet (plugs by their key); undefined once the field's value is taken. */
export type Typed = { readonly path: string; readonly raw: string | undefined };

function withPending(pending: Pending, { path, raw }: Typed): Pending {
  if (pending[path] === raw) return pending;
  const { [path]: _, ...rest } = pending;
  return raw === undefined ? rest : { ...rest, [path]: raw };
}

export type OpenReading = {
  readonly id: string;
  readonly engineId: string;
  readonly state: 'draft' | 'kept';
  readonly revision: number;
  readonly history: History<Entered>;
  readonly selected: PlugKey;
  /** Counts changes; the save that is in flight knows which it carries. */
  readonly version: number;
  readonly savedVersion: number;
  readonly save: SaveState;
  readonly decided: Decided | null;
  readonly findings: Findings | null;
  readonly diagnosis: DiagnosisState;
  /** Somebody tried to change a reading that is kept; the screen then asks whether to open it again. */
  readonly refused: boolean;
};

export type ReadingSlice = {
  readonly reading: OpenReading | null;
  /** Loads a reading and makes it the open one. What is not saved yet of the one before is saved first; if that fails it stays open. */
  readonly openReading: (id: string) => Promise<AppError | null>;
  readonly showReading: (record: ReadingRecord) => void;
  /** Does something to the open draft, as one step that undo takes back. `typed`: the text of a number field when it cannot be taken yet. */
  readonly act: (action: ReadingAction, typed?: Typed) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly selectPlug: (key: PlugKey) => void;
  readonly dismissRefusal: () => void;
  readonly keepReading: () => Promise<AppError | null>;
  readonly reopenReading: () => Promise<AppError | null>;
  /**
   * After a conflict: `mine` writes what is on the screen over the stored sheet, and opens it for that if it was kept meanwhile; `theirs`
   * takes the stored sheet, and undo brings mine back unless theirs is kept.
   */
  readonly resolveConflict: (choice: 'mine' | 'theirs') => Promise<AppError | null>;
  /** Works out the findings of the open draft again, because what they are judged by has changed. A kept reading keeps its findings. */
  readonly judgeAnew: () => void;
  /** Saves now; true when everything is on disk. */
  readonly flushReading: () => Promise<boolean>;
};

const opened = (stored: ReadingRecord): OpenReading => ({
  id: stored.id, engineId: stored.engineId, state: stored.state, revision: stored.revision,
  history: startHistory<Entered>({ sheet: stored.sheet, pending: stored.pending }),
  selected: keyOf(sheetPlaces(stored.sheet)[0] ?? { cylinder: 1 }),
  version: 0, savedVersion: 0, save: { kind: 'saved' },
  decided: stored.findings && { look: stored.findings, isOlder: false },
  findings: stored.findings, diagnosis: { kind: stored.findings === null ? 'none' : 'current' },
  refused: false,
});

export const createReadingSlice: SliceCreator<ReadingSlice> = (set, get) => {
  const patch = (change: (open: OpenReading) => Partial<OpenReading>): void =>
    set(({ reading }) => (reading === null ? {} : { reading: { ...reading, ...change(reading) } }));
  const current = (): OpenReading | null => get().reading;
  const autosave = createAutosave(current, patch);
  const diagnosis = createDiagnosis(current, patch);

  const move = (change: (history: History<Entered>) => History<Entered>): void => {
    const open = current();
    if (open === null) return;
    const history = change(open.history);
    if (history === open.history) return;
    if (open.state === 'kept') return patch(() => ({ refused: true }));
    patch(({ version }) => ({ history, version: version + 1 }));
    if (history.now.sheet !== open.history.now.sheet) diagnosis.request();
    void autosave.pump();
  };

  const showReading = (stored: ReadingRecord): void => {
    set({ reading: opened(stored) });
    if (stored.findings === null) diagnosis.request();
  };

  const refresh = async (channel: 'reading.get' | 'reading.keep' | 'reading.reopen', id: string): Promise<AppError | null> => {
    const reply = await bridge[channel]({ id });
    if (!reply.ok) return reply.error;
    showReading(reply.value);
    return null;
  };

  const closeOver = async (channel: 'reading.keep' | 'reading.reopen'): Promise<AppError | null> => {
    const open = current();
    if (open === null) return null;
    if (!(await autosave.pump())) return unsavedError(current());
    return refresh(channel, open.id);
  };

  return {
    reading: null,
    showReading,
    openReading: async (id) => {
      if (!(await autosave.pump())) return unsavedError(current());
      return refresh('reading.get', id);
    },
    act: (action, typed) => move((history) => {
      const sheet = readingReducer(history.now.sheet, action);
      const pending = typed === undefined ? history.now.pending : withPending(history.now.pending, typed);
      if (sheet === history.now.sheet && pending === history.now.pending) return history;
      return record(history, { sheet, pending }, typed === undefined ? joinTarget(action) : `typing ${typed.path}`);
    }),
    undo: () => move(undone),
    redo: () => move(redone),
    selectPlug: (key) => patch(() => ({ selected: key })),
    dismissRefusal: () => patch(() => ({ refused: false })),
    keepReading: () => closeOver('reading.keep'),
    reopenReading: () => closeOver('reading.reopen'),
    resolveConflict: async (choice) => {
      const open = current();
      if (open === null) return null;
      const reply = await bridge[choice === 'mine' ? 'reading.reopen' : 'reading.get']({ id: open.id });
      if (!reply.ok) return reply.error;
      const stored = reply.value;
      if (stored.state === 'kept') {
        showReading(stored);
        return null;
      }
      patch(({ savedVersion, version }) => ({ revision: stored.revision, savedVersion: choice === 'theirs' ? version : savedVersion, save: { kind: 'saved' } }));
      if (choice === 'theirs') move((history) => record(history, { sheet: stored.sheet, pending: stored.pending }));
      return (await autosave.pump()) ? null : unsavedError(current());
    },
    judgeAnew: () => { if (current()?.state === 'draft') diagnosis.request(); },
    flushReading: () => autosave.pump(),
  };
};

const unsavedError = (open: OpenReading | null): AppError =>
  open?.save.kind === 'not saved' ? open.save.error : { code: 'internal', message: 'The reading could not be saved.' };
