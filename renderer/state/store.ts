import { create, type StateCreator } from 'zustand';
import { createAppSlice, type AppSlice } from './app-slice.ts';
import { createEnginesSlice, type EnginesSlice } from './engines-slice.ts';
import { createReadingSlice, type ReadingSlice } from './reading-slice.ts';

export type State = AppSlice & EnginesSlice & ReadingSlice;
export type SliceCreator<Slice> = StateCreator<State, [], [], Slice>;

/** The one store of the page. Components read it through the hooks beside it. */
export const useStore = create<State>()((...parts) => ({
  ...createAppSlice(...parts),
  ...createEnginesSlice(...parts),
  ...createReadingSlice(...parts),
}));
