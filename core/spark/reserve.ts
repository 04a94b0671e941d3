import { ok, type Result } from '../../shared/result.ts';
import type { Kilovolt, Megohm, Millimetre } from '../../shared/quantities.ts';
import type { Band, Outside } from '../band.ts';
import { normalBelow } from '../numbers/normal.ts';
import { firingDemand, type Gap } from './demand.ts';

/** Inner resistance of an ignition against a slow drain, MΩ. Grade: guess; SAE 922093 gives the direction: fast systems tolerate fouling. */
const SOURCE_RESISTANCE = { coil: 0.3, 'capacitor discharge': 0.04 };
export type Ignition = { readonly kind: keyof typeof SOURCE_RESISTANCE; /** Without a plug. */ readonly open: Kilovolt };

/** One standard deviation of the demand from spark to spark, as a share. Grade: guess. */
const SCATTER = 0.12;
/** Share of sparks that may fail before a gap is called too wide. Grade: judgement. */
const TOLERABLE = 0.001;

/** What is left for the gap when soot on the nose drains the coil. */
export const availableVoltage = ({ kind, open }: Ignition, shunt: Megohm): Kilovolt => (open / (1 + SOURCE_RESISTANCE[kind] / shunt)) as Kilovolt;

/** Share of sparks that fail, 0 to 1, at a demand. */
export const misfireShare = (demand: Kilovolt, available: Kilovolt): number => normalBelow((demand - available) / (SCATTER * demand));

const LEAST_GAP = 0.3;
/** mm; wider ones were not tried. */
export const MOST_GAP = 1.5;
const FINENESS = 0.01; // mm

/** Largest gap, mm, at which an end of the demand band still fires; undefined when none does. */
function largest(gap: Gap, available: Kilovolt, end: (band: Band<Kilovolt>) => Kilovolt): Millimetre | undefined {
  let found: Millimetre | undefined;
  for (let i = 0; LEAST_GAP + i * FINENESS <= MOST_GAP + FINENESS / 2; i += 1) {
    const width = Number((LEAST_GAP + i * FINENESS).toFixed(2)) as Millimetre;
    const demand = firingDemand({ ...gap, gap: width });
    if (!demand.ok || misfireShare(end(demand.value), available) > TOLERABLE) break;
    found = width;
  }
  return found;
}

/** Widest gap that fires for certain, in the middle, and with luck; a range, because the demand is one. Undefined: not even 0.3 mm. */
export type WidestGap = { readonly surely: Millimetre | undefined; readonly likely: Millimetre | undefined; readonly perhaps: Millimetre | undefined };

/** How wide a gap the ignition can fire at this running. The engine maker's gap comes first. Errors as of `firingDemand`. */
export function widestGap(gap: Gap, ignition: Ignition, shunt: Megohm): Result<WidestGap, readonly Outside[]> {
  const asked = firingDemand(gap);
  if (!asked.ok) return asked;
  const available = availableVoltage(ignition, shunt);
  return ok({
    surely: largest(gap, available, ({ high }) => high),
    likely: largest(gap, available, ({ middle }) => middle),
    perhaps: largest(gap, available, ({ low }) => low),
  });
}
