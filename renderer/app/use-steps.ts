import type { Entered } from '../state/reading-slice.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import type { Station } from './route.ts';
import { useRoute } from './use-route.ts';

const typedAt = (pending: Entered['pending'], start: string): readonly unknown[] => Object.entries(pending).filter(([path]) => path.startsWith(start));

const PARTS: readonly (readonly [station: Station, read: (entered: Entered) => readonly unknown[]])[] = [
  ['plugs', ({ sheet, pending }) => [sheet.plugs, typedAt(pending, 'plugs.')]],
  ['run', ({ sheet, pending }) => [sheet.conditions, sheet.symptoms, sheet.symptomsAbsent, typedAt(pending, 'conditions.')]],
  ['cylinders', ({ sheet, pending }) => [sheet.cylinderChecks, typedAt(pending, 'cylinderChecks.')]],
];

/** The station where two states of a reading differ; undefined when they differ nowhere, or in name or date only. */
function changedStation(before: Entered, after: Entered): Station | undefined {
  return PARTS.find(([, read]) => JSON.stringify(read(before)) !== JSON.stringify(read(after)))?.[0];
}

/** Undo and redo. A step at another station than the one on the screen is told, since nobody would see it. */
export function useSteps(): { readonly undo: () => void; readonly redo: () => void } {
  const route = useRoute();
  const { stations, undone, redone } = useText().shell;
  const { undo, redo, tell } = useStore.getState();
  const entered = (): Entered | undefined => useStore.getState().reading?.history.now;
  const telling = (step: () => void, words: (station: string) => string) => (): void => {
    const before = entered();
    step();
    const after = entered();
    const where = before && after && changedStation(before, after);
    if (where !== undefined && !(route.page === 'reading' && route.station === where)) tell({ text: words(stations[where]), tone: 'plain' });
  };
  return { undo: telling(undo, undone), redo: telling(redo, redone) };
}
