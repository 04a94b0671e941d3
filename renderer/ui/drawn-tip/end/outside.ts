import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { arc, circle, loop, polar, polyline, ring } from '../curve.ts';
import { COPPER, GREASE, hex, lit, SHADOW, SHINE, SOOT, STEEL } from '../palette.ts';
import { chalk, dashes, hair, ink, line, luckOf, nameOf, use, type Pen } from '../pen.ts';
import { group, linearGradient, path, type Shape } from '../shape.ts';
import { R } from './frame.ts';

/** The thread, seen as the ring outside the rim. */
export function threads(value: FacetValue<'threads'> | undefined, pen: Pen): Shape[] {
  if (value === undefined) return [path(circle(R.thread), chalk(pen))];
  const band = ring(R.rim, R.thread);
  const metal = [
    linearGradient(nameOf(pen, 'thread-metal'), [[0, lit(STEEL, 0.55)], [0.5, lit(STEEL, 0.85)], [1, lit(STEEL, 1.2)]], [-60, -60], [60, 60]),
    path(band, { fill: use(pen, 'thread-metal'), fillRule: 'evenodd' }),
  ];
  const turns = [77.2, 80.6].map((radius) => path(circle(radius), hair(pen)));
  switch (value) {
    case 'clean': return [...metal, ...turns, path(circle(R.thread), ink(pen))];
    case 'first turns carboned': return [
      path(band, { fill: lit(SOOT, 0.8), fillRule: 'evenodd' }),
      ...turns,
      ...crumbRing(pen),
      path(circle(R.thread), ink(pen)),
    ];
    case 'damaged': return [...metal, ...turns, ...torn(pen)];
    case 'lubricant present': return [
      ...metal,
      path(band, { fill: hex(GREASE), fillOpacity: 0.75, fillRule: 'evenodd' }),
      ...smears(pen),
      path(circle(R.thread), ink(pen)),
    ];
  }
}

function crumbRing(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'threads');
  const ticks = Array.from({ length: pen.fine ? 90 : 36 }, () => { const turn = luck.next(); return polyline([
    polar(luck.between(75, 79), turn),
    polar(luck.between(80, 85.5), turn + luck.between(-0.006, 0.006)),
  ]); });
  return [path(ticks.join(''), { ...line(pen, 1.6), stroke: lit(SOOT, 0.5) })];
}

function torn(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'threads');
  const points = Array.from({ length: 72 }, (_, i) => polar(R.thread + (i % 3 === 0 ? luck.between(-6, -2) : luck.between(-1, 2.5)), i / 72));
  return [
    path(loop(points), { ...ink(pen) }),
    path(Array.from({ length: 10 }, (_, i) => arc(luck.between(76, 82), i / 10, i / 10 + 0.03)).join(''), { ...line(pen, 2, SHINE), strokeOpacity: 0.8 }),
  ];
}

function smears(pen: Pen): Shape[] {
  return [path([0.55, 0.2, 0.88].map((turn) => arc(79, turn, turn + 0.12)).join(''), { ...line(pen, 2.6, SHINE), strokeOpacity: 0.75 })];
}

/** The gasket and how it sealed. */
export function seat(value: FacetValue<'seat'> | undefined, pen: Pen): Shape[] {
  const band = ring(R.gasketIn, R.gasket);
  const edges = (attrs = ink(pen)): Shape[] => [path(circle(R.gasketIn), attrs), path(circle(R.gasket), attrs)];
  if (value === undefined) return pen.fine ? edges(chalk(pen)) : [];
  const metal = [
    linearGradient(nameOf(pen, 'gasket'), [
      [0, lit(COPPER, 1.5)],
      [0.45, lit(COPPER, 0.95)],
      [0.7, lit(COPPER, 1.25)],
      [1, lit(COPPER, 0.6)],
    ], [-70, -70], [70, 70]),
    path(band, { fill: use(pen, 'gasket'), fillRule: 'evenodd' }),
  ];
  switch (value) {
    case 'sound': return [...metal, path(circle((R.gasketIn + R.gasket) / 2), hair(pen)), ...edges()];
    case 'leakage marks': return [...metal, ...edges(), ...streaks(pen)];
    case 'loose when removed': return [group({ transform: 'translate(4 4)' }, [...metal, ...edges()]), ...shake(pen)];
    case 'loose with leakage marks': return [group({ transform: 'translate(4 4)' }, [...metal, ...edges(), ...streaks(pen)]), ...shake(pen)];
    case 'gasket missing': return [
      path(circle((R.gasketIn + R.gasket) / 2), { ...line(pen, 1.6), strokeDasharray: dashes(pen, 5, 5) }),
      path('M-69 -63l12 -12M-69 -75l12 12', line(pen, 2)),
    ];
    case 'gasket doubled': return [
      ...metal,
      path(ring(92.6, R.gasket + 3), { fill: lit(COPPER, 0.75), fillRule: 'evenodd' }),
      path(circle(R.gasketIn), ink(pen)),
      path(circle(92), line(pen, 2.4)),
      path(circle(R.gasket + 3), ink(pen)),
    ];
  }
}

function streaks(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'seat');
  const rays = Array.from({ length: 16 }, (_, i) => {
    const turn = 0.02 + i * 0.021 + luck.between(-0.006, 0.006);
    return polyline([polar(R.gasketIn - 1, turn), polar(luck.between(96, 105), turn + luck.between(-0.01, 0.01))]);
  });
  return [path(rays.join(''), { ...line(pen, pen.fine ? 2.4 : 1.6), stroke: lit(SOOT, 0.7) })];
}

/** Two short arcs on either side: it moved. */
const shake = (pen: Pen): Shape[] => [
  path([arc(105, 0.58, 0.67), arc(101, 0.59, 0.66)].join(''), { ...line(pen, 1.6, SHINE) }),
  path(arc(106, 0.08, 0.17), { ...line(pen, 1.6), stroke: SHADOW }),
];
