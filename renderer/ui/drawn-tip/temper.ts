import type { FacetValue } from '../../../shared/vocabulary/tip.ts';
import { BLUE_TEMPER, hex, lit, mixed, NICKEL, PURPLE_TEMPER, SOOT, STEEL, STRAW_TEMPER } from './palette.ts';
import type { Stop } from './shape.ts';

/** How far from the end of the ground electrode its colour changes, as a share of its length. */
const HEAT_LINE_AT: Readonly<Record<Exclude<FacetValue<'heatLine'>, 'none visible'>, number>> = {
  'near the end': 0.2, 'at the bend': 0.55, 'near the weld': 0.84,
};

const cool = mixed(STEEL, SOOT, 0.82);

/** The colours of the ground electrode from its end to its weld. */
export function heatStops(ground: FacetValue<'groundElectrode'> | undefined, heatLine: FacetValue<'heatLine'> | undefined): readonly Stop[] {
  if (heatLine === undefined || heatLine === 'none visible') return ground === 'blued' ? BLUED : [[0, lit(NICKEL, 1.02)], [1, lit(NICKEL, 0.72)]];
  const at = HEAT_LINE_AT[heatLine];
  const bright: readonly Stop[] = [[0, lit(NICKEL, 1.15)], [at - 0.1, lit(NICKEL, 1.05)]];
  const hot = ground === 'blued' ? BLUED.slice(0, 3).map(([place, colour]): Stop => [place * at, colour]) : bright;
  return [...hot, [at - 0.07, hex(STRAW_TEMPER)], [at - 0.02, hex(PURPLE_TEMPER)], [at + 0.01, hex(BLUE_TEMPER)], [at + 0.05, hex(cool)], [1, lit(cool, 0.8)]];
}

const BLUED: readonly Stop[] = [
  [0, hex(BLUE_TEMPER)],
  [0.3, lit(BLUE_TEMPER, 1.35)],
  [0.5, hex(PURPLE_TEMPER)],
  [0.7, hex(STRAW_TEMPER)],
  [1, lit(NICKEL, 0.75)],
];
