import type { EnginePlan } from '../../../core/domain/engine-plan.ts';

export type Size = { readonly width: number; readonly height: number };

/**
 * How the station is laid out: the tray at the side, or across the top for long engines, or everything in one column where the window
 * is narrow. `scale` is the width of one plug's place in CSS pixels.
 */
export type StationLayout = { readonly shape: 'side' | 'top' | 'column'; readonly tray: Size; readonly scale: number };

const NARROW = 900;
const LEAST_TARGET = 44;
const MOST_SCALE = 168;
const SIDE_SHARE = 0.39;
/** Caption, summary of verdicts and padding of the tray. */
const AROUND = { width: 24, height: 116 };

const scaleFor = (plan: EnginePlan, { width, height }: Size): number =>
  Math.floor(Math.min(MOST_SCALE, (width - AROUND.width) / plan.width, (height - AROUND.height) / plan.height));

/** @param room of the station in CSS pixels */
export function stationLayout(plan: EnginePlan, room: Size): StationLayout {
  const fitted = (shape: StationLayout['shape'], tray: Size): StationLayout => ({ shape, tray, scale: Math.max(24, scaleFor(plan, tray)) });
  if (room.width < NARROW) return fitted('column', { width: room.width, height: Math.max(320, room.width * 0.8) });
  const side = fitted('side', { width: Math.round(room.width * SIDE_SHARE), height: room.height });
  if (side.scale >= LEAST_TARGET) return side;
  const top = fitted('top', { width: room.width, height: Math.round(room.height * 0.46) });
  return top.scale > side.scale ? top : side;
}

/** From this scale on a place has room for words below its drawing, if no other plug lies there. */
const CAPTION_FROM = 80;

export const hasCaptions = (plan: EnginePlan, scale: number): boolean =>
  scale >= CAPTION_FROM && plan.places.every((place) => plan.places.every((other) => Math.abs(other.x - place.x) > 1 || Math.abs(other.y - place.y) > 1.6 || other === place));
