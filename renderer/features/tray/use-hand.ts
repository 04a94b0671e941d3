import { useState } from 'react';
import type { EnginePlan } from '../../../core/domain/engine-plan.ts';
import { plugKey, type PlugKey, type PlugPlace } from '../../../core/domain/plugs.ts';
import type { PlugReading, ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { useAct, useIsKept, usePlaces, useSelectedKey, useSheet } from '../../state/hooks.ts';
import { plugAt } from '../../state/places.ts';
import { useStore, type State } from '../../state/store.ts';
import { useText, type Text } from '../../text/index.ts';
import { readNeighbours, type Neighbour } from './neighbours.ts';

export const keyOfPlace = ({ cylinder, position }: PlugPlace): PlugKey => plugKey(cylinder, position);

/** The plug at hand, among all places of the tray, and the voice that says what was done to it. */
export type Hand = {
  readonly words: Text['tray'];
  readonly sheet: ReadingSheet;
  readonly places: readonly PlugPlace[];
  readonly index: number;
  readonly place: PlugPlace;
  readonly name: string;
  readonly plugKey: PlugKey;
  /** undefined: this plug is left out of the reading. */
  readonly plug: PlugReading | undefined;
  /** The read plugs beside it in the engine. */
  readonly neighbours: readonly Neighbour[];
  readonly act: State['act'];
  /** The reading is closed: what is done to it is refused, and the screen asks whether to open it again. */
  readonly kept: boolean;
  /** What was done last, for a screen reader. */
  readonly saying: string;
  readonly say: (text: string) => void;
  /** Says it, and shows it with a way to take it back for as long as that would take back nothing else. */
  readonly tell: (text: string) => void;
};

function showUntilChanged(text: string): void {
  const { reading: done, tell, undo, dismiss } = useStore.getState();
  const slip = tell({ text, tone: 'plain', undo });
  const stop = useStore.subscribe(({ reading }) => {
    if (reading?.id === done?.id && reading?.version === done?.version) return;
    stop();
    dismiss(slip);
  });
}

export function useHand(plan: EnginePlan): Hand {
  const words = useText().tray;
  const sheet = useSheet();
  const places = usePlaces();
  const act = useAct();
  const kept = useIsKept();
  const selected = useSelectedKey();
  const [saying, say] = useState('');

  const index = Math.max(0, places.findIndex((at) => keyOfPlace(at) === selected));
  const place = places[index] ?? { cylinder: 1, position: 'only' as const };
  const tell = (text: string): void => {
    say(text);
    showUntilChanged(text);
  };
  return {
    words, sheet, places, index, place, name: words.placeName(place), plugKey: selected, plug: plugAt(sheet, selected),
    neighbours: readNeighbours(plan, sheet, place), act, kept, saying, say, tell,
  };
}
