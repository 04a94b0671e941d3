import { err, ok, type Result } from '../../shared/result.ts';
import type { Celsius, Kelvin } from '../../shared/quantities.ts';
import { NINETY_PERCENT, outside, widening, type Band, type Input, type Note, type Outside, type Range } from '../band.ts';
import type { Running } from '../charge/trapped-charge.ts';
import type { Fuel } from '../mixture/fuels.ts';
import { celsiusToKelvin, kelvinToCelsius } from '../units.ts';
import { offsetAt, PRIOR, type Belief, type Slopes } from './belief.ts';
import { cycleMeans, ignite, type CycleMeans, type Engine, type Work } from './cycle.ts';
import { headTemperature, plugTemperatures, type PlugSeat, type PlugTemperatures } from './plug-network.ts';
import { AS_IT_STANDS, numbersOf, UNCERTAIN_NAMES, type Uncertain } from './uncertain.ts';

/** A steady point of running. */
export type Duty = Running & {
  readonly fuel: Fuel;
  /** Relative air-fuel ratio. */
  readonly lambda: number;
  /** Degrees of crank before firing top dead centre. */
  readonly advance: number;
  readonly coolant: Celsius;
};

/** What the plug feels at a duty, whatever plug is fitted: one cycle as the model stands, one burning slower, one faster. */
export type GasAtPlug = {
  readonly coolantKelvin: number;
  readonly asItStands: CycleMeans;
  readonly slower: CycleMeans;
  readonly faster: CycleMeans;
  readonly notes: readonly Note[];
};

const range = (of: Input, least: number, most: number): Range => ({ of, least, most });

/** Beyond these the model refuses. */
const POSSIBLE = {
  compressionRatio: range('compression ratio', 3, 20), rpm: range('speed', 100, 20_000), manifold: range('manifold pressure', 10, 400),
  exhaust: range('exhaust pressure', 20, 400), inlet: range('intake temperature', -50, 150), lambda: range('lambda', 0.5, 1.8),
  advance: range('advance', -20, 70), coolant: range('coolant temperature', -50, 250),
};
/** Beyond these it answers with a wider band. Grade: judgement; the eight engines of the sensitivity table lie inside. */
const TRIED = {
  compressionRatio: range('compression ratio', 5, 14), rpm: range('speed', 500, 12_000), manifold: range('manifold pressure', 28, 250),
  exhaust: range('exhaust pressure', 60, 260), inlet: range('intake temperature', -30, 110), lambda: range('lambda', 0.65, 1.4),
  advance: range('advance', 0, 50), coolant: range('coolant temperature', -30, 200),
};

const against = (limits: typeof TRIED, { cylinder }: Engine, duty: Duty): readonly Outside[] => outside([
  [cylinder.compressionRatio, limits.compressionRatio], [duty.rpm, limits.rpm], [duty.manifold, limits.manifold], [duty.exhaust, limits.exhaust],
  [duty.inlet, limits.inlet], [duty.lambda, limits.lambda], [duty.advance, limits.advance], [duty.coolant, limits.coolant],
]);

/** The part of the answer that costs time; steps of heat value and beliefs share it. Errors name what lies outside and what is allowed. */
export function gasAtPlug(engine: Engine, duty: Duty, assumed: readonly Note[] = []): Result<GasAtPlug, readonly Outside[]> {
  const impossible = against(POSSIBLE, engine, duty);
  if (impossible.length > 0) return err(impossible);
  const work: Work = { ...duty, coolantKelvin: celsiusToKelvin(duty.coolant) };
  const ignition = ignite(engine, work);
  const burning = (draw: Partial<Uncertain>): CycleMeans => cycleMeans(engine, work, ignition, numbersOf({ ...AS_IT_STANDS, ...draw }).burn);
  return ok({
    coolantKelvin: work.coolantKelvin, asItStands: burning({}), slower: burning({ burn: 1 }), faster: burning({ burn: -1 }),
    notes: [...against(TRIED, engine, duty), ...assumed],
  });
}

/** The cycle of a draw: on the straight line from the one as it stands to the slower or the faster one. */
export function meansOf({ asItStands, slower, faster }: GasAtPlug, burn: number): CycleMeans {
  const towards = burn > 0 ? slower : faster;
  const names = Object.keys(asItStands) as (keyof CycleMeans)[];
  return Object.fromEntries(names.map((name) => [name, asItStands[name] + Math.abs(burn) * (towards[name] - asItStands[name])])) as CycleMeans;
}

/** Steady temperatures of the plug, K, with the uncertain numbers at a draw. */
function plugAt(gas: GasAtPlug, seat: PlugSeat, draw: Uncertain): PlugTemperatures {
  const means = draw.burn === 0 ? gas.asItStands : meansOf(gas, draw.burn);
  const numbers = numbersOf(draw);
  return plugTemperatures(means, headTemperature(means, gas.coolantKelvin, numbers.head), seat, numbers);
}

export type PlugPart = keyof PlugTemperatures;

/** By how much one standard deviation of each uncertain number moves a part of the plug, K: half the way from one below to one above. */
export function slopesAt(gas: GasAtPlug, seat: PlugSeat, part: PlugPart): Slopes {
  const at = (name: keyof Uncertain, sigma: number): number => plugAt(gas, seat, { ...AS_IT_STANDS, [name]: sigma })[part];
  return Object.fromEntries(UNCERTAIN_NAMES.map((name) => [name, (at(name, 1) - at(name, -1)) / 2])) as Slopes;
}

/** What the six numbers do not explain from one duty to the next, K, one standard deviation. Grade: judgement. */
export const UNEXPLAINED = 15;

/**
 * Temperature of a part of the plug with its 90 % band. Models A and B: cycle, flame, wall, four-node network. Absolute values are good to about 125 K;
 * differences and trends are the use. With a belief made from readings of this engine the band is narrower and its basis is `calibrated`.
 */
export function partBand(gas: GasAtPlug, seat: PlugSeat, part: PlugPart, belief: Belief = PRIOR): Band<Celsius> {
  const offset = offsetAt(belief, slopesAt(gas, seat, part));
  const middle = kelvinToCelsius((plugAt(gas, seat, AS_IT_STANDS)[part] + offset.mean) as Kelvin);
  const half = NINETY_PERCENT * Math.sqrt(offset.variance + UNEXPLAINED ** 2) * widening(gas.notes);
  return {
    low: (middle - half) as Celsius, middle, high: (middle + half) as Celsius,
    basis: belief.readings > 0 ? 'calibrated' : 'predicted', notes: gas.notes,
  };
}

export const tipBand = (gas: GasAtPlug, seat: PlugSeat, belief?: Belief): Band<Celsius> => partBand(gas, seat, 'nose', belief);
