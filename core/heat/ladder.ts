import type { Engine } from '../../shared/formats/engine.ts';
import type { Celsius } from '../../shared/quantities.ts';
import { NINETY_PERCENT, type Band } from '../band.ts';
import { normalBelow } from '../numbers/normal.ts';
import type { Belief } from '../thermal/belief.ts';
import { SELF_CLEANING, TOO_HOT, type SoftEdge } from '../thermal/limits.ts';
import { gasAtPlug, tipBand } from '../thermal/tip.ts';
import { dutyOf, heatEngine, type Setting } from './setting.ts';

export const STEPS = [-2, -1, 0, 1, 2] as const;
export const LOADS = Array.from({ length: 13 }, (_, i) => 0.35 + i * (0.65 / 12));

/** A heat value over the load. Undefined where the model refuses. */
export type Rung = { readonly step: number; readonly bands: readonly (Band<Celsius> | undefined)[] };

/** Tip over load, everything else as set, for the plug the engine maker asks for and its neighbours. */
export function ladderOf(engine: Engine, setting: Setting, belief: Belief): readonly Rung[] {
  const shape = heatEngine(engine).engine;
  const gases = LOADS.map((load) => gasAtPlug(shape, dutyOf(engine, { ...setting, load })));
  return STEPS.map((step) => ({ step, bands: gases.map((gas) => (gas.ok ? tipBand(gas.value, { heatStep: step, seat: 1 }, belief) : undefined)) }));
}

/** Chance, 0 to 1, that a tip stands above a limit of which sources disagree: both are taken as normal, nine times in ten within their spread. */
export function chanceAbove({ low, middle, high }: Pick<Band<number>, 'low' | 'middle' | 'high'>, { middle: limit, from, to }: SoftEdge): number {
  const deviation = (least: number, most: number): number => (most - least) / 2 / NINETY_PERCENT;
  return normalBelow((middle - limit) / Math.hypot(deviation(low, high), deviation(from, to)));
}

/** What a heat value costs. */
export type Price = {
  readonly step: number;
  /** Chance of being too hot at full load, 0 to 1. */
  readonly tooHot: number;
  /** Least load, 0 to 1, from which the middle of the band cleans itself; undefined: at none. */
  readonly cleansFrom: number | undefined;
};

/** Where a rising line first reaches a value, between the loads at which it was computed. */
function firstReaching(bands: Rung['bands'], celsius: number): number | undefined {
  const i = bands.findIndex((band) => band !== undefined && band.middle >= celsius);
  const [before, at] = [bands[i - 1]?.middle, bands[i]?.middle];
  const [from, to] = [LOADS[i - 1], LOADS[i]];
  if (i < 0 || to === undefined || at === undefined) return undefined;
  return before === undefined || from === undefined ? to : from + ((celsius - before) / (at - before)) * (to - from);
}

export function priceOf({ step, bands }: Rung): Price {
  const full = bands.at(-1);
  return { step, tooHot: full === undefined ? 1 : chanceAbove(full, TOO_HOT), cleansFrom: firstReaching(bands, SELF_CLEANING.middle) };
}

/** Up to this chance of being too hot at full load a heat value counts as inside the window. Grade: judgement. */
export const BEARABLE = 0.25;

/** The hottest heat value that stays inside the window at full load: it fouls least. Undefined when even the coldest of the ladder is too hot. */
export const hottestInside = (rungs: readonly Rung[]): Price | undefined =>
  rungs.map(priceOf).filter(({ tooHot }) => tooHot <= BEARABLE).sort((a, b) => b.step - a.step)[0];
