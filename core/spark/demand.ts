import { err, ok, type Result } from '../../shared/result.ts';
import type { Kelvin, Kilovolt, Millimetre } from '../../shared/quantities.ts';
import { outside, widening, type Band, type Outside, type Range } from '../band.ts';
import { relativeDensity, type GasState } from '../charge/trapped-charge.ts';
import { engineCorrelationVoltage, uniformFieldVoltage } from './breakdown.ts';

/** The gap and what lies in it at the spark. */
export type Gap = {
  readonly gap: Millimetre;
  /** Gas at the spark, Pa and K. */
  readonly gas: GasState;
  readonly electrode: Kelvin;
  readonly lambda: number;
  /** The sign of the centre electrode. */
  readonly polarity: 'negative' | 'positive';
  /** 0 sharp edges, 1 rounded. */
  readonly wear: number;
};

/** Share of the electrode's extra heat that the gas in the gap takes on. Grade: fitted. */
const NEAR_ELECTRODE = 0.25;
const POLARITY = { negative: 1, positive: 1.2 }; // common practice; 15 to 40 % is quoted
const WEAR = 0.15; // fitted
const LEAN = 0.1; // fitted; most of what a weak mixture asks is density

const POSSIBLE = {
  gap: { of: 'gap', least: 0.1, most: 3 }, density: { of: 'gas density', least: 0.2, most: 40 },
  wear: { of: 'wear of the edges', least: 0, most: 1 }, lambda: { of: 'lambda', least: 0.3, most: 3 },
} as const satisfies Record<string, Range>;
const TRIED = {
  gap: { of: 'gap', least: 0.3, most: 1.5 }, density: { of: 'gas density', least: 1, most: 16 },
} as const satisfies Record<string, Range>;
/** Relative density from which the engine correlation was made for engines, not free air. */
const CORRELATION_FROM = 3;
/** The model's own uncertainty. Grade: judgement. */
const UNCERTAINTY = 0.25;

const held = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** Voltage of a real gap over that of a uniform field. Fitted to 2 to 3 kV for 0.6 mm in free air and about 8 kV at compression ratio 8. */
const fieldFactor = (density: number): number => held(0.95 - 0.075 * Math.log(density), 0.6, 0.98);

/** Gas in the gap, warmed or cooled by the electrodes. */
const inTheGap = ({ gas, electrode }: Gap): GasState =>
  ({ pressure: gas.pressure, temperature: gas.temperature + NEAR_ELECTRODE * (electrode - gas.temperature) });

/** kV */
function demanded(gap: Gap): number {
  const density = relativeDensity(inTheGap(gap));
  const mixture = 1 + LEAN * held(gap.lambda - 0.9, -0.2, 0.5);
  return uniformFieldVoltage(density, gap.gap) * fieldFactor(density) * POLARITY[gap.polarity] * (1 + WEAR * gap.wear) * mixture;
}

/**
 * Voltage the gap asks of the coil, with its band: a quarter to either side, stretched to take in the engine correlation, which has half the slope
 * with gap. Tried for one ground electrode, gap 0.3 to 1.5 mm, relative density 1 to 16; not for surface gaps, pre-chambers or bridged gaps.
 */
export function firingDemand(gap: Gap): Result<Band<Kilovolt>, readonly Outside[]> {
  const density = relativeDensity(inTheGap(gap));
  const impossible = outside([[gap.gap, POSSIBLE.gap], [density, POSSIBLE.density], [gap.wear, POSSIBLE.wear], [gap.lambda, POSSIBLE.lambda]]);
  if (impossible.length > 0) return err(impossible);
  const notes = outside([[gap.gap, TRIED.gap], [density, TRIED.density]]);
  const middle = demanded(gap);
  const half = UNCERTAINTY * widening(notes) * middle;
  const other = density < CORRELATION_FROM ? middle : engineCorrelationVoltage(gap.gas.pressure, gap.gas.temperature, gap.gap);
  return ok({
    low: Math.min(middle - half, other) as Kilovolt, middle: middle as Kilovolt, high: Math.max(middle + half, other) as Kilovolt, basis: 'predicted', notes,
  });
}
