import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { arc, blob, circle } from '../curve.ts';
import { BLUE_TEMPER, DEPTH, hex, lit, NICKEL, PURPLE_TEMPER, SHADOW, SHINE, STRAW_TEMPER } from '../palette.ts';
import { chalk, hair, ink, line, luckOf, nameOf, use, type Pen } from '../pen.ts';
import { disc, linearGradient, path, radialGradient, type Shape, type Stop } from '../shape.ts';
import { R } from './frame.ts';

const r = R.electrode;

/** The centre electrode, end on. */
export function centreElectrode(value: FacetValue<'centreElectrode'> | undefined, pen: Pen): Shape[] {
  switch (value) {
    case undefined: return [path(circle(r), chalk(pen))];
    case 'sharp': return [...flat(pen, r), path(circle(r), ink(pen)), path(circle(r - 2.6), hair(pen))];
    case 'lightly worn': return [...flat(pen, r), path(circle(r), ink(pen)), path(arc(r - 2.4, 0.06, 0.44), { ...line(pen, 2, SHINE), strokeOpacity: 0.8 })];
    case 'rounded': return [
      ...dome(pen, r, [[0, SHINE], [0.3, lit(NICKEL, 1.2)], [0.75, lit(NICKEL, 0.55)], [1, lit(NICKEL, 0.2)]]),
      path(circle(r), hair(pen)),
    ];
    case 'eroded': return eroded(pen);
    case 'pitted': return pitted(pen);
    case 'blued': return [
      ...dome(pen, r, [[0, hex(STRAW_TEMPER)], [0.42, hex(PURPLE_TEMPER)], [0.75, hex(BLUE_TEMPER)], [1, lit(BLUE_TEMPER, 0.45)]]),
      path(circle(r), ink(pen)),
    ];
    case 'blistered': return blistered(pen);
    case 'melted': return melted(pen);
    case 'missing': return missing(pen);
  }
}

function flat(pen: Pen, radius: number): Shape[] {
  return [
    linearGradient(nameOf(pen, 'centre'), [[0, lit(NICKEL, 1.4)], [0.5, hex(NICKEL)], [1, lit(NICKEL, 0.6)]], [-radius, -radius], [radius, radius]),
    disc(0, 0, radius, { fill: use(pen, 'centre') }),
  ];
}

function dome(pen: Pen, radius: number, list: readonly Stop[]): Shape[] {
  return [
    radialGradient(nameOf(pen, 'centre'), list, { cx: -radius * 0.28, cy: -radius * 0.34, r: radius * 1.35 }),
    disc(0, 0, radius, { fill: use(pen, 'centre') }),
  ];
}

function eroded(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'centre');
  const left = blob([0.8, 0.6], 6.6, 0.28, luck, 10);
  return [disc(0, 0, r, { fill: lit(DEPTH, 0.5) }), ...flat(pen, 0), path(left, { fill: hex(NICKEL), ...edge(pen) }), path(circle(r), ink(pen))];
}

function pitted(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'centre');
  const pits = Array.from({ length: 11 }, (_, i) => {
    const turn = i * 2.4;
    const out = (r - 2.6) * Math.sqrt((i + 0.5) / 11);
    return disc(out * Math.cos(turn), out * Math.sin(turn), luck.between(0.9, 1.9), { fill: SHADOW, stroke: SHINE, strokeWidth: 0.35, strokeOpacity: 0.8 });
  });
  return [...flat(pen, r), ...pits, path(circle(r), ink(pen))];
}

function blistered(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'centre');
  const bumps = Array.from({ length: 9 }, (_, i) => {
    const out = i === 0 ? 0 : luck.between(6.5, 10.5);
    const size = luck.between(2.8, 4.4);
    const [x, y] = [out * Math.cos(i * 0.785), out * Math.sin(i * 0.785)];
    return [disc(x, y, size, { fill: lit(NICKEL, 0.7), ...edge(pen) }), disc(x - size * 0.25, y - size * 0.28, size * 0.45, { fill: lit(NICKEL, 1.5) })];
  });
  return [...flat(pen, r), path(circle(r), ink(pen)), ...bumps.flat()];
}

function melted(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'centre');
  return [
    radialGradient(nameOf(pen, 'centre'), [[0, SHINE], [0.35, lit(NICKEL, 1.05)], [1, lit(NICKEL, 0.3)]], { cx: -4, cy: -5, r: 19 }),
    path(blob([2, 3], 14.5, 0.3, luck, 7), { fill: use(pen, 'centre'), ...edge(pen) }),
    path(blob([14, 13], 3.6, 0.2, luck, 6), { fill: use(pen, 'centre'), ...edge(pen) }),
    path('M-6 -4q3 -5 8 -4M-2 9q5 2 9 -2', { ...line(pen, 1.6, SHINE), strokeOpacity: 0.9 }),
  ];
}

function missing(pen: Pen): Shape[] {
  return [
    radialGradient(nameOf(pen, 'centre'), [[0, SHADOW], [0.7, SHADOW], [1, lit(DEPTH, 2.2)]], { cx: 2, cy: 2.5, r: r * 1.1 }),
    disc(0, 0, r, { fill: use(pen, 'centre') }),
    path(circle(r), ink(pen)),
    path(arc(r - 1, 0.02, 0.42), { ...line(pen, 1.2, SHINE), strokeOpacity: 0.6 }),
  ];
}

const edge = (pen: Pen) => ({ stroke: SHADOW, strokeWidth: line(pen, 1).strokeWidth as number });
