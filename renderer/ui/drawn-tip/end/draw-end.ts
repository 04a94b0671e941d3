import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { arc } from '../curve.ts';
import { noneSign } from '../marks.ts';
import { SHADOW, SHINE } from '../palette.ts';
import { line, luckOf, type Pen } from '../pen.ts';
import { disc, group, path, type Point, type Shape } from '../shape.ts';
import { overall } from '../overall.ts';
import { bridge, cavity, sootRing } from './cavity.ts';
import { centreElectrode } from './centre.ts';
import { R, VIEW_BOX } from './frame.ts';
import { nose } from './nose.ts';
import { seat, threads } from './outside.ts';
import { shellRim } from './rim.ts';
import { strap } from './strap.ts';

export const END_BOX = VIEW_BOX;
const FIRING_END = { middle: [0, 0], reach: R.rim, within: ([x, y]: Point) => Math.hypot(x, y) < R.rim } as const;

/** The firing end, end on. What was not observed is line work in chalk. */
export function drawEnd(tip: Tip, pen: Pen): Shape[] {
  const loose = tip.insulator === 'loose in shell';
  const core = [...nose(tip, pen), ...sootRing(tip.sootRing, pen), ...centreElectrode(tip.centreElectrode, pen)];
  return [
    ...(tip.overall ? overall(tip.overall, FIRING_END, pen) : []),
    ...seat(tip.seat, pen),
    ...threads(tip.threads, pen),
    ...cavity(tip, pen),
    group(loose ? { transform: 'translate(3.5 3.5)' } : {}, core),
    ...shellRim(tip.shellRim, pen),
    ...(loose ? [path([arc(53, 0.54, 0.7), arc(53.5, 0.06, 0.2)].join(''), { ...line(pen, 2.2, SHINE) })] : []),
    ...strap(tip, pen),
    ...bridge(tip.bridge, pen),
    ...(tip.contact === 'debris marks' ? dents(pen) : []),
    ...(tip.contact === 'none' ? [noneSign(pen, [0, -22])] : []),
  ];
}

/** Dents from something that went round the chamber. */
function dents(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'dents');
  const places = [[-3, -34], [4, -24], [26, 8], [-22, 18], [10, 32], [64, 12], [-58, 30], [-48, -44], [20, 62]] as const;
  return places.map(([x, y]) => {
    const turn = luck.next();
    const size = luck.between(2.6, 4.2);
    return group({}, [
      disc(x, y, size, { fill: SHADOW, fillOpacity: 0.75 }),
      path(arc(size, turn, turn + 0.42, [x, y]), { ...line(pen, 1.5, SHINE) }),
    ]);
  });
}
