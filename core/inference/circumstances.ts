import type { Engine } from '../../shared/formats/engine.ts';
import type { PlugReading, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Fuel } from '../../shared/vocabulary/conditions.ts';
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
type Compared = { readonly fitted: PlugReading['fitted']; readonly wanted: Engine['fitment'] };

const FITTED: { readonly [F in Fitted]: (of: Compared) => Truth } = {
  hotter: ({ fitted }) => over(fitted?.heatStepsFromSpecified, 0),
  colder: ({ fitted }) => under(fitted?.heatStepsFromSpecified, 0),
  'as specified': ({ fitted }) => fitted?.matchesSpecified ?? among(fitted?.heatStepsFromSpecified, [0]),
  'not as specified': ({ fitted }) => among(fitted?.matchesSpecified, [false]),
  'longer reach': ({ fitted, wanted }) => (wanted?.reachMm === undefined ? undefined : over(fitted?.reachMm, wanted.reachMm + 1)),
  'shorter reach': ({ fitted, wanted }) => (wanted?.reachMm === undefined ? undefined : under(fitted?.reachMm, wanted.reachMm - 1)),
  'other seat': ({ fitted, wanted }) => (wanted?.seat === undefined || fitted?.seat === undefined ? undefined : wanted.seat !== fitted.seat),
};

/** Of all the plugs asked about: those for which it is recorded must agree. */
function allPlugs(how: Fitted, { sheet, plugs }: Asked): Truth {
  const known = plugs.map(({ fitted }) => FITTED[how]({ fitted, wanted: sheet.engine.fitment })).filter((truth) => truth !== undefined);
  return known.length === 0 ? undefined : known.every(Boolean);
}

type Asked = { readonly sheet: ReadingSheet; readonly plugs: readonly PlugReading[] };
type Name = Circumstance extends infer C ? (C extends C ? keyof C : never) : never;
type Value<N extends Name> = Extract<Circumstance, Record<N, unknown>>[N];

const ANSWERS: { readonly [N in Name]: (value: Value<N>, asked: Asked) => Truth } = {
  tag: (tag, { sheet }) => (sheet.conditions?.tags?.includes(tag) === true ? true : undefined),
  fuel: (fuels, { sheet }) => among(sheet.conditions?.fuel, fuels),
  duty: (duties, { sheet }) => among(sheet.conditions?.duty, duties),
  stop: (stops, { sheet }) => among(sheet.conditions?.stop, stops),
  use: (uses, { sheet }) => uses.includes(sheet.engine.use),
  cycle: (cycle, { sheet }) => among(sheet.engine.cycle, [cycle]),
  aspiration: (aspiration, { sheet }) => among(sheet.engine.aspiration, [aspiration]),
  cooling: (cooling, { sheet }) => among(sheet.engine.cooling, [cooling]),
  mixture: (kinds, { sheet }) => among(sheet.engine.mixture?.kind, kinds),
  ignition: (kinds, { sheet }) => among(sheet.engine.ignition?.kind, kinds),
  warm: (warm, { sheet }) => among(sheet.conditions?.warm, [warm]),
  lambda: (band, { sheet }) => lambdaIs(sheet.conditions?.lambda, band),
  coolant: (how, { sheet }) => (how === 'cold' ? under(sheet.conditions?.coolantC, 70) : over(sheet.conditions?.coolantC, 105)),
  ambient: (_, { sheet }) => under(sheet.conditions?.ambientC, 5),
  altitude: (_, { sheet }) => over(sheet.conditions?.altitudeM, 1200),
  served: (how, { sheet }) => served(sheet, how),
  position: (positions, { plugs }) => (plugs.length === 0 ? undefined : plugs.every((plug) => positions.includes(plug.position ?? 'only'))),
  fitted: allPlugs,
};

/** Whether the circumstance holds, of the engine or of the plugs given. */
export function holds(circumstance: Circumstance, sheet: ReadingSheet, plugs: readonly PlugReading[]): Truth {
  const [name, value] = Object.entries(circumstance)[0] as [Name, never];
  return ANSWERS[name](value, { sheet, plugs });
}

const fits = <T>(value: T | undefined, list: readonly T[] | undefined): boolean => list === undefined || value === undefined || list.includes(value);

/** Two-strokes are noted as such or fed premix; only of small engines is it left open. Common practice, no source. */
function supposedCycle({ use }: Engine, fuel: Fuel | undefined): Engine['cycle'] {
  if (fuel === 'two-stroke premix') return 'two-stroke';
  return use === 'small' ? undefined : 'four-stroke';
}

/** Whether a cause or check can exist on this engine. What is not recorded does not rule it out. */
export function applies(needs: Needs | undefined, { engine, conditions }: ReadingSheet): boolean {
  if (needs === undefined) return true;
  return [
    fits(engine.cycle ?? supposedCycle(engine, conditions?.fuel), needs.cycle && [needs.cycle]),
    fits(engine.mixture?.kind, needs.mixture),
    fits(engine.ignition?.kind, needs.ignition),
    fits(engine.use, needs.use),
    needs.notUse?.includes(engine.use) !== true,
    fits(engine.aspiration, needs.aspiration && [needs.aspiration]),
    fits(engine.cooling, needs.cooling && [needs.cooling]),
    fits(conditions?.fuel, needs.fuel),
    fits(engine.plugsPerCylinder ?? 1, needs.plugsPerCylinder && [needs.plugsPerCylinder]),
    needs.cylinders === undefined || engine.cylinders > 1,
  ].every(Boolean);
}
