import type { Engine } from '../../shared/formats/engine.ts';
import type { PlugReading, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { assertNever } from '../../shared/result.ts';
import type { Circumstance, Needs } from '../knowledge/types.ts';

/** true: recorded. false: recorded otherwise. undefined: not recorded, evidence for nothing. */
export type Truth = boolean | undefined;

const among = <T>(value: T | undefined, list: readonly T[]): Truth => (value === undefined ? undefined : list.includes(value));
const over = (value: number | undefined, limit: number): Truth => (value === undefined ? undefined : value > limit);
const under = (value: number | undefined, limit: number): Truth => (value === undefined ? undefined : value < limit);

/** Lambda bands for petrol-like running; best power 0.85 to 0.9, economy to 1.1 (textbooks, from memory). */
function lambdaIs(lambda: number | undefined, band: 'rich' | 'lean' | 'right'): Truth {
  if (lambda === undefined) return undefined;
  return band === 'rich' ? lambda < 0.82 : band === 'lean' ? lambda > 1.08 : lambda >= 0.82 && lambda <= 1.08;
}

/** New: under 80 km or an hour on the plugs. Long: past the usual life of nickel plugs, 30 000 km or 400 h (club and parts texts; S50). */
function served(sheet: ReadingSheet, how: 'new' | 'long'): Truth {
  const { distanceKm, hours, tags } = sheet.conditions ?? {};
  if (how === 'new' && tags?.includes('plugs new')) return true;
  if (distanceKm === undefined && hours === undefined) return undefined;
  return how === 'new' ? (distanceKm ?? Infinity) < 80 || (hours ?? Infinity) < 1 : (distanceKm ?? 0) > 30_000 || (hours ?? 0) > 400;
}

type Fitted = Extract<Circumstance, { fitted: unknown }>['fitted'];

function plugIs(plug: PlugReading, engine: Engine, how: Fitted): Truth {
  const { fitted } = plug;
  const wanted = engine.fitment;
  switch (how) {
    case 'hotter': return over(fitted?.heatStepsFromSpecified, 0);
    case 'colder': return under(fitted?.heatStepsFromSpecified, 0);
    case 'as specified': return fitted?.matchesSpecified ?? (fitted?.heatStepsFromSpecified === undefined ? undefined : fitted.heatStepsFromSpecified === 0);
    case 'not as specified': return fitted?.matchesSpecified === undefined ? undefined : !fitted.matchesSpecified;
    case 'longer reach': return wanted?.reachMm === undefined ? undefined : over(fitted?.reachMm, wanted.reachMm + 1);
    case 'shorter reach': return wanted?.reachMm === undefined ? undefined : under(fitted?.reachMm, wanted.reachMm - 1);
    case 'other seat': return wanted?.seat === undefined || fitted?.seat === undefined ? undefined : wanted.seat !== fitted.seat;
    default: return assertNever(how);
  }
}

/** Whether the circumstance holds for the given plugs: all of those for which it is recorded must agree. */
function allPlugs(plugs: readonly PlugReading[], engine: Engine, how: Fitted): Truth {
  const known = plugs.map((plug) => plugIs(plug, engine, how)).filter((truth) => truth !== undefined);
  return known.length === 0 ? undefined : known.every(Boolean);
}

export function holds(circumstance: Circumstance, sheet: ReadingSheet, plugs: readonly PlugReading[]): Truth {
  const { engine } = sheet;
  const c = sheet.conditions ?? {};
  if ('tag' in circumstance) return c.tags?.includes(circumstance.tag) === true ? true : undefined;
  if ('fuel' in circumstance) return among(c.fuel, circumstance.fuel);
  if ('duty' in circumstance) return among(c.duty, circumstance.duty);
  if ('stop' in circumstance) return among(c.stop, circumstance.stop);
  if ('use' in circumstance) return circumstance.use.includes(engine.use);
  if ('cycle' in circumstance) return among(engine.cycle, [circumstance.cycle]);
  if ('aspiration' in circumstance) return among(engine.aspiration, [circumstance.aspiration]);
  if ('cooling' in circumstance) return among(engine.cooling, [circumstance.cooling]);
  if ('mixture' in circumstance) return among(engine.mixture?.kind, circumstance.mixture);
  if ('ignition' in circumstance) return among(engine.ignition?.kind, circumstance.ignition);
  if ('warm' in circumstance) return among(c.warm, [circumstance.warm]);
  if ('lambda' in circumstance) return lambdaIs(c.lambda, circumstance.lambda);
  if ('coolant' in circumstance) return circumstance.coolant === 'cold' ? under(c.coolantC, 70) : over(c.coolantC, 105);
  if ('ambient' in circumstance) return under(c.ambientC, 5);
  if ('altitude' in circumstance) return over(c.altitudeM, 1200);
  if ('served' in circumstance) return served(sheet, circumstance.served);
  if ('position' in circumstance) return plugs.length === 0 ? undefined : plugs.every((plug) => circumstance.position.includes(plug.position ?? 'only'));
  return allPlugs(plugs, engine, circumstance.fitted);
}

/** Whether a cause or check can exist on this engine. What is not recorded does not rule it out. */
export function applies(needs: Needs | undefined, sheet: ReadingSheet): boolean {
  if (needs === undefined) return true;
  const { engine } = sheet;
  const fits = <T>(value: T | undefined, list: readonly T[] | undefined): boolean => list === undefined || value === undefined || list.includes(value);
  return fits(engine.cycle, needs.cycle && [needs.cycle])
    && fits(engine.mixture?.kind, needs.mixture)
    && fits(engine.ignition?.kind, needs.ignition)
    && fits(engine.use, needs.use)
    && !(needs.notUse ?? []).includes(engine.use)
    && fits(engine.aspiration, needs.aspiration && [needs.aspiration])
    && fits(engine.cooling, needs.cooling && [needs.cooling])
    && fits(sheet.conditions?.fuel, needs.fuel)
    && fits(engine.plugsPerCylinder ?? 1, needs.plugsPerCylinder && [needs.plugsPerCylinder]);
}
