import type { Chance } from './chance.ts';
import { blob, circle, polyline, stone } from './curve.ts';
import { CHALK, hex, INK, lit, SHADOW, SHINE, type Tone } from './palette.ts';
import { line, type Pen } from './pen.ts';
import { disc, group, path, short, type Attrs, type Point, type Shape } from './shape.ts';
import { scattered, somewhere, type Site, type Spread } from './site.ts';

/** Where marks go and whose luck places them. */
export type Work = { readonly site: Site; readonly spread: Spread; readonly pen: Pen; readonly luck: Chance };

/** Small pictures get fewer and larger marks. */
const many = ({ pen }: Work, count: number): number => Math.ceil(count / pen.coarse ** 1.6);
const large = ({ pen, site }: Work, size: number): number => size * site.grain * pen.coarse;

/** Of so many points of the whole surface those that the covered part holds. */
export function places(work: Work, count: number): Point[] {
  const points = Array.from({ length: many(work, count) }, () => somewhere(work.site, work.luck));
  return points.filter(work.spread.holds);
}

/** The same for things that keep apart from each other. */
export const apart = (work: Work, count: number): Point[] => scattered(work.site, many(work, count), work.luck).filter(work.spread.holds);

export const film = ({ spread }: Work, fill: string, fillOpacity = 1): Shape =>
  path(spread.outline, { fill, fillOpacity, fillRule: spread.rule, stroke: 'none' });

export const edge = ({ spread }: Work, attrs: Attrs): Shape => path(spread.outline, attrs);

/** Many marks of one paint are one path: a page holds dozens of drawings. */
export function stipple(work: Work, count: number, size: number, fill: string, fillOpacity = 1): Shape {
  const dots = places(work, count).map((point) => circle(large(work, size) * work.luck.between(0.5, 1.3), point));
  return path(dots.join(''), { fill, fillOpacity, stroke: 'none' });
}

const CRUMB_TONES = [0.74, 0.88, 1, 1.12] as const;

/** Crumbs with a lit and a shaded side. */
export function crumbs(work: Work, count: number, size: number, colour: Tone): Shape[] {
  const shapes = places(work, count).map((point) => stone(point, large(work, size) * work.luck.between(0.6, 1.4), 0.3, work.luck));
  const shade = large(work, size) * 0.3;
  return CRUMB_TONES.flatMap((light, tone) => {
    const some = shapes.filter((_, i) => i % CRUMB_TONES.length === tone).join('');
    return [path(some, { fill: SHADOW, fillOpacity: 0.45, transform: `translate(${short(shade)} ${short(shade * 1.2)})` }), path(some, { fill: lit(colour, light) })];
  });
}

/** Circles about points, shifted and sized by shares of each point's radius. */
const discs = (round: readonly (readonly [Point, number])[], dx: number, dy: number, share: number): string =>
  round.map(([[x, y], radius]) => circle(radius * share, [x + radius * dx, y + radius * dy])).join('');

/** Round drops that stand on the surface: beads of lead, balls of metal. */
export function beads(work: Work, points: readonly Point[], size: number, colour: Tone): Shape[] {
  const round = points.map((point) => [point, large(work, size) * work.luck.between(0.7, 1.35)] as const);
  return [
    path(discs(round, 0.25, 0.35, 1), { fill: SHADOW, fillOpacity: 0.5 }),
    path(discs(round, 0, 0, 1), { fill: lit(colour, 0.62) }),
    path(discs(round, -0.16, -0.18, 0.76), { fill: hex(colour) }),
    path(discs(round, -0.34, -0.38, 0.28), { fill: SHINE, fillOpacity: 0.95 }),
  ];
}

/** Clear drops: a dark foot, a bright crescent, the ground showing through. */
export function drops(work: Work, points: readonly Point[], size: number, colour: Tone): Shape[] {
  const round = points.map((point) => [point, large(work, size) * work.luck.between(0.6, 1.4)] as const);
  const bodies = round.map(([point, radius]) => blob(point, radius, 0.08, work.luck, 7)).join('');
  return [
    path(bodies, { fill: hex(colour), fillOpacity: 0.55, stroke: lit(colour, 0.25), strokeWidth: short(large(work, size) * 0.14), strokeOpacity: 0.8 }),
    path(discs(round, 0.2, 0.26, 0.5), { fill: SHINE, fillOpacity: 0.28 }),
    path(discs(round, -0.36, -0.36, 0.22), { fill: SHINE }),
  ];
}

/** Broad and faint below, narrow and bright on top: the edge of a mirrored lamp is soft. */
const GLEAM = [[2.9, 0.08], [2.1, 0.14], [1.3, 0.3], [0.6, 0.95]] as const;

/** The lamp mirrored in something wet or glassy. */
export function gloss({ site, pen }: Work, strength: number): Shape {
  const wide = site.grain * 1.25 * pen.coarse ** 0.8;
  const gleam = site.shines.flatMap((d) => GLEAM.map(([width, opacity]) =>
    path(d, { strokeWidth: short(wide * width), strokeOpacity: short(opacity * strength) })));
  return group({ fill: 'none', stroke: SHINE, strokeLinecap: 'round' }, gleam);
}

/** Slanting strokes over something of which only the amount, or only the family, is known. */
export function hatch(work: Work, pixels: number, stroke: string = INK, opacity = 0.7): Shape {
  const { site, spread, pen } = work;
  const step = Math.max(site.grain * 1.5, pen.unit * 4);
  const half = step * 0.55;
  const ticks: string[] = [];
  for (let x = -site.reach; x <= site.reach; x += step) {
    for (let y = -site.reach; y <= site.reach; y += step) {
      const here: Point = [site.middle[0] + x, site.middle[1] + y];
      if (site.inside(here) && spread.holds(here)) ticks.push(polyline([[here[0] - half, here[1] + half], [here[0] + half, here[1] - half]]));
    }
  }
  return path(ticks.join(''), { ...line(pen, pixels, stroke), strokeOpacity: opacity });
}

/** The sign for 'looked for, none': a small open circle where the thing would be. */
export const noneSign = (pen: Pen, [x, y]: Point): Shape => disc(x, y, 3.2 * pen.unit, { ...line(pen, 1.1, CHALK), fill: INK, fillOpacity: 0.55 });
