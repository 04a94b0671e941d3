import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import type { Chance } from '../chance.ts';
import { polyline } from '../curve.ts';
import { crumbs, drops, film, apart, gloss, stipple, type Work } from '../marks.ts';
import { BLUE_TEMPER, DEPOSIT_TONE, GREASE, hex, lit, NOSE_TONE, PURPLE_TEMPER, SHADOW, SHINE, SOOT, STEEL, STRAW_TEMPER } from '../palette.ts';
import { chalk, hair, ink, line, luckOf, nameOf, outline, use, type Pen } from '../pen.ts';
import { clip, group, linearGradient, path, type Point, type Shape, type Stop } from '../shape.ts';
import { spreadOver } from '../site.ts';
import { AXIS, HALF, RIM_SITE, X } from './frame.ts';

const METAL: readonly Stop[] = [[0, lit(STEEL, 0.7)], [0.3, lit(STEEL, 1.4)], [0.6, lit(STEEL, 0.9)], [1, lit(STEEL, 0.6)]];
const BLUED: readonly Stop[] = [[0, hex(BLUE_TEMPER)], [0.35, hex(PURPLE_TEMPER)], [0.6, hex(STRAW_TEMPER)], [1, hex(BLUE_TEMPER)]];

/** The rim from the side. */
export function shellRim(value: FacetValue<'shellRim'> | undefined, pen: Pen): Shape[] {
  if (value === undefined) return [path(RIM_SITE.outline, chalk(pen))];
  const work: Work = { site: RIM_SITE, spread: spreadOver(RIM_SITE, 'full', pen), pen, luck: luckOf(pen, 'rim side') };
  return [
    clip(nameOf(pen, 'rim'), RIM_SITE.outline),
    linearGradient(nameOf(pen, 'rim-metal'), value === 'blued' ? BLUED : METAL, [0, AXIS - 70], [0, AXIS + 70]),
    path(RIM_SITE.outline, { fill: use(pen, 'rim-metal') }),
    group({ clipPath: use(pen, 'rim') }, onRim(value, work)),
    path(RIM_SITE.outline, ink(pen)),
  ];
}

function onRim(value: FacetValue<'shellRim'>, work: Work): Shape[] {
  switch (value) {
    case 'bare metal': return [gloss(work, 0.4)];
    case 'blued': return [];
    case 'light grey': return [film(work, hex(NOSE_TONE['light grey']), 0.9), stipple(work, 160, 0.3, SHADOW, 0.3)];
    case 'even soot': return [film(work, lit(SOOT, 1.25), 0.94)];
    case 'heavy soot': return [film(work, lit(SOOT, 0.6)), stipple(work, 240, 0.8, lit(SOOT, 3), 0.55)];
    case 'wet oil': return [film(work, hex(DEPOSIT_TONE['wet oil'])), gloss(work, 0.95), ...drops(work, apart(work, 14), 0.9, DEPOSIT_TONE['wet oil'])];
    case 'ash': return [film(work, lit(DEPOSIT_TONE['ash crust'], 0.5)), ...crumbs(work, 220, 1, DEPOSIT_TONE['ash crust'])];
  }
}

const PITCH = 11.4;
const HALF_TURNS = Math.floor((2 * (X.groove - X.thread)) / PITCH) + 1;
const turns = (up: number): Point[] =>
  Array.from({ length: HALF_TURNS }, (_, i) => [X.thread + (i * PITCH) / 2, AXIS + up * (i % 2 === 0 ? HALF.root : HALF.thread)] as const);

/** The thread: seen above the axis, cut below it. */
export function threads(value: FacetValue<'threads'> | undefined, pen: Pen): Shape[] {
  const seen = value !== undefined;
  const damaged = value === 'damaged';
  const crest = (up: number): Point[] => (damaged ? torn(turns(up), up, pen) : turns(up));
  const upper = `${polyline(crest(-1))}L${X.groove} ${AXIS - HALF.root}V${AXIS}H${X.thread}Z`;
  const wall = `${polyline(crest(1))}L${X.groove} ${AXIS + HALF.root}V${AXIS + HALF.bore}H${X.thread}Z`;
  const slopes = turns(-1).filter((_, i) => i % 2 === 1).map(([x]) => `M${x} ${AXIS - HALF.thread}L${x + 3} ${AXIS}`).join('');
  return [
    ...(seen ? [
      linearGradient(nameOf(pen, 'thread'), METAL, [0, AXIS - HALF.thread], [0, AXIS + 40]),
      path(upper, { fill: use(pen, 'thread') }),
      path(wall, { fill: lit(STEEL, 0.55) }),
    ] : []),
    ...(value === undefined ? [] : onThreads(value, upper, pen)),
    path(slopes, seen ? hair(pen) : chalk(pen)),
    path(upper, outline(pen, seen)),
    path(cutStrokes(), { ...(seen ? hair(pen) : chalk(pen)), strokeOpacity: 0.55 }),
    path(wall, outline(pen, seen)),
  ];
}

/** Slanting strokes mark metal that is cut. */
function cutStrokes(): string {
  const list: string[] = [];
  for (let x = X.thread + 2; x < X.groove - 12; x += 7) list.push(`M${x} ${AXIS + HALF.root - 1}L${x + 12} ${AXIS + HALF.bore + 1}`);
  return list.join('');
}

function torn(points: readonly Point[], up: number, pen: Pen): Point[] {
  const luck = luckOf(pen, `thread side ${up}`);
  return points.map(([x, y], i) => (i % 2 === 1 && i < 12 ? [x + luck.between(-4, 4), y - up * luck.between(0, 8)] : [x, y]));
}

const FADING_SOOT: readonly Stop[] = [[0, lit(SOOT, 0.7)], [0.75, lit(SOOT, 0.8), 0.95], [1, hex(SOOT), 0]];

function scratches(luck: Chance): string {
  const scratch = (): string => {
    const [x, y] = [luck.between(100, 160), luck.between(34, 92)];
    return polyline([[x, y], [x + luck.between(6, 14), y + luck.between(2, 7)]]);
  };
  return Array.from({ length: 9 }, scratch).join('');
}

function onThreads(value: FacetValue<'threads'>, upper: string, pen: Pen): Shape[] {
  const luck = luckOf(pen, 'threads side');
  switch (value) {
    case 'clean': return [path(`M${X.thread + 4} ${AXIS - 50}H${X.groove - 4}`, { ...line(pen, 2, SHINE), strokeOpacity: 0.45 })];
    case 'damaged': return [path(scratches(luck), line(pen, 2, SHINE))];
    case 'lubricant present': return [
      path(upper, { fill: hex(GREASE), fillOpacity: 0.72 }),
      path(`M100 46Q130 40 176 48M104 62Q124 57 150 61M112 80q20 -3 40 0`, { ...line(pen, 2.6, SHINE), strokeOpacity: 0.7 }),
    ];
    case 'first turns carboned': return [
      linearGradient(nameOf(pen, 'thread-soot'), FADING_SOOT, [X.thread, 0], [X.thread + 4 * PITCH, 0]),
      path(upper, { fill: use(pen, 'thread-soot') }),
      path(`M${X.thread} ${AXIS + HALF.bore}h${4 * PITCH}v${HALF.root - HALF.bore}h${-4 * PITCH}z`, { fill: use(pen, 'thread-soot') }),
    ];
  }
}
