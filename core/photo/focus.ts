import { directions, type Directions } from './directions.ts';
import type { Point } from './pixels.ts';
import { sampled, type Plane } from './planes.ts';

/** A centre, and how far the circles around it are pressed to ellipses by a tilted view: r (1 + ex cos 2t + ey sin 2t). */
export type Focus = Point & { readonly ex: number; readonly ey: number };

const CLIP = 9;
const MOST_TILT = 0.2;
const WORTH_A_LOOK = 0.4;
const COARSE = directions(32);
const STEPS = [{ move: 3, tilt: 0.05 }, { move: 1.3, tilt: 0.022 }, { move: 0.6, tilt: 0.01 }];

/** Brightness along each direction (rows) at each whole radius up to `reach` (columns). */
export function unrolled(plane: Plane, { x, y, ex, ey }: Focus, reach: number, around: Directions): Float32Array {
  const rays = new Float32Array(around.count * reach);
  for (let d = 0; d < around.count; d += 1) {
    const stretch = 1 + ex * (around.cosTwice[d] ?? 0) + ey * (around.sinTwice[d] ?? 0);
    const [dx, dy] = [stretch * (around.cos[d] ?? 0), stretch * (around.sin[d] ?? 0)];
    for (let r = 0; r < reach; r += 1) rays[d * reach + r] = sampled(plane, x + r * dx, y + r * dy);
  }
  return rays;
}

/** Mean step outward at each radius; a single bright thing cannot outweigh a ring. */
export function ringEdges(rays: Float32Array, reach: number): Float32Array {
  const edges = new Float32Array(reach);
  const count = rays.length / reach;
  for (let d = 0; d < count; d += 1) {
    for (let r = 1; r < reach - 1; r += 1) {
      const step = ((rays[d * reach + r + 1] ?? 0) - (rays[d * reach + r - 1] ?? 0)) / 2;
      edges[r] = (edges[r] ?? 0) + Math.min(CLIP, Math.max(-CLIP, step)) / count;
    }
  }
  return edges;
}

function sharpness(plane: Plane, focus: Focus, reach: number): number {
  const edges = ringEdges(unrolled(plane, focus, reach, COARSE), reach);
  let sum = 0;
  for (let r = 4; r < reach - 1; r += 1) {
    const edge = (edges[r] ?? 0) + ((edges[r - 1] ?? 0) + (edges[r + 1] ?? 0)) / 2;
    sum += Math.sqrt(r) * edge * edge;
  }
  return sum;
}

/** Of several centres, those around which rings are nearly as sharp as around the best. */
export function sharpestOf(plane: Plane, centres: readonly Point[], reach: number): readonly Point[] {
  const values = centres.map(({ x, y }) => sharpness(plane, { x, y, ex: 0, ey: 0 }, reach));
  const best = Math.max(...values);
  return centres.filter((_, i) => (values[i] ?? 0) > WORTH_A_LOOK * best);
}

const neighbours = (move: number, tilt: number): readonly ((focus: Focus) => Focus)[] =>
  [1, -1].flatMap((sign) => (['x', 'y', 'ex', 'ey'] as const).map((key) => {
    const by = sign * (key === 'x' || key === 'y' ? move : tilt);
    return (focus: Focus): Focus => ({ ...focus, [key]: focus[key] + by });
  }));

/** Moves the centre and presses the circles until the rings are sharpest. */
export function focused(plane: Plane, start: Point, reach: number): Focus {
  let best: Focus = { x: start.x, y: start.y, ex: 0, ey: 0 };
  let value = sharpness(plane, best, reach);
  for (const { move, tilt } of STEPS) {
    for (let round = 0, improved = true; improved && round < 6; round += 1) {
      improved = false;
      for (const trial of neighbours(move, tilt)) {
        const next = trial(best);
        if (Math.hypot(next.ex, next.ey) > MOST_TILT) continue;
        const now = sharpness(plane, next, reach);
        if (now > value) [best, value, improved] = [next, now, true];
      }
    }
  }
  return best;
}
