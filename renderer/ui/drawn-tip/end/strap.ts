import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { blob, polygon } from '../curve.ts';
import { noneSign } from '../marks.ts';
import { FRESH_BREAK, hex, lit, NICKEL, SHADOW, SHINE } from '../palette.ts';
import { chalk, dashes, hair, ink, line, luckOf, nameOf, use, type Pen } from '../pen.ts';
import { clip, disc, group, linearGradient, path, type Point, type Shape } from '../shape.ts';
import { heatStops } from '../temper.ts';
import { STRAP } from './frame.ts';

type Ground = FacetValue<'groundElectrode'>;
const { foot, half } = STRAP;

/** The ground electrode, end on: its shape from its own facet, its colours from the heat line, its end from what struck it. */
export function strap(tip: Tip, pen: Pen): Shape[] {
  const ground = tip.groundElectrode;
  const seen = ground !== undefined || tip.heatLine !== undefined || tip.contact === 'closed by piston';
  const d = strapOutline(ground, tip.contact === 'closed by piston');
  if (!seen) return [path(d, chalk(pen))];
  return [
    group({ fill: SHADOW, stroke: 'none', transform: 'translate(2.4 3)' }, [
      path(d, { fillOpacity: 0.22 }),
      path(d, { fillOpacity: 0.16, transform: 'translate(1.4 1.6)' }),
    ]),
    clip(nameOf(pen, 'strap'), d),
    linearGradient(nameOf(pen, 'strap-metal'), heatStops(ground, tip.heatLine), [0, tipEnd(ground)], [0, foot]),
    path(d, { fill: use(pen, 'strap-metal') }),
    group({ clipPath: use(pen, 'strap') }, [...bevel(), ...(ground ? wear(ground, pen) : [])]),
    path(d, ground === undefined ? hair(pen) : ink(pen)),
    ...(tip.heatLine === 'none visible' ? [noneSign(pen, [0, -48])] : []),
    ...(ground === 'melted' ? meltedEnd(pen) : []),
    ...(ground === 'hollowed underneath' ? hollow(pen) : []),
    ...(ground === 'broken off' ? [path(polygon(BREAK), { fill: hex(FRESH_BREAK), stroke: SHADOW, strokeWidth: 0.8 })] : []),
  ];
}

const tipEnd = (ground: Ground | undefined): number => (ground === 'melted' ? -26 : ground === 'broken off' ? -56 : STRAP.tip);

const BREAK: readonly Point[] = [[-half, -58], [-6, -53], [-3, -57], [2, -51], [6, -56], [half, -52], [half, -57], [5, -61], [0, -57], [-5, -60]];

function strapOutline(ground: Ground | undefined, closed: boolean): string {
  const end = closed && ground !== 'broken off' && ground !== 'melted' ? 12 : tipEnd(ground);
  const wide = closed ? half + 3 : half;
  switch (ground) {
    case 'lightly worn': return `M${-half} ${foot}V${end - 5}Q${-wide} ${end} ${-wide + 6} ${end}H${wide - 6}Q${wide} ${end} ${half} ${end - 5}V${foot}Z`;
    case 'worn thin': return polygon([
      [-half, foot],
      [-half, -56],
      [-4.6, end - 6],
      [-3.6, end - 3],
      [3.6, end - 3],
      [4.6, end - 6],
      [half, -56],
      [half, foot],
    ]);
    case 'bent': return polygon([[-half, foot], [-half, -58], [-2, -38], [-19, end + 2], [-1, end + 10], [19, -34], [half, -60], [half, foot]]);
    case 'broken off': return polygon([[-half, foot], ...BREAK.slice(0, 6), [half, foot]]);
    case 'melted': return `M${-half} ${foot}V-52C${-half} -40 -8 -38 -9 -30Q0 -22 9 -30C8 -38 ${half} -40 ${half} -52V${foot}Z`;
    default: return polygon([[-half, foot], [-half, -40], [-wide, end - 8], [-wide, end], [wide, end], [wide, end - 8], [half, -40], [half, foot]]);
  }
}

/** The bar is square: lit along its left edge, shaded along its right. */
function bevel(): Shape[] {
  return [
    path(`M${-half} ${foot}h4v100h-4z`, { fill: SHINE, fillOpacity: 0.3 }),
    path(`M${half - 4} ${foot}h4v100h-4z`, { fill: SHADOW, fillOpacity: 0.32 }),
    path(`M-30 ${STRAP.bend - 9}h60v7h-60z`, { fill: SHINE, fillOpacity: 0.3 }),
    path(`M-30 ${STRAP.bend - 17}h60v8h-60z`, { fill: SHADOW, fillOpacity: 0.35 }),
  ];
}

function wear(ground: Ground, pen: Pen): Shape[] {
  const luck = luckOf(pen, 'strap');
  switch (ground) {
    case 'as new': return [path(`M${-half} ${STRAP.tip - 3}h${2 * half}`, hair(pen))];
    case 'lightly worn': return [path(`M-9 ${STRAP.tip - 1.6}h18`, { ...line(pen, 2.2, SHINE), strokeOpacity: 0.85 })];
    case 'pitted': return Array.from({ length: 15 }, () =>
      disc(luck.between(-9, 9), luck.between(-37, -17), luck.between(0.9, 2.2), { fill: SHADOW, stroke: SHINE, strokeWidth: 0.4, strokeOpacity: 0.7 }));
    case 'bent': return [path('M-8 -54L12 -40', { ...line(pen, 2), stroke: SHADOW, strokeOpacity: 0.5 })];
    default: return [];
  }
}

function meltedEnd(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'strap');
  return [
    path(blob([0, -29], 13, 0.16, luck, 8), { fill: lit(NICKEL, 0.62), stroke: SHADOW, strokeWidth: line(pen, 1.1).strokeWidth as number }),
    path(blob([-2, -32], 8, 0.14, luck, 8), { fill: lit(NICKEL, 1.15) }),
    path('M-8 -33q4 -6 10 -4', { ...line(pen, 1.8, SHINE) }),
    disc(11, -17, 3, { fill: lit(NICKEL, 0.9), stroke: SHADOW, strokeWidth: 0.8 }),
  ];
}

/** What lies underneath is drawn as a hidden line. */
const hollow = (pen: Pen): Shape[] => [
  path(`M${-half + 1.5} ${STRAP.tip - 1}Q0 ${STRAP.tip - 26} ${half - 1.5} ${STRAP.tip - 1}Z`, {
    ...line(pen, 1.2, SHINE), fill: SHADOW, fillOpacity: 0.5, strokeDasharray: dashes(pen, 3, 2.4),
  }),
];
