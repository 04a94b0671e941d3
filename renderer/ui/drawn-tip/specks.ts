import type { FacetValue } from '../../../shared/vocabulary/tip.ts';
import { blob } from './curve.ts';
import { beads, noneSign, type Work } from './marks.ts';
import { hex, lit, NICKEL, SHADOW, SHINE, tone } from './palette.ts';
import { disc, group, path, type Point, type Shape } from './shape.ts';
import { scattered } from './site.ts';

const GREY_METAL = tone([42, 0, -3]);

/** Single grains on the nose: what detonation throws off a piston, what an additive leaves. */
export function specks(value: FacetValue<'specks'>, work: Work): Shape[] {
  const { site, pen, luck } = work;
  const spots = (count: number): Point[] => scattered(site, Math.ceil(count / pen.coarse ** 1.2), luck);
  const size = site.grain * pen.coarse;
  switch (value) {
    case 'none': return [noneSign(pen, site.signs[1])];
    case 'dark pepper': return [path(spots(60).map((p) => blob(p, size * luck.between(0.28, 0.62), 0.3, luck, 6)).join(''), { fill: SHADOW })];
    case 'shiny beads': return beads(work, spots(22), 0.95, NICKEL);
    case 'grey metallic': return spots(30).map((p) => {
      const r = size * luck.between(0.65, 1.2);
      const flake = blob(p, r, 0.35, luck, 6);
      return group({}, [
        path(flake, { fill: SHADOW, fillOpacity: 0.6, transform: `translate(${r * 0.22} ${r * 0.26})` }),
        path(flake, { fill: hex(GREY_METAL), stroke: lit(GREY_METAL, 0.2), strokeWidth: r * 0.16 }),
        disc(p[0] - r * 0.25, p[1] - r * 0.25, r * 0.22, { fill: SHINE, fillOpacity: 0.8 }),
      ]);
    });
  }
}
