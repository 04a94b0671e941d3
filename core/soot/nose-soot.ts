import type { Megohm } from '../../shared/quantities.ts';
import type { Band } from '../band.ts';
import type { DriveSecond } from '../thermal/drive.ts';
import { burnOffSeconds } from './burn-off.ts';

/** Soot on three bands of the nose, tip to root; 1 on all three means 10 MΩ. Dry carbon only: no oil, lead, ash or wet fuel. */
export type NoseSoot = readonly [tip: number, middle: number, root: number];
export const CLEAN: NoseSoot = [0, 0, 0];

/** How far each band lies from the shell towards the tip, in temperature. Grade: fitted. */
const PLACES: NoseSoot = [1, 0.7, 0.35];
const DEPOSIT_SECONDS = 8200; // fitted: eight rounds of short trips in frost foul a plug that fits
const REFERENCE_FUEL = 1e-4; // kg/s of one cylinder
/** MΩ of one band with soot 1, and of a clean plug. */
const BAND = 10 / 3;
const CLEAN_PLUG = 1e4;
const LEAST_SOOT = 1e-6;

/** Share of the fuel that comes out as soot on the nose, without unit: almost none at lambda 1, most below 0.7. Grade: fitted. */
export const sootYield = (lambda: number): number => 0.002 + 1 / (1 + Math.exp((lambda - 0.78) / 0.055));

/** A cold nose is wet with fuel and gathers more. Grade: fitted. */
const wetness = (kelvin: number): number => 1 + 2 / (1 + Math.exp((kelvin - 473.15) / 60));

/** What the nose feels while soot comes and goes. K, atm, kg/s of one cylinder. */
export type SootRunning = Pick<DriveSecond, 'oxygen' | 'fuelFlow' | 'lambda'> & { readonly plug: Pick<DriveSecond['plug'], 'nose' | 'shell'> };

/** Soot gathered in a second, and the seconds in which it falls to a third, on a band of the nose. */
function ratesAt({ plug, oxygen, fuelFlow, lambda }: SootRunning, place: number): { readonly gathered: number; readonly burning: number } {
  const kelvin = plug.shell + place * (plug.nose - plug.shell);
  return {
    gathered: (fuelFlow / REFERENCE_FUEL) * (sootYield(lambda) * wetness(kelvin)) / DEPOSIT_SECONDS, burning: burnOffSeconds(kelvin, oxygen),
  };
}

/** One second more of gathering and burning, implicit. */
export function sootSecondMore(soot: NoseSoot, second: DriveSecond): NoseSoot {
  const at = (i: 0 | 1 | 2): number => {
    const { gathered, burning } = ratesAt(second, PLACES[i]);
    return (soot[i] + gathered) / (1 + 1 / burning);
  };
  return [at(0), at(1), at(2)];
}

/** Soot after so many seconds of steady running: what came and what burnt in balance, approached from what was there. */
export function sootAtSteady(running: SootRunning, seconds: number, before: NoseSoot = CLEAN): NoseSoot {
  const at = (i: 0 | 1 | 2): number => {
    const { gathered, burning } = ratesAt(running, PLACES[i]);
    return gathered * burning + (before[i] - gathered * burning) * Math.exp(-seconds / burning);
  };
  return [at(0), at(1), at(2)];
}

/** The soot after a drive. */
export const sootAfter = (seconds: readonly DriveSecond[], before: NoseSoot = CLEAN): NoseSoot => seconds.reduce(sootSecondMore, before);

/** Insulation that the soot leaves, cold. The bands lie in series, so one clean band restores it. Exponent 3 is fitted. */
export function shuntResistance(soot: NoseSoot): Megohm {
  const series = soot.reduce((sum, m) => sum + BAND * Math.max(LEAST_SOOT, m) ** -3, 0);
  return (1 / (1 / series + 1 / CLEAN_PLUG)) as Megohm;
}

/** The same soot everywhere that gives a resistance below 10 000 MΩ: the reverse of `shuntResistance` on an evenly sooted nose. */
export function evenSoot(shunt: Megohm): NoseSoot {
  const series = 1 / (1 / shunt - 1 / CLEAN_PLUG);
  const m = Math.max(LEAST_SOOT, (3 * BAND / series) ** (1 / 3));
  return [m, m, m];
}

/** Good from this insulation on. Source: vehicle service manuals. Grade: common practice. */
export const GOOD_INSULATION = 10 as Megohm;

/** Factor to either side within which a time of soot lies. Grade: judgement. */
const TIME_FACTOR = 3;

/** A time of gathering or burning, or a number of drives, as a band. */
export const toAFactorOfThree = (middle: number): Band<number> =>
  ({ low: middle / TIME_FACTOR, middle, high: middle * TIME_FACTOR, basis: 'predicted', notes: [] });
