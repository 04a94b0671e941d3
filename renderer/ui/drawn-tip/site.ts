import type { FacetValue } from '../../../shared/vocabulary/tip.ts';
import type { Chance } from './chance.ts';
import { blob, loop } from './curve.ts';
import { luckOf, type Pen } from './pen.ts';
import type { Point } from './shape.ts';

/** A surface that things can lie on, in either view. */
export type Site = {
  readonly name: string;
  readonly outline: string;
  readonly inside: (point: Point) => boolean;
  /** The middle of the surface, and how far its edges are from there. */
  readonly middle: Point;
  readonly reach: number;
  /** How wide it is where it is narrow: patches are drawn to this measure. */
  readonly breadth: number;
  /** The size of a grain that lies well on this surface, in drawing units. */
  readonly grain: number;
  /** Where a wet surface would mirror the lamp. */
  readonly shines: readonly string[];
  /** Points of its one side, for what lies on one side only; the way out of the middle of that side. */
  readonly side: Point;
  /** Where the signs 'no deposit' and 'no specks' stand. */
  readonly signs: readonly [Point, Point];
};

export type Coverage = FacetValue<'coverage'>;

/** The part of a surface that something covers. */
export type Spread = { readonly outline: string; readonly rule: 'nonzero' | 'evenodd'; readonly holds: (point: Point) => boolean };

/** Any point of the surface, each as likely as the other. */
export function somewhere(site: Site, luck: Chance): Point {
  for (let i = 0; i < 60; i += 1) {
    const point = [site.middle[0] + site.reach * luck.between(-1, 1), site.middle[1] + site.reach * luck.between(-1, 1)] as const;
    if (site.inside(point)) return point;
  }
  return site.middle;
}

const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Points that keep their distance from each other: of a few tries the one farthest from the rest. */
export function scattered(site: Site, count: number, luck: Chance): Point[] {
  const found: Point[] = [];
  while (found.length < count) {
    const tries = Array.from({ length: 8 }, () => somewhere(site, luck));
    const lonely = (point: Point): number => Math.min(1e6, ...found.map((other) => apart(point, other)));
    found.push(tries.reduce((best, point) => (lonely(point) > lonely(best) ? point : best)));
  }
  return found;
}

function islands(site: Site, pen: Pen, count: number, size: number): Spread {
  const luck = luckOf(pen, `islands ${site.name}`);
  const places = scattered(site, count, luck).map((centre) => ({ centre, radius: size * site.breadth * luck.between(0.75, 1.2) }));
  return {
    rule: 'nonzero',
    outline: places.map(({ centre, radius }) => blob(centre, radius, 0.28, luck, 11)).join(''),
    holds: (point) => places.some(({ centre, radius }) => apart(centre, point) < radius * 0.92),
  };
}

function oneSide(site: Site, pen: Pen): Spread {
  const luck = luckOf(pen, `one side ${site.name}`);
  const [sx, sy] = site.side;
  const along = (t: number, out: number): Point => [site.middle[0] - sy * t * site.reach + sx * out, site.middle[1] + sx * t * site.reach + sy * out];
  const shore = Array.from({ length: 9 }, (_, i) => along(-1.15 + (2.3 * i) / 8, site.grain * luck.between(-1, 1.6)));
  const beyond = [along(1.5, site.reach * 0.9), along(0, site.reach * 1.7), along(-1.5, site.reach * 0.9)];
  return {
    rule: 'nonzero',
    outline: loop([...shore, ...beyond]),
    holds: (point) => (point[0] - site.middle[0]) * sx + (point[1] - site.middle[1]) * sy > site.grain * 0.6,
  };
}

const NOWHERE: Spread = { rule: 'nonzero', outline: '', holds: () => false };

/** How a coverage lies on a surface. */
export function spreadOver(site: Site, coverage: Coverage, pen: Pen): Spread {
  switch (coverage) {
    case 'none': return NOWHERE;
    case 'light': return islands(site, pen, 6, 0.17);
    case 'partial': return islands(site, pen, 8, 0.34);
    case 'one-sided': return oneSide(site, pen);
    case 'full': return { rule: 'evenodd', outline: site.outline, holds: site.inside };
  }
}
