import type { EnginePlan, PlanPlace } from '../../../core/domain/engine-plan.ts';

export type Size = { readonly width: number; readonly height: number };

/**
 * How the station is laid out: the tray at the side, or across the top for long engines, or everything in one column where the window
 * is narrow. The large picture lies in the tray where a flat engine leaves room for it. `scale` is the width of one plug's place in CSS pixels.
 */
export type StationLayout = { readonly shape: 'side' | 'top' | 'column'; readonly picture: 'tray' | 'entry'; readonly tray: Size; readonly scale: number };

const NARROW = 900;
const LEAST_TARGET = 44;
const MOST_SCALE = 132;
const SIDE_SHARE = { least: 0.39, most: 0.47 };
const WANTED_SCALE = 72;
/** Caption, summary of verdicts and padding of the tray. */
const AROUND = { width: 24, height: 116 };
const PICTURE_FROM = 170;

const scaleFor = (plan: EnginePlan, { width, height }: Size): number =>
  Math.max(24, Math.floor(Math.min(MOST_SCALE, (width - AROUND.width) / plan.width, (height - AROUND.height) / plan.height)));

function atTheSide(plan: EnginePlan, room: Size): StationLayout {
  const wanted = plan.width * Math.min(WANTED_SCALE, (room.height - AROUND.height) / plan.height) + AROUND.width;
  const tray = { width: Math.round(Math.min(SIDE_SHARE.most * room.width, Math.max(SIDE_SHARE.least * room.width, wanted))), height: room.height };
  const scale = scaleFor(plan, tray);
  const left = room.height - AROUND.height - plan.height * scale;
  return { shape: 'side', picture: left >= PICTURE_FROM ? 'tray' : 'entry', tray, scale };
}

/** @param room of the station in CSS pixels */
export function stationLayout(plan: EnginePlan, room: Size): StationLayout {
  const fitted = (shape: 'top' | 'column', tray: Size): StationLayout => ({ shape, picture: 'entry', tray, scale: scaleFor(plan, tray) });
  if (room.width < NARROW) return fitted('column', { width: room.width, height: Math.max(320, room.width * 0.8) });
  const side = atTheSide(plan, room);
  if (side.scale >= LEAST_TARGET) return side;
  const top = fitted('top', { width: room.width, height: Math.round(room.height * 0.46) });
  return top.scale > side.scale ? top : side;
}

/** From this scale on a place has room for words below its drawing, if no other plug lies there. */
const CAPTION_FROM = 80;
const WIDEST_CAPTION = 2.2;

/** Room in CSS pixels for the words below each plug of a plan; undefined when they would run into other plugs. */
export function captionWidth({ places }: EnginePlan, scale: number): number | undefined {
  const apart = (place: PlanPlace, other: PlanPlace): readonly [x: number, y: number] => [Math.abs(other.x - place.x), Math.abs(other.y - place.y)];
  const pairs = places.flatMap((place, i) => places.slice(i + 1).map((other) => apart(place, other)));
  if (scale < CAPTION_FROM || pairs.some(([x, y]) => x <= 1 && y <= 1.6)) return undefined;
  const besides = pairs.filter(([, y]) => y <= 1).map(([x]) => x);
  return Math.floor(scale * Math.min(WIDEST_CAPTION, ...besides));
}
