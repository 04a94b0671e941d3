import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { blob, loop, polygon } from '../curve.ts';
import { noneSign } from '../marks.ts';
import { BLUE_TEMPER, DEPTH, FRESH_BREAK, hex, lit, NICKEL, PURPLE_TEMPER, SHADOW, SHINE, STRAW_TEMPER } from '../palette.ts';
import { chalk, dashes, hair, ink, line, luckOf, nameOf, use, type Pen } from '../pen.ts';
import { clip, disc, group, linearGradient, path, type Point, type Shape, type Stop } from '../shape.ts';
import { heatStops } from '../temper.ts';
import { AXIS, HALF, X } from './frame.ts';

const [left, right, h] = [X.electrode, X.nose, HALF.electrode];
function bar(corner: number): string {
  const [top, bottom] = [AXIS - h, AXIS + h];
  return `M${right} ${top}H${left + corner}Q${left} ${top} ${left} ${top + corner}V${bottom - corner}Q${left} ${bottom} ${left + corner} ${bottom}H${right}Z`;
}

/** The centre electrode from the side. */
export function centreElectrode(value: FacetValue<'centreElectrode'> | undefined, pen: Pen): Shape[] {
  switch (value) {
    case undefined: return [path(bar(0), chalk(pen))];
    case 'sharp': return metal(bar(0), pen, STEELY);
    case 'lightly worn': return [...metal(bar(3.5), pen, STEELY), path(`M${left + 1.4} ${AXIS - 5}v10`, { ...line(pen, 2, SHINE), strokeOpacity: 0.8 })];
    case 'rounded': return metal(bar(9.8), pen, STEELY);
    case 'eroded': return metal(polygon([
      [right, AXIS - h],
      [right - 3, AXIS - h],
      [left + 9, AXIS - 6],
      [left + 7, AXIS - 2],
      [left + 9, AXIS + 1],
      [left + 8, AXIS + 5],
      [right - 4, AXIS + h - 1],
      [right, AXIS + h],
    ]), pen, STEELY);
    case 'pitted': return [...metal(bar(0.5), pen, STEELY), ...pits([left + 1, left + 12], [AXIS - 8, AXIS + 8], 9, pen)];
    case 'blued': return metal(bar(1), pen, BLUED);
    case 'blistered': return [...metal(bar(1), pen, STEELY), ...bumps(pen)];
    case 'melted': return melted(pen);
    case 'missing': return [
      path(bar(0), { ...chalk(pen), strokeDasharray: dashes(pen, 3, 3) }),
      path(`M${right} ${AXIS - h}h14v${2 * h}h-14z`, { fill: lit(DEPTH, 0.4) }),
      path(`M${right} ${AXIS - h}h14M${right} ${AXIS + h}h14`, ink(pen)),
    ];
  }
}

const STEELY: readonly Stop[] = [[0, lit(NICKEL, 0.7)], [0.3, lit(NICKEL, 1.35)], [0.6, lit(NICKEL, 0.9)], [1, lit(NICKEL, 0.4)]];
const BLUED: readonly Stop[] = [[0, lit(BLUE_TEMPER, 0.8)], [0.3, lit(BLUE_TEMPER, 1.6)], [0.6, hex(PURPLE_TEMPER)], [1, lit(STRAW_TEMPER, 0.6)]];

function metal(d: string, pen: Pen, list: readonly Stop[]): Shape[] {
  return [linearGradient(nameOf(pen, 'centre'), list, [0, AXIS - h], [0, AXIS + h]), path(d, { fill: use(pen, 'centre') }), path(d, ink(pen))];
}

function pits([x0, x1]: Point, [y0, y1]: Point, count: number, pen: Pen): Shape[] {
  const luck = luckOf(pen, `pits ${x0}`);
  return Array.from({ length: count }, () =>
    disc(luck.between(x0, x1), luck.between(y0, y1), luck.between(0.9, 1.8), { fill: SHADOW, stroke: SHINE, strokeWidth: 0.4, strokeOpacity: 0.8 }));
}

function bumps(pen: Pen): Shape[] {
  return [[left, -7, 3.6], [left - 1, 1, 4.2], [left + 1, 8, 3.4], [left + 7, -10, 3], [left + 8, 10, 3.4]].flatMap(([x = 0, y = 0, r = 0]) =>
    [
      disc(x, AXIS + y, r, { fill: lit(NICKEL, 0.75), stroke: SHADOW, strokeWidth: line(pen, 1).strokeWidth as number }),
      disc(x - r * 0.25, AXIS + y - r * 0.3, r * 0.45, { fill: lit(NICKEL, 1.6) }),
    ]);
}

