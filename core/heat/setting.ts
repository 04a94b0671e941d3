import { airPressure, airTemperature, standardDensity } from '../mixture/atmosphere.ts';
import { lambdaOnOtherAir, lambdaOnOtherFuel } from '../mixture/carburettor.ts';
import { FUELS } from '../mixture/fuels.ts';
import type { Engine as HeatEngine } from '../thermal/cycle.ts';
import type { Duty } from '../thermal/tip.ts';
import type { HeatSetting } from '../../shared/channels-heat.ts';
import type { Engine } from '../../shared/formats/engine.ts';
import type { Celsius, Kilopascal, Metre, Millimetre } from '../../shared/quantities.ts';

/** A running that the model is asked about; load is the share of the air the engine could take, 0 to 1. */
export type Setting = HeatSetting;
export type Slider = Exclude<keyof Setting, 'fuel'>;

/** Assumed where the engine's page does not say. */
const USUAL = { bore: 82, rodPerStroke: 1.65, strokePerBore: 1, ratio: 9 };
const FASTEST_PISTON = 22; // m/s

export type Assumed = readonly ('bore' | 'stroke' | 'compressionRatio')[];

/** The engine as the model needs it, and what had to be assumed. The rod hardly matters and is assumed in silence. */
export function heatEngine(engine: Engine): { readonly engine: HeatEngine; readonly assumed: Assumed } {
  const bore = engine.boreMm ?? USUAL.bore;
  const stroke = engine.strokeMm ?? bore * USUAL.strokePerBore;
  const assumed = ([['bore', engine.boreMm], ['stroke', engine.strokeMm], ['compressionRatio', engine.compressionRatio]] as const)
    .filter(([, value]) => value === undefined).map(([name]) => name);
  return {
    assumed,
    engine: {
      strokes: engine.cycle === 'two-stroke' ? 2 : 4,
      cylinder: {
        bore: bore as Millimetre, stroke: stroke as Millimetre, rod: (engine.rodMm ?? USUAL.rodPerStroke * stroke) as Millimetre,
        compressionRatio: engine.compressionRatio ?? USUAL.ratio,
      },
    },
  };
}

/** Fastest speed of the slider: what the mean piston speed of a racing engine allows. */
export const fastest = ({ cylinder: { stroke } }: HeatEngine): number => Math.min(16_000, Math.floor((FASTEST_PISTON * 30_000) / stroke / 500) * 500);

/** Where the sliders stand at first. */
export function usualSetting(engine: Engine): Setting {
  const { engine: { cylinder, strokes } } = heatEngine(engine);
  return {
    load: 1, rpm: Math.round((0.6 * fastest({ cylinder, strokes })) / 100) * 100, lambda: 0.9, advance: strokes === 2 ? 20 : 26,
    boost: engine.aspiration === 'boosted' ? 60 : 0, inlet: 25, coolant: engine.cooling === 'air' ? 150 : 90, altitude: 0, heatStep: 0,
    gap: engine.fitment?.gapMm ?? 0.7, coil: 25, fuel: engine.use === 'aircraft' ? 'avgas' : 'petrol',
  };
}

/** A plain carburettor meters by the air and the fuel it was set for: sea level and petrol. Injection corrects itself. */
const isPlain = (engine: Engine): boolean => engine.mixture?.kind === 'carburettor';

/** Lambda that reaches the cylinder. */
export function lambdaReached(engine: Engine, { lambda, altitude, fuel }: Setting): number {
  if (!isPlain(engine)) return lambda;
  const onAir = lambdaOnOtherAir(lambda, standardDensity(altitude as Metre) / standardDensity(0 as Metre));
  const setFor = engine.use === 'aircraft' ? FUELS.avgas : FUELS.petrol;
  return lambdaOnOtherFuel(onAir, setFor, FUELS[fuel]);
}

/** The point of running that a setting means for an engine. */
export function dutyOf(engine: Engine, setting: Setting): Duty {
  const outside = airPressure(setting.altitude as Metre) / 1000;
  const cooler = airTemperature(setting.altitude as Metre) - airTemperature(0 as Metre);
  return {
    rpm: setting.rpm, lambda: lambdaReached(engine, setting), advance: setting.advance, fuel: FUELS[setting.fuel],
    manifold: (setting.load * (outside + setting.boost)) as Kilopascal,
    exhaust: (1.02 * outside + setting.load * setting.boost) as Kilopascal,
    inlet: (setting.inlet + cooler) as Celsius, coolant: setting.coolant as Celsius,
  };
}
