import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { arc, blob, circle, polar, ring } from '../curve.ts';
import { noneSign } from '../marks.ts';
import { DEPTH, lit, SHADOW, SHINE, SOOT } from '../palette.ts';
import { hair, line, luckOf, nameOf, noseTone, use, type Pen } from '../pen.ts';
import { path, radialGradient, type Shape } from '../shape.ts';
import { R } from './frame.ts';

/** The dark space between nose and shell; it shows as soon as something beside it was looked at. */
export function cavity(tip: Tip, pen: Pen): Shape[] {
  const seen = noseTone(tip, pen) ?? tip.noseSurface ?? tip.shellRim ?? tip.sootRing;
  if (seen === undefined) return [];
  return [
    radialGradient(nameOf(pen, 'cavity'), [[0.8, SHADOW], [1, lit(DEPTH, 1.3)]], { cx: 1.5, cy: 2, r: R.bore }),
    path(ring(R.nose - 2, R.bore), { fill: use(pen, 'cavity'), fillRule: 'evenodd' }),
  ];
}

/** The ring of soot where the nose goes down into the shell. */
export function sootRing(value: FacetValue<'sootRing'> | undefined, pen: Pen): Shape[] {
  if (value === undefined) return [];
  if (value === 'none') return [path(circle(R.nose - 1.6), { ...line(pen, 1, SHINE), strokeOpacity: 0.7 }), noneSign(pen, polar(R.nose - 2, 0.43))];
  const wide = value === 'wide' ? 13 : 5;
  return [
    radialGradient(nameOf(pen, 'soot-ring'), [
      [1 - wide / R.nose, lit(SOOT, 1), 0],
      [1 - (wide * 0.72) / R.nose, lit(SOOT, 0.9), 0.96],
      [1, lit(SOOT, 0.6)],
    ], { cx: 0, cy: 0, r: R.nose }),
    path(ring(R.nose - wide, R.nose), { fill: use(pen, 'soot-ring'), fillRule: 'evenodd' }),
  ];
}

const CLINKER = SOOT;

/** Something that leads the current round the gap, or past the nose. */
export function bridge(value: FacetValue<'bridge'> | undefined, pen: Pen): Shape[] {
  const luck = luckOf(pen, 'bridge');
  switch (value) {
    case undefined: return [];
    case 'none': return [path('M-16 -13.5h5M11 -13.5h5M-13.5 -18v9M13.5 -18v9', { ...line(pen, 1.1, SHINE), strokeOpacity: 0.85 })];
    case 'gap bridged': return clinker([[0, -12, 9], [-6, -8, 5.5], [6, -9, 6], [1, -18, 6]], pen, luck.next());
    case 'core bridged': return clinker([
      [...polar(50, 0.16), 9],
      [...polar(54, 0.12), 8],
      [...polar(52, 0.2), 8],
      [...polar(44, 0.15), 6],
      [...polar(57, 0.17), 7],
    ], pen, luck.next());
  }
}

function clinker(lumps: readonly (readonly [x: number, y: number, radius: number])[], pen: Pen, offset: number): Shape[] {
  const luck = luckOf(pen, `clinker ${offset}`);
  const outlines = lumps.map(([x, y, radius]) => blob([x, y], radius, 0.22, luck, 9));
  return [
    path(outlines.join(''), { fill: SHADOW, stroke: SHADOW, strokeWidth: (line(pen, 2).strokeWidth as number) }),
    ...outlines.map((d) => path(d, { fill: lit(CLINKER, luck.between(0.9, 1.9)), ...hair(pen) })),
    path(lumps.map(([x, y, radius]) => arc(radius * 0.55, 0.5, 0.75, [x, y])).join(''), { ...line(pen, 1.2, SHINE), strokeOpacity: 0.55 }),
  ];
}
