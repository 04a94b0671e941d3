import type { Chance } from './chance.ts';
import { short, type Point } from './shape.ts';

const at = ([x, y]: Point): string => `${short(x)} ${short(y)}`;

export const polar = (radius: number, turn: number, centre: Point = [0, 0]): Point =>
  [centre[0] + radius * Math.cos(2 * Math.PI * turn), centre[1] + radius * Math.sin(2 * Math.PI * turn)];

export const polyline = (points: readonly Point[]): string => (points.length === 0 ? '' : `M${points.map(at).join('L')}`);
export const polygon = (points: readonly Point[]): string => `${polyline(points)}Z`;

/** A closed curve through all points (Catmull-Rom, written as Béziers). */
export function loop(points: readonly Point[]): string {
  const n = points.length;
  const p = (i: number): Point => points[(i + n) % n] ?? [0, 0];
  const pieces = points.map((_, i) => {
    const [a, b, c, d] = [p(i - 1), p(i), p(i + 1), p(i + 2)];
    return `C${at([b[0] + (c[0] - a[0]) / 6, b[1] + (c[1] - a[1]) / 6])} ${at([c[0] - (d[0] - b[0]) / 6, c[1] - (d[1] - b[1]) / 6])} ${at(c)}`;
  });
  return `M${at(p(0))}${pieces.join('')}Z`;
}

export function circle(radius: number, [x, y]: Point = [0, 0]): string {
  const r = short(radius);
  return `M${at([x - radius, y])}a${r} ${r} 0 1 0 ${short(2 * radius)} 0a${r} ${r} 0 1 0 ${short(-2 * radius)} 0Z`;
}

/** A ring; draw it with the even-odd rule. */
export const ring = (inner: number, outer: number): string => `${circle(outer)}${circle(inner)}`;

export function arc(radius: number, from: number, to: number, centre: Point = [0, 0]): string {
  const large = to - from > 0.5 ? 1 : 0;
  return `M${at(polar(radius, from, centre))}A${short(radius)} ${short(radius)} 0 ${large} 1 ${at(polar(radius, to, centre))}`;
}

/** A lumpy outline about a point: `unrest` is the share by which the radius wanders. */
export function blob(centre: Point, radius: number, unrest: number, luck: Chance, corners = 9): string {
  return loop(lump(centre, radius, unrest, luck, corners));
}

/** A stone's outline: as a blob, with edges. */
export const stone = (centre: Point, radius: number, unrest: number, luck: Chance, corners = 6): string => polygon(lump(centre, radius, unrest, luck, corners));

function lump(centre: Point, radius: number, unrest: number, luck: Chance, corners: number): Point[] {
  const start = luck.next();
  return Array.from({ length: corners }, (_, i) => polar(radius * (1 + unrest * luck.between(-1, 1)), start + (i + luck.between(-0.2, 0.2)) / corners, centre));
}

/** A line that breaks on its way as a crack does. */
export function jagged(from: Point, to: Point, unrest: number, luck: Chance, pieces = 6): Point[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return Array.from({ length: pieces + 1 }, (_, i) => {
    const share = i / pieces;
    const aside = i === 0 || i === pieces ? 0 : unrest * luck.between(-1, 1);
    return [from[0] + dx * share - dy * aside, from[1] + dy * share + dx * aside] as const;
  });
}
