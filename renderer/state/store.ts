import { create, type StateCreator } from 'zustand';
import { createAppSlice, type AppSlice } from './app-slice.ts';
import { createEnginesSlice, type EnginesSlice } from './engines-slice.ts';
import { createHeatSlice, type HeatSlice } from './heat-slice.ts';
import { createIncomingSlice, type IncomingSlice } from './incoming-slice.ts';
import { createPhotosSlice, type PhotosSlice } from './photos-slice.ts';
import { createReadingSlice, type ReadingSlice } from './reading-slice.ts';
import { createShopSlice, type ShopSlice } from './shop-slice.ts';
import { createTimeSlice, type TimeSlice } from './time-slice.ts';

export type State = AppSlice & EnginesSlice & HeatSlice & ReadingSlice & PhotosSlice & IncomingSlice & ShopSlice & TimeSlice;
export type SliceCreator<Slice> = StateCreator<State, [], [], Slice>;

/** The one store of the page. Components read it through the hooks beside it. */
export const useStore = create<State>()((...parts) => ({
  ...createAppSlice(...parts),
  ...createEnginesSlice(...parts),
  ...createHeatSlice(...parts),
  ...createReadingSlice(...parts),
  ...createPhotosSlice(...parts),
  ...createIncomingSlice(...parts),
  ...createShopSlice(...parts),
  ...createTimeSlice(...parts),
}));
