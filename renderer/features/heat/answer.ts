import type { Band } from '../../../core/band.ts';
import { chargeAt, trappedCharge } from '../../../core/charge/trapped-charge.ts';
import { burnOffSeconds } from '../../../core/soot/burn-off.ts';
import { toAFactorOfThree } from '../../../core/soot/nose-soot.ts';
import { firingDemand, type Gap } from '../../../core/spark/demand.ts';
import { widestGap, type WidestGap } from '../../../core/spark/reserve.ts';
import type { Belief } from '../../../core/thermal/belief.ts';
import { PRE_IGNITION, SELF_CLEANING, TOO_HOT } from '../../../core/thermal/limits.ts';
import { gasAtPlug, partBand, tipBand, type GasAtPlug } from '../../../core/thermal/tip.ts';
import { celsiusToKelvin } from '../../../core/units.ts';
import type { Engine } from '../../../shared/formats/engine.ts';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import type { Celsius, Kilovolt, Megohm, Millimetre } from '../../../shared/quantities.ts';
import { ok, type Result } from '../../../shared/result.ts';
import { dutyOf, heatEngine, type Setting } from './setting.ts';

/** What the models say of one setting. */
export type Answer = {
  readonly gas: GasAtPlug;
  readonly tip: Band<Celsius>;
  readonly ground: Band<Celsius>;
  readonly demand: Band<Kilovolt>;
  readonly widest: WidestGap;
  /** Seconds in which dry soot on the tip falls to a third. */
  readonly burnOff: Band<number>;
};

/** A clean, dry plug. */
const CLEAN = 1000 as Megohm;
const seatOf = (heatStep: number): { readonly heatStep: number; readonly seat: number } => ({ heatStep, seat: 1 });

/** Every model at one setting. Errors name what lies outside and what is allowed. */
export function answerOf(engine: Engine, setting: Setting, belief: Belief): Result<Answer, readonly string[]> {
  const shape = heatEngine(engine).engine;
  const duty = dutyOf(engine, setting);
  const gas = gasAtPlug(shape, duty);
  if (!gas.ok) return gas;
  const seat = seatOf(setting.heatStep);
  const tip = tipBand(gas.value, seat, belief);
  const electrode = celsiusToKelvin(partBand(gas.value, seat, 'centre', belief).middle);
  const atSpark = chargeAt(shape.cylinder, trappedCharge(shape.cylinder, shape.strokes, duty), -duty.advance);
  const gap: Gap = { gap: setting.gap as Millimetre, gas: atSpark, electrode, lambda: duty.lambda, polarity: 'negative', wear: 0.3 };
  const demand = firingDemand(gap);
  if (!demand.ok) return demand;
  const widest = widestGap(gap, { kind: engine.ignition?.kind === 'capacitor discharge' ? 'capacitor discharge' : 'coil', open: setting.coil as Kilovolt }, CLEAN);
  if (!widest.ok) return widest;
  return ok({
    gas: gas.value, tip, demand: demand.value, widest: widest.value, ground: partBand(gas.value, seat, 'ground', belief),
    burnOff: toAFactorOfThree(burnOffSeconds(celsiusToKelvin(tip.middle), gas.value.asItStands.oxygen)),
  });
}

export const STEPS = [-2, -1, 0, 1, 2] as const;
export const LOADS = Array.from({ length: 13 }, (_, i) => 0.35 + i * (0.65 / 12));

/** A heat value over the load. Undefined where the model refuses. */
export type Rung = { readonly step: number; readonly bands: readonly (Band<Celsius> | undefined)[] };

/** Tip over load, everything else as set, for the plug as it is and its neighbours. */
export function ladderOf(engine: Engine, setting: Setting, belief: Belief): readonly Rung[] {
  const shape = heatEngine(engine).engine;
  const gases = LOADS.map((load) => gasAtPlug(shape, dutyOf(engine, { ...setting, load })));
  return STEPS.map((step) => ({ step, bands: gases.map((gas) => (gas.ok ? tipBand(gas.value, seatOf(step), belief) : undefined)) }));
}

export type Price = 'soot at light load' | 'too hot at full load' | 'soot and heat' | 'pre-ignition at full load' | 'inside';

/** What a heat value costs at the two ends of the ladder, by the middle of its band. */
export function priceOf({ bands }: Rung): Price {
  const [light, full] = [bands[0]?.middle ?? SELF_CLEANING.middle, bands.at(-1)?.middle ?? SELF_CLEANING.middle];
  if (full > PRE_IGNITION.middle) return 'pre-ignition at full load';
  if (full > TOO_HOT.middle) return light < SELF_CLEANING.middle ? 'soot and heat' : 'too hot at full load';
  return light < SELF_CLEANING.middle ? 'soot at light load' : 'inside';
}

export type Place = 'cold' | 'window' | 'hot' | 'alarm';

export function placeOf(tip: number): Place {
  if (tip < SELF_CLEANING.middle) return 'cold';
  if (tip > PRE_IGNITION.middle) return 'alarm';
  return tip > TOO_HOT.middle ? 'hot' : 'window';
}

/** A tip as it might look after long running at this temperature and mixture; an illustration, nothing more. */
export function looksLike(place: Place, lambda: number): Tip {
  switch (place) {
    case 'cold': return lambda < 0.95
      ? { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', coverage: 'full', centreElectrode: 'sharp', groundElectrode: 'as new', shellRim: 'heavy soot' }
      : { noseColour: 'dark grey', noseSurface: 'fine powder', deposit: 'light dusting', centreElectrode: 'sharp', groundElectrode: 'as new', shellRim: 'even soot' };
    case 'window': return { noseColour: 'light tan', noseSurface: 'bare', deposit: 'none', centreElectrode: 'sharp', groundElectrode: 'as new', shellRim: 'light grey' };
    case 'hot': return { noseColour: 'white', noseSurface: 'bare', deposit: 'none', centreElectrode: 'blued', groundElectrode: 'blued', shellRim: 'bare metal' };
    case 'alarm': return { noseColour: 'white', noseSurface: 'blistered', deposit: 'none', centreElectrode: 'blistered', groundElectrode: 'blued', shellRim: 'blued' };
  }
}
