import type { FacetValue } from '../../../shared/vocabulary/tip.ts';
import { film, apart, beads, crumbs, gloss, stipple, type Work } from './marks.ts';
import { CERAMIC, DEPOSIT_TONE, hex, lit, mixed, SHADOW, SHINE, SOOT, WET, type Tone } from './palette.ts';
import { circle } from './curve.ts';
import { line } from './pen.ts';
import { path, short, type Shape } from './shape.ts';

/** How the skin of the nose looks, on whatever colour it has; without a colour the marks stand on the bare line drawing. */
export function noseSurface(value: FacetValue<'noseSurface'>, work: Work, colour: Tone | undefined): Shape[] {
  const base = colour ?? mixed(CERAMIC, SOOT, 0.35);
  switch (value) {
    case 'bare': return work.site.shines.map((d) => path(d, { ...line(work.pen, 1.6, SHINE), strokeOpacity: 0.75 }));
    case 'fine powder': return [stipple(work, 620, 0.26, lit(base, 1.5), 0.75), stipple(work, 300, 0.24, lit(base, 0.5), 0.6)];
    case 'matt soot': return [film(work, hex(SOOT), 0.62), stipple(work, 520, 0.34, SHADOW, 0.5), stipple(work, 360, 0.22, lit(SOOT, 3), 0.5)];
    case 'wet': return [film(work, hex(WET), 0.3), gloss(work, 0.95), ...wetSpots(work)];
    case 'glossy glaze': return [film(work, hex(DEPOSIT_TONE.glaze), colour ? 0.3 : 0.6), gloss(work, 0.75), gloss(work, 0.35)];
    case 'crust': return crumbs(work, 150, 0.95, base);
    case 'blistered': return blisters(work, base);
    case 'fused spots': return fusedSpots(work, base);
  }
}

function wetSpots(work: Work): Shape[] {
  const spots = apart(work, 16).map((point) => circle(work.pen.coarse * work.site.grain * work.luck.between(0.25, 0.6), point));
  return [path(spots.join(''), { fill: SHINE, fillOpacity: 0.85 })];
}

function blisters(work: Work, base: Tone): Shape[] {
  const size = work.pen.coarse * work.site.grain;
  const round = apart(work, 52).map((point) => [point, size * work.luck.between(0.7, 1.6)] as const);
  const layer = (share: number, shift: number): string => round.map(([[x, y], r]) => circle(r * share, [x - r * shift, y - r * shift])).join('');
  return [
    path(layer(1, 0), { fill: lit(base, 0.8), stroke: lit(base, 0.34), strokeWidth: short(size * 0.24) }),
    path(layer(0.62, 0.21), { fill: lit(base, 1.18) }),
    path(layer(0.24, 0.32), { fill: SHINE }),
  ];
}

function fusedSpots(work: Work, base: Tone): Shape[] {
  const glass = mixed(base, DEPOSIT_TONE.glaze, 0.75);
  const spots = apart(work, 17);
  const halos = spots.map((point) => circle(work.pen.coarse * work.site.grain * 1.9, point)).join('');
  return [path(halos, { fill: lit(glass, 0.3), fillOpacity: 0.55 }), ...beads(work, spots, 1.35, glass)];
}
