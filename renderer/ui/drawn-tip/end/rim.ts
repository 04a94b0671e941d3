import type { FacetValue } from '../../../../shared/vocabulary/tip.ts';
import { blob, circle, polar } from '../curve.ts';
import { crumbs, film, gloss, stipple, drops, apart, type Work } from '../marks.ts';
import { BLUE_TEMPER, DEPOSIT_TONE, hex, lit, NOSE_TONE, PURPLE_TEMPER, SHADOW, SOOT, STEEL, STRAW_TEMPER } from '../palette.ts';
import { chalk, hair, ink, luckOf, nameOf, use, type Pen } from '../pen.ts';
import { clip, group, linearGradient, path, type Shape, type Stop } from '../shape.ts';
import { spreadOver } from '../site.ts';
import { R, RIM_SITE } from './frame.ts';

/** The face of the shell around the bore. */
export function shellRim(value: FacetValue<'shellRim'> | undefined, pen: Pen): Shape[] {
  if (value === undefined) return [path(circle(R.bore), chalk(pen)), path(circle(R.rim), chalk(pen))];
  const work: Work = { site: RIM_SITE, spread: spreadOver(RIM_SITE, 'full', pen), pen, luck: luckOf(pen, 'rim') };
  return [
    clip(nameOf(pen, 'rim'), RIM_SITE.outline),
    linearGradient(nameOf(pen, 'rim-metal'), value === 'blued' ? BLUED : METAL, [-60, -60], [60, 60]),
    path(RIM_SITE.outline, { fill: use(pen, 'rim-metal'), fillRule: 'evenodd' }),
    group({ clipPath: use(pen, 'rim') }, onRim(value, work)),
    ...(value === 'heavy soot' ? fluff(pen) : []),
    path(circle(R.bore), ink(pen)),
    path(circle(R.rim), ink(pen)),
  ];
}

const METAL: readonly Stop[] = [[0, lit(STEEL, 1.5)], [0.3, lit(STEEL, 1.05)], [0.5, lit(STEEL, 0.7)], [0.72, lit(STEEL, 1)], [1, lit(STEEL, 0.5)]];
const BLUED: readonly Stop[] = [
  [0, hex(BLUE_TEMPER)],
  [0.28, hex(PURPLE_TEMPER)],
  [0.45, hex(STRAW_TEMPER)],
  [0.6, hex(PURPLE_TEMPER)],
  [0.8, hex(BLUE_TEMPER)],
  [1, lit(BLUE_TEMPER, 0.6)],
];

function onRim(value: FacetValue<'shellRim'>, work: Work): Shape[] {
  const turned = [61, 65, 69.5].map((radius) => path(circle(radius), { ...hair(work.pen), strokeOpacity: 0.35 }));
  switch (value) {
    case 'bare metal': return [...turned, gloss(work, 0.4)];
    case 'blued': return turned;
    case 'light grey': return [
      film(work, hex(NOSE_TONE['light grey']), 0.85),
      stipple(work, 380, 0.26, lit(NOSE_TONE['light grey'], 1.4), 0.7),
      stipple(work, 160, 0.22, SHADOW, 0.3),
    ];
    case 'even soot': return [film(work, lit(SOOT, 1.25), 0.94), stipple(work, 260, 0.24, lit(SOOT, 2.4), 0.4)];
    case 'heavy soot': return [film(work, lit(SOOT, 0.6)), stipple(work, 520, 0.4, SHADOW, 0.6), stipple(work, 420, 0.24, lit(SOOT, 3), 0.45)];
    case 'wet oil': return [film(work, hex(DEPOSIT_TONE['wet oil']), 0.97), gloss(work, 0.95), ...drops(work, apart(work, 26), 1.1, DEPOSIT_TONE['wet oil'])];
    case 'ash': return [film(work, lit(DEPOSIT_TONE['ash crust'], 0.5)), ...crumbs(work, 420, 0.95, DEPOSIT_TONE['ash crust'])];
  }
}

/** Heavy soot does not end at an edge. */
function fluff(pen: Pen): Shape[] {
  const luck = luckOf(pen, 'fluff');
  const tufts = Array.from({ length: Math.ceil(230 / pen.coarse) }, (_, i) => {
    const edge = i % 3 === 0 ? R.bore - luck.between(-1, 2.4) : R.rim + luck.between(-1.4, 3.4);
    return blob(polar(edge, luck.next()), luck.between(0.7, 2.6) * pen.coarse ** 0.5, 0.4, luck, 6);
  });
  return [path(tufts.join(''), { fill: lit(SOOT, 0.75), stroke: 'none' })];
}