function melted(pen: Pen): Shape[] {
  const body = loop([
    [right, AXIS - h],
    [right - 7, AXIS - h - 2],
    [left + 6, AXIS - 5],
    [left + 8, AXIS + 4],
    [left + 1, AXIS + 11],
    [left + 7, AXIS + 17],
    [right - 3, AXIS + h + 3],
    [right, AXIS + h],
  ]);
  return [
    ...metal(body, pen, STEELY),
    path(`M${left + 9} ${AXIS - 5}q3 -5 6 -4M${left + 5} ${AXIS + 12}q3 2 6 0`, { ...line(pen, 1.8, SHINE), strokeOpacity: 0.9 }),
  ];
}

type Ground = FacetValue<'groundElectrode'>;

/** The ground electrode from the side: out of the rim, over the nose, down past the centre electrode. */
export function strap(tip: Tip, pen: Pen): Shape[] {
  const ground = tip.groundElectrode;
  const closed = tip.contact === 'closed by piston';
  const d = strapOutline(ground, closed);
  if (ground === undefined && tip.heatLine === undefined && !closed) return [path(d, chalk(pen))];
  return [
    clip(nameOf(pen, 'strap'), d),
    linearGradient(nameOf(pen, 'strap-metal'), heatStops(ground, tip.heatLine), [12, AXIS + 24], [96, 32]),
    path(d, { fill: use(pen, 'strap-metal') }),
    group({ clipPath: use(pen, 'strap') }, [
      path('M96 34H42Q24 34 23 54V118', { ...line(pen, 3, SHINE), strokeOpacity: 0.35 }),
      path('M96 44H45Q31 46 31.5 58V118', { ...line(pen, 3, SHADOW), strokeOpacity: 0.35 }),
      ...(ground === 'pitted' ? pits([25, 33], [82, 113], 12, pen) : []),
      ...(ground === 'lightly worn' ? [path('M32 88V110', { ...line(pen, 2.4, SHINE), strokeOpacity: 0.85 })] : []),
    ]),
    path(d, ground === undefined ? hair(pen) : ink(pen)),
    ...(tip.heatLine === 'none visible' ? [noneSign(pen, [26, 64])] : []),
    ...(ground === 'melted' ? meltedEnd(pen) : []),
    ...(ground === 'broken off' ? [path(polygon(BREAK), { fill: hex(FRESH_BREAK), stroke: SHADOW, strokeWidth: 0.8 })] : []),
    ...(closed ? [path('M14 84l-8 -6M13 96h-10M14 108l-8 6', line(pen, 1.8, SHINE))] : []),
  ];
}

const BREAK: readonly Point[] = [[56, 32], [52, 36], [55, 39], [51, 42], [55, 45], [60, 45], [58, 41], [61, 38], [58, 35], [60, 32]];
const TOP = 'M90 32H42Q20 32 20 54';
const UNDER = 'V58Q33 45 45 45H90Z';

function strapOutline(ground: Ground | undefined, closed: boolean): string {
  switch (ground) {
    case 'broken off': return polygon([[90, 32], ...BREAK.slice(0, 5), [90, 45]]);
    case 'melted': return `${TOP}V72C20 84 32 84 33 74${UNDER}`;
    default:
  }
  if (closed) return 'M90 32H46Q28 32 29 52L31 114H44V62Q42 46 52 45H90Z';
  switch (ground) {
    case 'lightly worn': return `${TOP}V109Q20 114 25 114Q33 114 33 104${UNDER}`;
    case 'worn thin': return `${TOP}V114H25.5L25 96L27 78Q33 66 33 60${UNDER}`;
    case 'hollowed underneath': return `${TOP}V114H33V112Q24.5 108 24.5 100Q24.5 92 33 87${UNDER}`;
    case 'bent': return 'M90 32H44Q24 30 18 50L2 104L14 109L30 58Q34 45 45 45H90Z';
    default: return `${TOP}V114H33${UNDER}`;
  }
}

function meltedEnd(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'strap side');
  return [
    path(blob([26.5, 78], 9.5, 0.14, luck, 8), { fill: lit(NICKEL, 0.65), stroke: SHADOW, strokeWidth: line(pen, 1.1).strokeWidth as number }),
    path(blob([25, 76], 5.4, 0.14, luck, 8), { fill: lit(NICKEL, 1.2) }),
    path('M21 75q2 -5 7 -4', line(pen, 1.8, SHINE)),
    disc(27, 93, 2.6, { fill: lit(NICKEL, 0.9), stroke: SHADOW, strokeWidth: 0.8 }),
  ];
}
