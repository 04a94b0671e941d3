import type { Engine } from '../../shared/formats/engine.ts';
import type { Celsius, Kilovolt, Megohm, Millimetre } from '../../shared/quantities.ts';
import { ok, type Result } from '../../shared/result.ts';
import type { Band, Outside } from '../band.ts';
import { chargeAt, relativeDensity, trappedCharge } from '../charge/trapped-charge.ts';
import { burnOffSeconds } from '../soot/burn-off.ts';
import { shuntResistance, sootAtSteady, toAFactorOfThree } from '../soot/nose-soot.ts';
import { engineCorrelationVoltage } from '../spark/breakdown.ts';
import { firingDemand, type Gap } from '../spark/demand.ts';
import { availableVoltage, misfireShare, widestGap, type Ignition, type WidestGap } from '../spark/reserve.ts';
import type { Belief } from '../thermal/belief.ts';
import { gasAtPlug, partBand, tipBand, type GasAtPlug } from '../thermal/tip.ts';
import { celsiusToKelvin } from '../units.ts';
import { dutyOf, heatEngine, type Setting } from './setting.ts';

/** State of the plug as far as the spark goes. Insulation in MΩ; wear from 0 sharp to 1 rounded. */
export type PlugState = { readonly insulation: number; readonly wear: number; readonly polarity: Gap['polarity'] };
const HOUR = 3600; // s
/** A clean, dry plug with its first edges gone. */
export const CLEAN_PLUG: PlugState = { insulation: 1000, wear: 0.3, polarity: 'negative' };

/** What the models say of one setting. */
export type Answer = {
  readonly gas: GasAtPlug;
  readonly tip: Band<Celsius>;
  readonly ground: Band<Celsius>;
  readonly demand: Band<Kilovolt>;
  /** What the ignition can give with the nose as it is. */
  readonly available: Kilovolt;
  readonly widest: WidestGap;
  /** Share of sparks that fail, 0 to 1: at the low end, the middle and the high end of the demand. */
  readonly misfires: { readonly low: number; readonly middle: number; readonly high: number };
  /** Seconds in which dry soot on the tip falls to a third. */
  readonly burnOff: Band<number>;
  /** Insulation of a clean nose after an hour of this, the engine warm. Good to a factor of three in time. */
  readonly afterAnHour: Megohm;
  /** Gas at the spark against air of 20 °C and 101.325 kPa. */
  readonly density: number;
};

const ignitionOf = (engine: Engine, coil: number): Ignition =>
  ({ kind: engine.ignition?.kind === 'capacitor discharge' ? 'capacitor discharge' : 'coil', open: coil as Kilovolt });

type Felt = { readonly gas: GasAtPlug; readonly gap: Gap };

function gapAt(engine: Engine, setting: Setting, belief: Belief, { wear, polarity }: PlugState): Result<Felt, readonly Outside[]> {
  const shape = heatEngine(engine).engine;
  const duty = dutyOf(engine, setting);
  const gas = gasAtPlug(shape, duty);
  if (!gas.ok) return gas;
  const electrode = celsiusToKelvin(partBand(gas.value, { heatStep: setting.heatStep, seat: 1 }, 'centre', belief).middle);
  const atSpark = chargeAt(shape.cylinder, trappedCharge(shape.cylinder, shape.strokes, duty), -duty.advance);
  return ok({ gas: gas.value, gap: { gap: setting.gap as Millimetre, gas: atSpark, electrode, lambda: duty.lambda, polarity, wear } });
}

/** Every model at one setting. Errors name what lies outside and what is allowed. */
export function answerOf(engine: Engine, setting: Setting, belief: Belief, plug: PlugState = CLEAN_PLUG): Result<Answer, readonly Outside[]> {
  const felt = gapAt(engine, setting, belief, plug);
  if (!felt.ok) return felt;
  const { gas, gap } = felt.value;
  const demand = firingDemand(gap);
  if (!demand.ok) return demand;
  const ignition = ignitionOf(engine, setting.coil);
  const widest = widestGap(gap, ignition, plug.insulation as Megohm);
  if (!widest.ok) return widest;
  const seat = { heatStep: setting.heatStep, seat: 1 };
  const tip = tipBand(gas, seat, belief);
  const plugNow = { nose: celsiusToKelvin(tip.middle), shell: celsiusToKelvin(partBand(gas, seat, 'shell', belief).middle) };
  const { oxygen, fuelFlow } = gas.asItStands;
  const available = availableVoltage(ignition, plug.insulation as Megohm);
  const misfires = (kilovolt: Kilovolt): number => misfireShare(kilovolt, available);
  return ok({
    gas, tip, demand: demand.value, available, widest: widest.value, ground: partBand(gas, seat, 'ground', belief), density: relativeDensity(gap.gas),
    misfires: { low: misfires(demand.value.low), middle: misfires(demand.value.middle), high: misfires(demand.value.high) },
    burnOff: toAFactorOfThree(burnOffSeconds(plugNow.nose, oxygen)),
    afterAnHour: shuntResistance(sootAtSteady({ plug: plugNow, oxygen, fuelFlow, lambda: gap.lambda }, HOUR)),
  });
}

/** Demand at one gap, kV: the model with its band, and the correlation that was fitted on engines. */
export type DemandAt = { readonly gap: number; readonly model: Band<Kilovolt>; readonly correlation: number };
export const GAPS = Array.from({ length: 25 }, (_, i) => Number((0.3 + 0.05 * i).toFixed(2)));

/** Demand over the gap, everything else as set; gaps at which the model refuses are left out. */
export function demandOverGap(engine: Engine, setting: Setting, belief: Belief, plug: PlugState): readonly DemandAt[] {
  const felt = gapAt(engine, setting, belief, plug);
  if (!felt.ok) return [];
  const { gap } = felt.value;
  return GAPS.flatMap((width) => {
    const model = firingDemand({ ...gap, gap: width as Millimetre });
    return model.ok ? [{ gap: width, model: model.value, correlation: engineCorrelationVoltage(gap.gas.pressure, gap.gas.temperature, width) }] : [];
  });
}
