import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { jagged, polygon, polyline } from '../curve.ts';
import { deposit, unnamedCover } from '../deposits.ts';
import { noneSign, type Work } from '../marks.ts';
import { noseSurface } from '../nose-surface.ts';
import { DEPTH, FRESH_BREAK, GROUND, hex, lit, NICKEL, SHADOW, SHINE, SOOT } from '../palette.ts';
import { chalk, dashes, hair, ink, line, luckOf, nameOf, noseTone, outline, use, type Pen } from '../pen.ts';
import { clip, group, linearGradient, path, type Point, type Shape } from '../shape.ts';
import { specks } from '../specks.ts';
import { spreadOver, type Coverage } from '../site.ts';
import { AXIS, HALF, NOSE_SITE, X, noseHalf } from './frame.ts';

/** The nose from the side, and the space round it in the cut. */
export function nose(tip: Tip, pen: Pen): Shape[] {
  const colour = noseTone(tip, pen);
  const on = (part: string, coverage: Coverage): Work =>
    ({ site: NOSE_SITE, spread: spreadOver(NOSE_SITE, coverage, pen), pen, luck: luckOf(pen, `nose side ${part}`) });
  const seen = colour !== undefined || tip.noseSurface !== undefined;
  return [
    clip(nameOf(pen, 'nose'), NOSE_SITE.outline),
    ...(seen || tip.sootRing !== undefined ? cavity() : []),
    ...(colour ? [
      linearGradient(nameOf(pen, 'nose-body'), [
        [0, lit(colour, 0.85)],
        [0.22, lit(colour, 1.12)],
        [0.5, hex(colour)],
        [1, lit(colour, 0.42)],
      ], [0, AXIS - 28], [0, AXIS + 46]),
      path(NOSE_SITE.outline, { fill: use(pen, 'nose-body') }),
    ] : []),
    group({ clipPath: use(pen, 'nose') }, [
      ...(tip.noseSurface ? noseSurface(tip.noseSurface, on('skin', 'full'), colour) : []),
      ...(tip.deposit ? deposit(tip.deposit, on('deposit', tip.coverage ?? 'partial')) : []),
      ...(tip.coverage && !tip.deposit ? unnamedCover(on('cover', tip.coverage)) : []),
      ...(tip.specks ? specks(tip.specks, on('specks', 'full')) : []),
      ...(tip.sootRing ? sootRing(tip.sootRing, pen) : []),
    ]),
    ...(tip.coverage === 'none' ? [noneSign(pen, [76, AXIS - 12])] : []),
    path(NOSE_SITE.outline, outline(pen, seen)),
    ...(tip.noseDamage ? damage(tip.noseDamage, pen) : []),
  ];
}

const cavity = (): Shape[] =>
  [path(polygon([[X.rim, AXIS + noseHalf(X.rim)], [X.groove, AXIS + 47], [X.groove, AXIS + HALF.bore], [X.rim, AXIS + HALF.bore]]), { fill: lit(DEPTH, 0.5) })];

function sootRing(value: FacetValue<'sootRing'>, pen: Pen): Shape[] {
  if (value === 'none') return [
    path(`M${X.groove - 4} ${AXIS + 3}V${AXIS + 43}`, { ...line(pen, 1, SHINE), strokeOpacity: 0.75 }),
    noneSign(pen, [X.groove - 12, AXIS + 34]),
  ];
  const wide = value === 'wide' ? 46 : 15;
  return [
    linearGradient(nameOf(pen, 'soot-ring'), [[0, lit(SOOT, 1), 0], [0.35, lit(SOOT, 0.9), 0.94], [1, lit(SOOT, 0.6)]], [X.groove - wide, 0], [X.groove, 0]),
    path(`M${X.groove - wide} ${AXIS}h${wide}v60h${-wide}z`, { fill: use(pen, 'soot-ring') }),
  ];
}

function damage(value: FacetValue<'noseDamage'>, pen: Pen): Shape[] {
  const luck = luckOf(pen, 'nose damage side');
  const dark = (points: readonly Point[], pixels: number): Shape => path(polyline(points), { ...line(pen, pixels), stroke: SHADOW });
  switch (value) {
    case 'none': return [noneSign(pen, [70, AXIS + 14])];
    case 'hairline crack': return [dark(jagged([X.nose, AXIS - 14], [130, AXIS + 24], 0.07, luck), 1.1)];
    case 'cracked': {
      const main = jagged([X.nose, AXIS - 6], [140, AXIS + 36], 0.09, luck, 8);
      return [
        path(polyline(main), { ...line(pen, 1.4, SHINE), strokeOpacity: 0.7, transform: 'translate(1 1.2)' }),
        dark(main, 2.2),
        dark(jagged(main[4] ?? [98, 112], [150, AXIS + 14], 0.1, luck, 5), 2),
      ];
    }
    case 'chipped': return [
      path(polygon([
        [X.nose - 1, AXIS + 8],
        [67, AXIS + 13],
        [70, AXIS + 19],
        [78, AXIS + 21],
        [82, AXIS + 29],
        [X.nose - 1, AXIS + 27],
      ]), { fill: hex(FRESH_BREAK), stroke: SHADOW, strokeWidth: ink(pen).strokeWidth as number }),
      path(`M62 ${AXIS + 14}l6 5M66 ${AXIS + 22}l10 4`, hair(pen)),
    ];
    case 'broken away': return brokenAway(pen);
  }
}

function brokenAway(pen: Pen): Shape[] {
  const fracture: Point[] = [[83, AXIS - 30], [77, AXIS - 18], [82, AXIS - 8], [76, AXIS + 2], [88, AXIS + 12], [84, AXIS + 22], [96, AXIS + 32]];
  return [
    path(polygon([[X.nose - 2, AXIS - 30], ...fracture, [X.nose - 2, AXIS + 34]]), { fill: GROUND, stroke: 'none' }),
    path(`M79 ${AXIS - 27}L${X.nose} ${AXIS - 24}V${AXIS + 24}L92 ${AXIS + 31}`, { ...chalk(pen), strokeDasharray: dashes(pen, 3, 3) }),
    path(polygon([[X.nose - 1, AXIS - 8], [80, AXIS - 8], [80, AXIS + 8], [X.nose - 1, AXIS + 8]]), { fill: lit(NICKEL, 0.5), ...edge(pen) }),
    path(polyline(fracture), line(pen, 3, hex(FRESH_BREAK))),
    path(polyline(fracture), { ...hair(pen), transform: 'translate(-1.6 0)' }),
  ];
}

const edge = (pen: Pen) => ({ stroke: SHADOW, strokeWidth: ink(pen).strokeWidth as number });
