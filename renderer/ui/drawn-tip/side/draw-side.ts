import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { arc, blob } from '../curve.ts';
import { noneSign } from '../marks.ts';
import { overall } from '../overall.ts';
import { lit, SHADOW, SHINE, SOOT } from '../palette.ts';
import { chalk, dashes, hair, line, luckOf, type Pen } from '../pen.ts';
import { disc, group, path, type Shape } from '../shape.ts';
import { centreElectrode, strap } from './electrodes.ts';
import { AXIS, HALF, NOSE_SITE, X } from './frame.ts';
import { nose } from './nose.ts';
import { ceramic, hexagon, seat, terminal } from './outside.ts';
import { shellRim, threads } from './shell.ts';

const FIRING_END = { middle: NOSE_SITE.middle, reach: NOSE_SITE.reach, within: NOSE_SITE.inside };

/** The whole plug from the side, the shell cut away below the axis. What was not observed is line work in chalk. */
export function drawSide(tip: Tip, pen: Pen): Shape[] {
  const core = [...nose(tip, pen), ...centreElectrode(tip.centreElectrode, pen)];
  return [
    ...(tip.overall ? overall(tip.overall, FIRING_END, pen) : []),
    path(`M4 ${AXIS}H436`, { ...chalk(pen), strokeOpacity: 0.35, strokeDasharray: dashes(pen, 9, 4) }),
    ...ceramic(tip, pen),
    ...terminal(tip.terminal, pen),
    ...hexagon(pen),
    ...seat(tip.seat, pen),
    group(tip.insulator === 'loose in shell' ? { transform: 'translate(-3 3)' } : {}, core),
    ...threads(tip.threads, pen),
    ...shellRim(tip.shellRim, pen),
    ...strap(tip, pen),
    ...bridge(tip.bridge, pen),
    ...(tip.contact === 'debris marks' ? dents(pen) : []),
    ...(tip.contact === 'none' ? [noneSign(pen, [26, AXIS + 4])] : []),
  ];
}

/** Two arrows that meet across the gap: looked at, and open. */
const GAP_SIGN = [
  `M${X.gap} ${AXIS + 16}v14M${X.gap - 14} ${AXIS + 23}h14m-4 -4l4 4l-4 4`,
  `M${X.electrode} ${AXIS + 16}v14M${X.electrode + 14} ${AXIS + 23}h-14m4 -4l-4 4l4 4`,
].join('');

function bridge(value: FacetValue<'bridge'> | undefined, pen: Pen): Shape[] {
  switch (value) {
    case undefined: return [];
    case 'none': return [path(GAP_SIGN, { ...line(pen, 1.2, SHINE), strokeOpacity: 0.9 })];
    case 'gap bridged': return clinker([[35, 97, 7], [41, 102, 7.5], [37, 106, 6], [40, 94, 5.5]], pen);
    case 'core bridged': return clinker([[132, 141, 9], [142, 144, 8], [124, 142, 7], [136, 148, 6], [148, 144, 6]], pen);
  }
}

function clinker(lumps: readonly (readonly [x: number, y: number, radius: number])[], pen: Pen): Shape[] {
  const luck = luckOf(pen, 'clinker side');
  const outlines = lumps.map(([x, y, radius]) => blob([x, y], radius, 0.22, luck, 9));
  return [
    path(outlines.join(''), { fill: SHADOW, stroke: SHADOW, strokeWidth: line(pen, 2).strokeWidth as number }),
    ...outlines.map((d) => path(d, { fill: lit(SOOT, luck.between(0.9, 1.9)), ...hair(pen) })),
    path(lumps.map(([x, y, radius]) => arc(radius * 0.55, 0.5, 0.75, [x, y])).join(''), { ...line(pen, 1.2, SHINE), strokeOpacity: 0.55 }),
  ];
}

function dents(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'dents side');
  const places = [[22, 70], [25, 96], [52, 35], [70, 86], [68, 112], [112, HALF.bore + AXIS - 30], [88, 56]] as const;
  return places.map(([x, y]) => {
    const [turn, size] = [luck.next(), luck.between(2.4, 3.8)];
    return group({}, [disc(x, y, size, { fill: SHADOW, fillOpacity: 0.75 }), path(arc(size, turn, turn + 0.42, [x, y]), line(pen, 1.5, SHINE))]);
  });
}
