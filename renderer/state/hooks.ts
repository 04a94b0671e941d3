import { useShallow } from 'zustand/react/shallow';
import type { PlugKey, PlugPlace } from '../../core/domain/plugs.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import type { PlugLook } from '../../shared/formats/first-look.ts';
import type { PlugReading, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { keyOf, plugAt, sheetPlaces } from './places.ts';
import type { Decided, DiagnosisState, OpenReading, SaveState } from './reading-slice.ts';
import { useStore, type State } from './store.ts';

/** The open reading. @throws outside a reading's screens, which is a bug. */
function useReading<T>(select: (open: OpenReading) => T): T {
  return useStore((state: State) => {
    if (state.reading === null) throw new Error('no reading is open');
    return select(state.reading);
  });
}

export const useSheet = (): ReadingSheet => useReading((open) => open.history.now.sheet);
export const usePlug = (key: PlugKey): PlugReading | undefined => useReading((open) => plugAt(open.history.now.sheet, key));
export const useSelectedKey = (): PlugKey => useReading((open) => open.selected);
export const useSaveState = (): SaveState => useReading((open) => open.save);
/** A kept reading is closed: it can be looked at, not changed. */
export const useIsKept = (): boolean => useReading((open) => open.state === 'kept');
export const useCanUndo = (): boolean => useReading((open) => open.history.past.length > 0);
export const useCanRedo = (): boolean => useReading((open) => open.history.future.length > 0);

/** The last findings that came back, which may be of a slightly older sheet while `diagnosis.kind` is 'working'. */
export const useFindings = (): Findings | null => useReading((open) => open.findings);
export const useDiagnosis = (): DiagnosisState => useReading((open) => open.diagnosis);

export const useDecided = (): Decided | null => useReading((open) => open.decided);
/** The verdict on one plug as it was last decided. */
export const usePlugVerdict = (key: PlugKey): Pick<PlugLook, 'verdict' | 'belief'> | undefined =>
  useReading(useShallow(({ decided }) => {
    const plug = decided?.look.plugs.find((one) => keyOf(one) === key);
    return plug && { verdict: plug.verdict, belief: plug.belief };
  }));

/** The open library can be looked at, not changed. */
export const useReadOnly = (): boolean => useStore((state) => state.info?.library.readOnly === true);

export const useAct = (): State['act'] => useStore((state) => state.act);
export const useSelectPlug = (): State['selectPlug'] => useStore((state) => state.selectPlug);

export function usePlaces(): readonly PlugPlace[] {
  return sheetPlaces(useSheet());
}

/** What was typed into the field at this path and cannot be taken yet. For `QuantityField`. */
export const usePending = (path: string): string | undefined => useReading((open) => open.history.now.pending[path]);
