import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { jagged, polygon, polyline, stone } from '../curve.ts';
import { noneSign } from '../marks.ts';
import { CERAMIC, COPPER, DEPOSIT_TONE, hex, lit, NICKEL, NOSE_TONE, SHADOW, SHINE, SOOT, STEEL, VERDIGRIS } from '../palette.ts';
import { chalk, dashes, hair, ink, line, luckOf, nameOf, outline, use, type Pen } from '../pen.ts';
import { group, linearGradient, path, type Shape } from '../shape.ts';
import { AXIS, HALF, X } from './frame.ts';

const box = (x0: number, x1: number, half: number): string => `M${x0} ${AXIS - half}H${x1}V${AXIS + half}H${x0}Z`;

/** Groove, flange, hexagon and crimp: nothing is asked of them, so they stay line work. */
export function hexagon(pen: Pen): Shape[] {
  const h = HALF.hexagon;
  const edge = h / 2;
  return [
    path(box(X.groove, X.gasket, HALF.root - 3), chalk(pen)),
    path(box(X.flange, X.hexagon, HALF.flange), chalk(pen)),
    path(polygon([
      [X.hexagon, AXIS - h], [X.crimp - 4, AXIS - h], [X.crimp, AXIS - edge - 34],
      [X.crimp, AXIS + edge + 34], [X.crimp - 4, AXIS + h], [X.hexagon, AXIS + h],
    ]), chalk(pen)),
    path(`M${X.hexagon} ${AXIS - edge}H${X.crimp}M${X.hexagon} ${AXIS + edge}H${X.crimp}`, chalk(pen)),
    path(CRIMP, chalk(pen)),
  ];
}

const CRIMP = [
  `M${X.crimp} ${AXIS - HALF.crimp}Q${X.ceramic} ${AXIS - HALF.crimp} ${X.ceramic} ${AXIS - HALF.ceramic - 3}`,
  `V${AXIS + HALF.ceramic + 3}Q${X.ceramic} ${AXIS + HALF.crimp} ${X.crimp} ${AXIS + HALF.crimp}`,
].join('');

/** The gasket and what leaked past it. */
export function seat(value: FacetValue<'seat'> | undefined, pen: Pen): Shape[] {
  const [from, to] = [X.gasket, X.flange];
  if (value === undefined) return [path(box(from, to, HALF.gasket), chalk(pen))];
  const copper = linearGradient(nameOf(pen, 'gasket'), [
    [0, lit(COPPER, 0.8)],
    [0.28, lit(COPPER, 1.6)],
    [0.6, lit(COPPER, 0.9)],
    [1, lit(COPPER, 0.45)],
  ], [0, AXIS - HALF.gasket], [0, AXIS + HALF.gasket]);
  const ringAt = (x0: number, x1: number): Shape[] => [path(box(x0, x1, HALF.gasket), { fill: use(pen, 'gasket') }), path(box(x0, x1, HALF.gasket), ink(pen))];
  switch (value) {
    case 'sound': return [copper, ...ringAt(from, to), path(`M${from + 5} ${AXIS - 74}V${AXIS + 74}`, hair(pen))];
    case 'leakage marks': return [copper, ...ringAt(from, to), ...streaks(pen)];
    case 'loose when removed': return [copper, ...ringAt(from - 5, to - 5), ...shake(pen)];
    case 'loose with leakage marks': return [copper, ...ringAt(from - 5, to - 5), ...streaks(pen), ...shake(pen)];
    case 'gasket missing': return [
      path(box(from, to, HALF.gasket), { ...line(pen, 1.4), strokeDasharray: dashes(pen, 5, 4) }),
      path(`M${from - 5} ${AXIS - 92}l14 14m0 -14l-14 14`, line(pen, 2)),
    ];
    case 'gasket doubled': return [copper, ...ringAt(from - 5, from + 2.5), ...ringAt(from + 2.5, to)];
  }
}

function streaks(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'seat side');
  const rays = Array.from({ length: 13 }, (_, i) => {
    const y = AXIS - 66 + i * 7 + luck.between(-2, 2);
    return polyline([[X.gasket + 1, y], [luck.between(222, 256), y + luck.between(-3, 3)]]);
  });
  return [path(rays.join(''), { ...line(pen, pen.fine ? 2.6 : 1.6), stroke: lit(SOOT, 0.7), strokeOpacity: 0.9 })];
}

const shake = (pen: Pen): Shape[] =>
  [path(`M${X.gasket - 3} ${AXIS - 88}h12m-4 -4l4 4l-4 4M${X.flange - 4} ${AXIS + 88}h-12m4 -4l-4 4l4 4`, line(pen, 1.5, SHINE))];

/** Two grooves run round it. */
const CERAMIC_BODY = [
  `M${X.ceramic} ${AXIS - HALF.ceramic}H292q5 0 5 4t5 4h6q5 0 5 -4t5 -4h4q5 0 5 4t5 4h6q5 0 5 -4t5 -4h6`,
  `Q376 ${AXIS - 42} ${X.terminal} ${AXIS - 30}V${AXIS + 30}Q376 ${AXIS + 42} 348 ${AXIS + HALF.ceramic}`,
  `h-6q-5 0 -5 -4t-5 -4h-6q-5 0 -5 4t-5 4h-4q-5 0 -5 -4t-5 -4h-6q-5 0 -5 4t-5 4H${X.ceramic}Z`,
].join('');

