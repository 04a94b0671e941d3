import type { Engine } from '../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Metre } from '../../shared/quantities.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import type { Duty, Fuel } from '../../shared/vocabulary/conditions.ts';
import type { Use } from '../../shared/vocabulary/engine.ts';
import type { ModelFuel } from '../../shared/vocabulary/heat.ts';
import type { Assumed } from '../band.ts';
import { airTemperature } from '../mixture/atmosphere.ts';
import { lambdaReached, usualSetting, type Setting } from './setting.ts';

/** What a record must hold before the model is asked about it. */
export type Lacking = 'bore' | 'stroke' | 'compression ratio' | 'heat value' | 'fitted heat value' | 'one heat value' | 'duty' | 'speed';

export type RecordedRunning = { readonly setting: Setting; readonly duty: SteadyDuty; readonly assumed: readonly Assumed[] };

/** Duties at which an engine runs alike for some time. */
export type SteadyDuty = Exclude<Duty, 'short trips' | 'mixed'>;
const isSteady = (duty: Duty | undefined): duty is SteadyDuty => duty !== undefined && duty !== 'short trips' && duty !== 'mixed';

/** Share of the air the engine could take. Grade: judgement; the car values are those of the points the model is shown at. */
const LOAD: Readonly<Record<SteadyDuty, number>> = { idle: 0.32, town: 0.4, 'light load': 0.4, 'steady cruise': 0.45, 'full load': 1 };
/** These cruise at three quarters of their power. Grade: common practice, no source. */
const HARD_CRUISERS: readonly Use[] = ['aircraft', 'marine', 'industrial', 'farm', 'stationary'];
/** Where nobody recorded them. Grade: judgement. */
const LAMBDA: Readonly<Record<SteadyDuty, number>> = { idle: 0.95, town: 1, 'light load': 1, 'steady cruise': 1, 'full load': 0.88 };
const ADVANCE: Readonly<Record<SteadyDuty, number>> = { idle: 12, town: 30, 'light load': 32, 'steady cruise': 34, 'full load': 26 };
const BOOSTED_ADVANCE = 16;

const MODEL_FUEL: Readonly<Record<Fuel, ModelFuel>> = {
  petrol: 'petrol', E10: 'E10', E85: 'E85', ethanol: 'ethanol', methanol: 'methanol', 'leaded petrol': 'petrol', avgas: 'avgas', LPG: 'LPG',
  'natural gas': 'methane', 'two-stroke premix': 'petrol',
};

/** Steps of the fitted plugs from the heat value the engine maker asks for; undefined where it was not noted, `several` where they differ. */
function fittedStep({ plugs }: ReadingSheet): number | 'several' | undefined {
  const steps = plugs.flatMap(({ fitted }) => {
    const step = fitted?.heatStepsFromSpecified ?? (fitted?.matchesSpecified === true ? 0 : undefined);
    return step === undefined ? [] : [step];
  });
  const [first] = steps;
  return steps.every((step) => step === first) ? first : 'several';
}

/** What the engine's record lacks. */
export function lackingOfEngine({ boreMm, strokeMm, compressionRatio, fitment }: Engine): readonly Lacking[] {
  const known = { bore: boreMm, stroke: strokeMm, 'compression ratio': compressionRatio, 'heat value': fitment?.heat };
  return (Object.keys(known) as (keyof typeof known)[]).filter((name) => known[name] === undefined);
}

function lackingOf(sheet: ReadingSheet, duty: Duty | undefined, step: number | 'several' | undefined): readonly Lacking[] {
  return [
    ...lackingOfEngine(sheet.engine),
    ...(step === undefined ? ['fitted heat value' as const] : []),
    ...(step === 'several' ? ['one heat value' as const] : []),
    ...(isSteady(duty) ? [] : ['duty' as const]),
    ...(sheet.conditions?.speedRpm === undefined ? ['speed' as const] : []),
  ];
}

function advanceFor(engine: Engine, duty: SteadyDuty): number {
  if (duty === 'full load' && engine.aspiration === 'boosted') return BOOSTED_ADVANCE;
  return engine.cycle === 'two-stroke' || engine.use === 'aircraft' ? usualSetting(engine).advance : ADVANCE[duty];
}

const loadOf = ({ use }: Engine, duty: SteadyDuty): number => (duty === 'steady cruise' && HARD_CRUISERS.includes(use) ? 0.75 : LOAD[duty]);

/** The usual setting with what was noted of speed, air, coolant and fuel. Air was noted where the engine ran, the setting counts from the sea. */
function surroundings({ engine, conditions = {} }: ReadingSheet): Setting {
  const usual = usualSetting(engine);
  const { fuel, altitudeM: altitude = 0, ambientC = usual.inlet } = conditions;
  const { speedRpm: rpm = usual.rpm, boostKPa: boost = usual.boost, coolantC: coolant = usual.coolant } = conditions;
  const cooler = airTemperature(altitude as Metre) - airTemperature(0 as Metre);
  return { ...usual, altitude, rpm, boost, coolant, inlet: ambientC - cooler, fuel: fuel === undefined ? usual.fuel : MODEL_FUEL[fuel] };
}

/** The setting of the model at which this much lambda reaches the cylinder. */
const lambdaSet = (engine: Engine, setting: Setting, reached: number): number => reached / lambdaReached(engine, { ...setting, lambda: 1 });

/**
 * How the engine of a sheet ran, as the model needs it, or what the sheet lacks. Load follows from the word for the duty; mixture and advance that
 * nobody recorded are assumed, said to be so, and widen every band.
 */
export function recordedRunning(sheet: ReadingSheet): Result<RecordedRunning, readonly Lacking[]> {
  const { engine, conditions = {} } = sheet;
  const { duty } = conditions;
  const step = fittedStep(sheet);
  const lacking = lackingOf(sheet, duty, step);
  if (lacking.length > 0 || !isSteady(duty) || typeof step !== 'number') return err(lacking);
  const [lambda, advance] = [conditions.lambda ?? LAMBDA[duty], conditions.advanceDeg ?? advanceFor(engine, duty)];
  const setting = { ...surroundings(sheet), advance, heatStep: step, load: loadOf(engine, duty) };
  return ok({
    duty, setting: { ...setting, lambda: lambdaSet(engine, setting, lambda) },
    assumed: [
      ...(conditions.lambda === undefined ? [{ kind: 'assumed', of: 'lambda', value: lambda } as const] : []),
      ...(conditions.advanceDeg === undefined ? [{ kind: 'assumed', of: 'advance', value: advance } as const] : []),
    ],
  });
}
