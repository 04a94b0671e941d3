import type { Lab } from '../../../core/photo/lab.ts';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { END_BOX, drawEnd } from './end/draw-end.ts';
import { GROUND, tone } from './palette.ts';
import type { Pen } from './pen.ts';
import type { Shape } from './shape.ts';
import { VIEW_BOX as SIDE_BOX } from './side/frame.ts';
import { drawSide } from './side/draw-side.ts';

export type View = 'end' | 'side';

/** A window into a view, in its drawing units. */
export type Window = readonly [x: number, y: number, width: number, height: number];

const boxOf = (text: string): Window => text.split(' ').map(Number) as unknown as Window;
export const WHOLE: Readonly<Record<View, Window>> = { end: boxOf(END_BOX), side: boxOf(SIDE_BOX) };

export type Drawing = { readonly window: Window; readonly shapes: readonly Shape[] };

/** From this many pixels across the shell on there is room for hairlines. */
const FINE_FROM = 72;
/** From here on grain is drawn at its true size. */
const GRAIN_TRUE_FROM = 300;

/**
 * The drawing of a tip on its grey ground.
 * @param size width of the picture in pixels; it decides line widths and how much grain is drawn
 * @param measuredNose colour of the nose as a photo measured it, CIELAB under D65; drawn instead of the named one
 * @param id prefix for the names of gradients and clips, different for each drawing of a page
 */
export function drawTip(tip: Tip, view: View, size: number, seed: string, id: string, window: Window = WHOLE[view], measuredNose?: Lab): Drawing {
  const [x, y, width, height] = window;
  const across = (size * WHOLE[view][3]) / width;
  const pen: Pen = {
    unit: width / size, fine: across >= FINE_FROM, coarse: Math.max(1, (GRAIN_TRUE_FROM / across) ** 0.5), id, seed,
    ...(measuredNose && { measuredNose: tone(measuredNose) }),
  };
  const ground: Shape = { tag: 'rect', attrs: { x, y, width, height, fill: GROUND } };
  return { window, shapes: [ground, ...(view === 'end' ? drawEnd(tip, pen) : drawSide(tip, pen))] };
}