/** The insulator above the shell: its skin from `body`, its soundness from `insulator`. */
export function ceramic({ body, insulator }: Tip, pen: Pen): Shape[] {
  const whole = [
    ...(body ? glazed(body, pen) : []),
    path(CERAMIC_BODY, outline(pen, body !== undefined || insulator !== undefined)),
    ...(insulator === 'firm' ? [
      path(`M${X.ceramic} ${AXIS - HALF.crimp + 8}V${AXIS + HALF.crimp - 8}`, line(pen, 2.6)),
      noneSign(pen, [X.ceramic, AXIS]),
    ] : []),
    ...(insulator === 'cracked above the shell' ? crack(pen) : []),
  ];
  return insulator === 'loose in shell' ? [group({ transform: 'translate(6 4)' }, whole), ...rattle(pen)] : whole;
}

function glazed(value: FacetValue<'body'>, pen: Pen): Shape[] {
  const luck = luckOf(pen, 'body');
  const white = [
    linearGradient(nameOf(pen, 'ceramic'), [
      [0, lit(CERAMIC, 0.72)],
      [0.25, lit(CERAMIC, 1.08)],
      [0.6, lit(CERAMIC, 0.82)],
      [1, lit(CERAMIC, 0.42)],
    ], [0, AXIS - HALF.ceramic], [0, AXIS + HALF.ceramic]),
    path(CERAMIC_BODY, { fill: use(pen, 'ceramic') }),
  ];
  const track = jagged([X.terminal, AXIS - 18], [X.ceramic, AXIS + 6], 0.07, luck, 11);
  switch (value) {
    case 'clean': return [...white, path(`M282 ${AXIS - 24}H368`, { ...line(pen, 3, SHINE), strokeOpacity: 0.9 })];
    case 'corona stain': return [
      ...white,
      linearGradient(nameOf(pen, 'corona'), [
        [0, lit(NOSE_TONE.brown, 0.8), 0.95],
        [0.5, hex(NOSE_TONE['light tan']), 0.7],
        [1, hex(NOSE_TONE['light tan']), 0],
      ], [X.ceramic, 0], [330, 0]),
      path(`M${X.ceramic} ${AXIS - 43}H292Q330 ${AXIS - 20} 322 ${AXIS}Q330 ${AXIS + 22} 292 ${AXIS + 43}H${X.ceramic}Z`, { fill: use(pen, 'corona') }),
    ];
    case 'flashover track': return [
      ...white,
      path(polyline(track), { ...line(pen, 3.4, lit(DEPOSIT_TONE['light dusting'], 0.5)), strokeOpacity: 0.7 }),
      path(polyline(track), { ...line(pen, 1.2), stroke: SHADOW }),
    ];
    case 'carbon track': return [...white, path(polyline(track), { ...line(pen, pen.fine ? 6 : 3), stroke: lit(SOOT, 0.8) }), ...twigs(track, pen)];
  }
}

function twigs(track: readonly (readonly [number, number])[], pen: Pen): Shape[] {
  const luck = luckOf(pen, 'twigs');
  const d = track.slice(1, -1).map(([x, y]) => polyline(jagged([x, y], [x - luck.between(6, 16), y + luck.between(-1, 1) * 16], 0.2, luck, 3))).join('');
  return [path(d, { ...line(pen, 2), stroke: SHADOW })];
}

function crack(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'insulator');
  const across = polyline(jagged([284, AXIS - 44], [296, AXIS + 44], 0.06, luck, 9));
  return [path(across, { ...line(pen, 2.2), stroke: SHADOW }), path(across, { ...line(pen, 1, SHINE), transform: 'translate(2 0.6)' })];
}

const rattle = (pen: Pen): Shape[] => [path(`M278 ${AXIS - 58}q8 -4 16 0M280 ${AXIS - 65}q7 -3 13 0M278 ${AXIS + 62}q8 4 16 0`, line(pen, 1.6, SHINE))];

const STUD = polygon([
  [X.terminal, AXIS - 11],
  [394, AXIS - 11],
  [394, AXIS - 15],
  [412, AXIS - 15],
  [412, AXIS - 9],
  [418, AXIS - 9],
  [418, AXIS - 14],
  [428, AXIS - 12],
  [430, AXIS - 8],
  [430, AXIS + 8],
  [428, AXIS + 12],
  [418, AXIS + 14],
  [418, AXIS + 9],
  [412, AXIS + 9],
  [412, AXIS + 15],
  [394, AXIS + 15],
  [394, AXIS + 11],
  [X.terminal, AXIS + 11],
]);

export function terminal(value: FacetValue<'terminal'> | undefined, pen: Pen): Shape[] {
  if (value === undefined) return [path(STUD, chalk(pen))];
  const metal = [
    linearGradient(nameOf(pen, 'stud'), [[0, lit(STEEL, 0.8)], [0.3, lit(NICKEL, 1.5)], [1, lit(STEEL, 0.4)]], [0, AXIS - 15], [0, AXIS + 15]),
    path(STUD, { fill: use(pen, 'stud') }),
    path(STUD, ink(pen)),
  ];
  switch (value) {
    case 'sound': return metal;
    case 'loose': return [
      group({ transform: `rotate(9 ${X.terminal} ${AXIS})` }, metal),
      path(`M400 ${AXIS - 26}q10 -2 18 3M402 ${AXIS - 32}q9 -2 16 2M396 ${AXIS + 28}q10 4 18 0`, line(pen, 1.6, SHINE)),
    ];
    case 'corroded': return [...metal, ...verdigris(pen)];
  }
}

function verdigris(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'terminal');
  return Array.from({ length: 22 }, () => {
    const crumb = stone([luck.between(386, 430), AXIS + luck.between(-13, 13)], luck.between(2, 4.4), 0.3, luck);
    return path(crumb, { fill: lit(VERDIGRIS, luck.between(0.5, 1.3)), stroke: lit(NOSE_TONE['dark brown'], 0.8), strokeWidth: 0.6 });
  });
}
