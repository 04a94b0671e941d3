import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { arc, circle, jagged, polar, polygon, polyline, ring } from '../curve.ts';
import { deposit, unnamedCover } from '../deposits.ts';
import type { Work } from '../marks.ts';
import { noneSign } from '../marks.ts';
import { noseSurface } from '../nose-surface.ts';
import { DEPTH, FRESH_BREAK, hex, lit, SHADOW, SHINE, type Tone } from '../palette.ts';
import { chalk, hair, ink, line, luckOf, nameOf, noseTone, outline, use, type Pen } from '../pen.ts';
import { clip, group, path, radialGradient, type Shape } from '../shape.ts';
import { specks } from '../specks.ts';
import { spreadOver, type Coverage } from '../site.ts';
import { NOSE_SITE, R } from './frame.ts';

/** The nose with everything on it. */
export function nose(tip: Tip, pen: Pen): Shape[] {
  const colour = noseTone(tip, pen);
  const on = (part: string, coverage: Coverage): Work =>
    ({ site: NOSE_SITE, spread: spreadOver(NOSE_SITE, coverage, pen), pen, luck: luckOf(pen, `nose ${part}`) });
  return [
    clip(nameOf(pen, 'nose'), NOSE_SITE.outline),
    ...(colour ? body(colour, pen) : []),
    group({ clipPath: use(pen, 'nose') }, [
      ...(tip.noseSurface ? noseSurface(tip.noseSurface, on('skin', 'full'), colour) : []),
      ...(tip.deposit ? deposit(tip.deposit, on('deposit', coverageOf(tip))) : []),
      ...(tip.coverage && !tip.deposit ? unnamedCover(on('cover', tip.coverage)) : []),
      ...(tip.specks ? specks(tip.specks, on('specks', 'full')) : []),
    ]),
    ...(tip.coverage === 'none' ? [noneSign(pen, [30, -30])] : []),
    ...edges(tip, pen),
    ...(tip.noseDamage ? damage(tip.noseDamage, pen) : []),
  ];
}

/** Of a deposit whose extent was not noted the drawing shows some. */
const coverageOf = (tip: Tip): Coverage => tip.coverage ?? 'partial';

function body(colour: Tone, pen: Pen): Shape[] {
  return [
    radialGradient(nameOf(pen, 'flank'), [[0.7, lit(colour, 0.92)], [0.86, lit(colour, 0.66)], [1, lit(colour, 0.4)]], { cx: 0, cy: 0, r: R.nose }),
    radialGradient(nameOf(pen, 'face'), [[0, lit(colour, 1.1)], [0.55, hex(colour)], [1, lit(colour, 0.86)]], { cx: -9, cy: -11, r: R.face * 1.35 }),
    path(ring(R.face - 1, R.nose), { fill: use(pen, 'flank'), fillRule: 'evenodd' }),
    path(circle(R.face), { fill: use(pen, 'face') }),
    path(arc(R.face - 0.8, 0.5, 0.78), { ...line(pen, 1.2, SHINE), strokeOpacity: 0.55 }),
  ];
}

function edges(tip: Tip, pen: Pen): Shape[] {
  const seen = noseTone(tip, pen) !== undefined || tip.noseSurface !== undefined;
  const face = tip.noseDamage === 'broken away' || (!seen && !pen.fine) ? [] : [path(circle(R.face), seen ? hair(pen) : chalk(pen))];
  return [path(circle(R.nose), outline(pen, seen)), ...face];
}

function damage(value: FacetValue<'noseDamage'>, pen: Pen): Shape[] {
  const luck = luckOf(pen, 'nose damage');
  switch (value) {
    case 'none': return [noneSign(pen, [-30, 30])];
    case 'hairline crack': return [path(polyline(jagged(polar(15, 0.07), polar(R.nose, 0.1), 0.1, luck)), { ...line(pen, 1.2), stroke: SHADOW })];
    case 'cracked': return cracked(pen);
    case 'chipped': return chipped(pen);
    case 'broken away': return brokenAway(pen);
  }
}

function cracked(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'crack');
  const main = jagged(polar(13, 0.05), polar(R.nose, 0.12), 0.12, luck, 7);
  const branch = jagged(main[3] ?? [20, 12], polar(R.nose, 0.22), 0.14, luck, 5);
  const across = jagged(polar(14, 0.56), polar(R.nose, 0.5), 0.12, luck, 6);
  const d = [main, branch, across].map(polyline).join('');
  return [
    path(d, { ...line(pen, 1.4, SHINE), strokeOpacity: 0.7, transform: 'translate(0.9 1.1)' }),
    path(d, { ...ink(pen), strokeWidth: 1.6 * (ink(pen).strokeWidth as number), stroke: SHADOW }),
  ];
}

function chipped(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'chip');
  const bite = [
    polar(R.face + 1, 0.02),
    ...Array.from({ length: 4 }, (_, i) => polar(luck.between(20, 26), 0.05 + i * 0.035)),
    polar(R.face + 1, 0.2),
    polar(R.nose - 3, 0.17),
    polar(R.nose - 1, 0.1),
    polar(R.nose - 4, 0.04),
  ];
  const inner = bite.map(([x, y]) => [x * 0.97 + 1, y * 0.97 + 1.4] as const);
  return [
    path(polygon(bite), { fill: lit(FRESH_BREAK, 0.55), ...inked(pen) }),
    path(polygon(inner), { fill: hex(FRESH_BREAK), stroke: 'none' }),
    path(polyline(jagged(polar(28, 0.06), polar(R.nose - 4, 0.12), 0.16, luck, 4)), hair(pen)),
  ];
}

function brokenAway(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'broken');
  const rough = (from: number, to: number, count: number): (readonly [number, number])[] =>
    Array.from({ length: count }, (_, i) => polar(luck.between(17, 24), from + ((to - from) * i) / (count - 1)));
  const outer = Array.from({ length: 12 }, (_, i) => polar(R.nose + 1, 0.28 - (0.36 * i) / 11));
  const gone = [...rough(-0.08, 0.28, 8), ...outer];
  return [
    path(polygon(gone), { fill: lit(DEPTH, 0.7), ...inked(pen) }),
    path(polyline(gone.slice(0, 8)), { ...line(pen, 3.2, hex(FRESH_BREAK)) }),
    path(polyline(gone.slice(0, 8).map(([x, y]) => [x * 1.09, y * 1.09] as const)), { ...line(pen, 1.2, lit(FRESH_BREAK, 0.5)) }),
  ];
}

const inked = (pen: Pen) => ({ stroke: SHADOW, strokeWidth: ink(pen).strokeWidth as number, strokeLinejoin: 'round' });
