import type { Celsius, Kelvin } from '../../shared/quantities.ts';
import { NINETY_PERCENT, widening, type Band } from '../band.ts';
import { normalBelow, normalDensity } from '../numbers/normal.ts';
import { kelvinToCelsius } from '../units.ts';
import { afterOffset, offsetAt, PRIOR, type Belief, type Slopes } from './belief.ts';
import { PRE_IGNITION, SELF_CLEANING, TOO_HOT, type SoftEdge } from './limits.ts';
import type { PlugSeat } from './plug-network.ts';
import { partBand, slopesAt, UNEXPLAINED, type GasAtPlug } from './tip.ts';
import { AS_IT_STANDS } from './uncertain.ts';

/** What one plug of the engine told about its temperature under known running. */
export type TipReading = {
  readonly gas: GasAtPlug;
  readonly seat: PlugSeat;
  readonly showed:
    /** Dry soot stayed or went, the glaze blistered or did not, an electrode melted: the tip stood on one side of a limit. */
    | { readonly kind: keyof typeof SIDES }
    /** A plug that is known to be right at this, its hardest duty. */
    | { readonly kind: 'known good' }
    /** The engine maker asks for this heat value: taken to be about right at full load, with twice the width of one known to be right. */
    | { readonly kind: 'specified' }
    /** A thermocouple in the nose. */
    | { readonly kind: 'thermocouple'; readonly value: Celsius }
    /** A thermocouple in the exhaust. */
    | { readonly kind: 'exhaust'; readonly value: Celsius };
};

type Side = { readonly edge: SoftEdge; readonly side: 'below' | 'above' };
const SIDES = {
  'soot kept': { edge: SELF_CLEANING, side: 'below' },
  'self-cleaned': { edge: SELF_CLEANING, side: 'above' },
  'not blistered': { edge: TOO_HOT, side: 'below' },
  blistered: { edge: TOO_HOT, side: 'above' },
  // Melting follows pre-ignition, which the model does not know: all it says is that the tip got that far.
  melted: { edge: PRE_IGNITION, side: 'above' },
} as const satisfies Record<string, Side>;
/** 700 to 800 °C, nine times in ten. Grade: common practice for a plug that is right at its hardest duty. */
const KNOWN_GOOD = { value: 750, deviation: 50 / NINETY_PERCENT };
/** Grade: judgement; makers choose a plug for the hardest use they allow. */
const SPECIFIED = { value: 750, deviation: 100 / NINETY_PERCENT };
/** Of a thermocouple in a plug: place and lead error, K. Grade: judgement. */
const THERMOCOUPLE_DEVIATION = 10;
/** Of an exhaust temperature: pulses, place, radiation, and what the model does not know of the exhaust, K. Grade: judgement. */
const EXHAUST_DEVIATION = 75;

/** One line of the arithmetic, °C and K: the band before, what the reading says, the band after. */
export type AnchorStep = {
  readonly kind: TipReading['showed']['kind'];
  readonly before: Band<Celsius>;
  readonly after: Band<Celsius>;
  /** What was read: a value, or a side of a limit, with its standard deviation. */
  readonly says: { readonly about: 'value' | 'exhaust' | 'above' | 'below'; readonly celsius: number; readonly deviation: number };
  /** How surely the model expected this reading, 0 to 1, for a side; how many deviations the value was off, for a value. */
  readonly surprise: number;
};

const deviationOf = ({ from, to }: SoftEdge): number => (to - from) / 2 / NINETY_PERCENT;

function saying(showed: TipReading['showed']): AnchorStep['says'] {
  switch (showed.kind) {
    case 'thermocouple': return { about: 'value', celsius: showed.value, deviation: THERMOCOUPLE_DEVIATION };
    case 'exhaust': return { about: 'exhaust', celsius: showed.value, deviation: EXHAUST_DEVIATION };
    case 'known good': return { about: 'value', celsius: KNOWN_GOOD.value, deviation: KNOWN_GOOD.deviation };
    case 'specified': return { about: 'value', celsius: SPECIFIED.value, deviation: SPECIFIED.deviation };
    default: {
      const { edge, side } = SIDES[showed.kind];
      return { about: side, celsius: edge.middle, deviation: deviationOf(edge) };
    }
  }
}

type Offset = { readonly mean: number; readonly variance: number };

/** A measured offset: the two are averaged, each weighted by one over its variance. */
function withValue(prior: Offset, measured: Offset): Offset {
  const gain = prior.variance / (prior.variance + measured.variance);
  return { mean: prior.mean + gain * (measured.mean - prior.mean), variance: (1 - gain) * prior.variance };
}

/** An offset known to lie above (side 1) or below (side -1) a soft limit: mean and variance of the normal distribution cut by a probit. */
function withSide(prior: Offset, limit: Offset, side: 1 | -1): Offset {
  const spread = Math.sqrt(prior.variance + limit.variance);
  const z = (side * (prior.mean - limit.mean)) / spread;
  const pull = normalDensity(z) / Math.max(1e-12, normalBelow(z));
  return {
    mean: prior.mean + (side * prior.variance * pull) / spread,
    variance: Math.max(1e-9, prior.variance - (prior.variance ** 2 * pull * (z + pull)) / spread ** 2),
  };
}

/** What the model as it stands expects of the thing that was read, °C, and how its uncertain numbers move that. */
function expected({ gas, seat, showed }: TipReading): { readonly celsius: number; readonly slopes: Slopes } {
  if (showed.kind !== 'exhaust') return { celsius: partBand(gas, seat, 'nose').middle, slopes: slopesAt(gas, seat, 'nose') };
  const burn = (gas.slower.exhaustKelvin - gas.faster.exhaustKelvin) / 2; // of the six numbers only the burn reaches the exhaust
  return { celsius: kelvinToCelsius(gas.asItStands.exhaustKelvin as Kelvin), slopes: { ...AS_IT_STANDS, burn } };
}

/** One reading, from the belief before to the belief after, with its arithmetic. */
function anchored(belief: Belief, reading: TipReading): { readonly belief: Belief; readonly step: AnchorStep } {
  const { gas, seat, showed } = reading;
  const { celsius, slopes } = expected(reading);
  const prior = offsetAt(belief, slopes);
  const says = saying(showed);
  const offset = { mean: says.celsius - celsius, variance: (says.deviation ** 2 + UNEXPLAINED ** 2) * widening(gas.notes) ** 2 };
  const away = (offset.mean - prior.mean) / Math.sqrt(prior.variance + offset.variance);
  const side = says.about === 'above' ? 1 : -1;
  const isValue = says.about === 'value' || says.about === 'exhaust';
  const next = afterOffset(belief, slopes, isValue ? withValue(prior, offset) : withSide(prior, offset, side));
  const surprise = isValue ? Math.abs(away) : normalBelow(-side * away);
  const [before, after] = [partBand(gas, seat, 'nose', belief), partBand(gas, seat, 'nose', next)];
  return { belief: next, step: { kind: showed.kind, before, after, says, surprise } };
}

/**
 * The model corrected by the engine's own readings, one after the other. The prior is the model's stated uncertainty; every reading moves the six
 * uncertain numbers by as much as they have to do with it, so a reading at one duty also narrows the band at others, and less so the less alike they are.
 */
export function anchor(readings: readonly TipReading[]): { readonly belief: Belief; readonly steps: readonly AnchorStep[] } {
  return readings.reduce<{ belief: Belief; steps: readonly AnchorStep[] }>(({ belief, steps }, reading) => {
    const next = anchored(belief, reading);
    return { belief: next.belief, steps: [...steps, next.step] };
  }, { belief: PRIOR, steps: [] });
}

