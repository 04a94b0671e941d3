import type { Overall } from '../../../shared/vocabulary/tip.ts';
import { CHALK, hex, INK, NOSE_TONE, SHADOW, SHINE, tone, type Tone } from './palette.ts';
import { line, type Pen } from './pen.ts';
import { polyline } from './curve.ts';
import { path, type Point, type Shape } from './shape.ts';

/** How far the strokes of an impression go. */
type Extent = { readonly middle: Point; readonly reach: number; readonly within: (point: Point) => boolean };

/** An impression of the whole is strokes in a colour, never a surface: nobody looked at the parts. */
export function overall(value: Overall, { middle, reach, within }: Extent, pen: Pen): Shape[] {
  const strokes = (slant: number, gap: number, part: (point: Point) => boolean = () => true): string =>
    slanting(middle, reach, slant, gap * pen.coarse ** 0.7, (p) => within(p) && part(p));
  const drawn = (d: string, colour: string, pixels: number, opacity = 0.9): Shape => path(d, { ...line(pen, pixels, colour), strokeOpacity: opacity });
  const thick = pen.fine ? 2 : 1.3;
  switch (value) {
    case 'looks normal': return [drawn(strokes(1, 9), of(NOSE_TONE['light tan']), thick)];
    case 'looks unfired': return [drawn(strokes(1, 9), of(tone([94, 0, 1])), thick)];
    case 'fouled, kind unknown': return [drawn(strokes(1, 7), SHADOW, thick), drawn(strokes(-1, 7), SHADOW, thick)];
    case 'differs from its neighbours': return [drawn(strokes(1, 9, ([x, y]) => x < y), INK, thick), drawn(strokes(1, 9, ([x, y]) => x >= y), SHINE, thick)];
    case 'lighter than its neighbours': return [drawn(strokes(0, 9), CHALK, thick * 1.5)];
    case 'darker than its neighbours': return [drawn(strokes(0, 9), INK, thick * 1.5)];
  }
}

const of = (colour: Tone): string => hex(colour);

/** Parallel strokes, cut to a region: slant 1 rises to the right, -1 falls, 0 lies level. */
function slanting(middle: Point, reach: number, slant: number, gap: number, keep: (point: Point) => boolean): string {
  const pieces: string[] = [];
  const direction: Point = slant === 0 ? [1, 0] : [Math.SQRT1_2, -slant * Math.SQRT1_2];
  for (let off = -reach; off <= reach; off += gap) {
    let run: Point[] = [];
    for (let t = -reach; t <= reach; t += 2) {
      const point: Point = [middle[0] + direction[0] * t - direction[1] * off, middle[1] + direction[1] * t + direction[0] * off];
      if (keep(point)) run.push(point);
      else { if (run.length > 2) pieces.push(ends(run)); run = []; }
    }
    if (run.length > 2) pieces.push(ends(run));
  }
  return pieces.join('');
}

const ends = (run: readonly Point[]): string => polyline([run[0] ?? [0, 0], run[run.length - 1] ?? [0, 0]]);
