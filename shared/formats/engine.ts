import { z } from 'zod';
import {
  ASPIRATIONS, COOLINGS, CYCLES, ELECTRODES, HEAD_MATERIALS, IGNITION_KINDS, LAYOUTS, MIXTURE_KINDS, POSITIONS, PROJECTIONS, RESISTOR_RULES,
  SEATS, USES,
} from '../vocabulary/engine.ts';
import { amount, count, oneOf, record, text } from './strict.ts';

const MOST_CYLINDERS = 18;

export const cylinderNumber = count('a cylinder number', 1, MOST_CYLINDERS);
const cylinderGroup = z.array(cylinderNumber).min(1, { error: 'an empty group; name at least one cylinder' });

const heatValue = record({ scale: text(60), value: text(20) });

const dimensions = {
  thread: text(30).optional(),
  reachMm: amount('mm', 3, 60).optional(),
  seat: oneOf(SEATS).optional(),
  hexMm: amount('mm', 8, 30).optional(),
};

/** The plug an engine asks for. */
export const fitment = record({
  ...dimensions,
  gapMm: amount('mm', 0.2, 2.5).optional(),
  heat: heatValue.optional(),
  resistor: oneOf(RESISTOR_RULES).optional(),
  projection: oneOf(PROJECTIONS).optional(),
});

/** The plug that was in the hole. */
export const fittedPlug = record({
  designation: text(60).optional(),
  ...dimensions,
  gapNewMm: amount('mm', 0.2, 2.5).optional(),
  heat: heatValue.optional(),
  heatStepsFromSpecified: count('steps toward hotter', -10, 10).optional(),
  resistor: z.boolean().optional(),
  projection: oneOf(PROJECTIONS).optional(),
  electrode: oneOf(ELECTRODES).optional(),
  matchesSpecified: z.boolean().optional(),
});

const place = record({ cylinder: cylinderNumber, position: oneOf(POSITIONS) });

const engineFields = record({
  name: text(120).optional(),
  use: oneOf(USES),
  cycle: oneOf(CYCLES).optional(),
  cylinders: count('cylinders', 1, MOST_CYLINDERS),
  layout: oneOf(LAYOUTS).optional(),
  banks: z.array(cylinderGroup).optional(),
  firingOrder: z.array(cylinderNumber).optional(),
  adjacent: z.array(z.tuple([cylinderNumber, cylinderNumber])).optional(),
  plugsPerCylinder: z.union([z.literal(1), z.literal(2)], { error: 'give 1 or 2' }).optional(),
  boreMm: amount('mm', 10, 600).optional(),
  strokeMm: amount('mm', 10, 900).optional(),
  rodMm: amount('mm', 20, 2000).optional(),
  compressionRatio: amount('a ratio to 1', 3, 25).optional(),
  headMaterial: oneOf(HEAD_MATERIALS).optional(),
  aspiration: oneOf(ASPIRATIONS).optional(),
  cooling: oneOf(COOLINGS).optional(),
  mixture: record({ kind: oneOf(MIXTURE_KINDS), groups: z.array(cylinderGroup).optional() }).optional(),
  ignition: record({
    kind: oneOf(IGNITION_KINDS),
    groups: z.array(cylinderGroup).optional(),
    sets: z.array(record({ name: text(60), plugs: z.array(place).min(1, { error: 'an empty set; name at least one plug' }) })).optional(),
  }).optional(),
  fitment: fitment.optional(),
});

type EngineFields = z.output<typeof engineFields>;
type Report = (path: (string | number)[], message: string) => void;

function checkDistinct(numbers: readonly number[], path: (string | number)[], report: Report): void {
  numbers.forEach((n, i) => {
    if (numbers.indexOf(n) !== i) report([...path, i], `cylinder ${n} stands here twice; name each once`);
  });
}

function checkRange(numbers: readonly number[], cylinders: number, path: (string | number)[], report: Report): void {
  numbers.forEach((n, i) => {
    if (n > cylinders) report([...path, i], `there is no cylinder ${n}; allowed are 1 to ${cylinders}`);
  });
}

function checkGroups(groups: readonly (readonly number[])[] | undefined, cylinders: number, path: (string | number)[], report: Report): void {
  groups?.forEach((group, g) => checkRange(group, cylinders, [...path, g], report));
  const seen = new Set<number>();
  groups?.forEach((group, g) => group.forEach((n, i) => {
    if (seen.has(n)) report([...path, g, i], `cylinder ${n} stands in two places; it belongs to one group`);
    seen.add(n);
  }));
}

/** What holds between the fields of an engine; called on its own and inside a sheet. */
export function checkEngine(engine: EngineFields, report: Report): void {
  const { cylinders } = engine;
  checkGroups(engine.banks, cylinders, ['banks'], report);
  checkGroups(engine.mixture?.groups, cylinders, ['mixture', 'groups'], report);
  checkGroups(engine.ignition?.groups, cylinders, ['ignition', 'groups'], report);
  if (engine.firingOrder) {
    checkRange(engine.firingOrder, cylinders, ['firingOrder'], report);
    checkDistinct(engine.firingOrder, ['firingOrder'], report);
    if (engine.firingOrder.length !== cylinders) report(['firingOrder'], `${engine.firingOrder.length} numbers; give each of the ${cylinders} cylinders once`);
  }
  engine.adjacent?.forEach((pair, i) => {
    checkRange(pair, cylinders, ['adjacent', i], report);
    if (pair[0] === pair[1]) report(['adjacent', i], 'a cylinder is not its own neighbour; name two cylinders');
  });
  if (engine.layout === 'single' && cylinders !== 1) report(['layout'], `single means one cylinder, not ${cylinders}`);
  engine.ignition?.sets?.forEach((set, s) => checkPlaces(set.plugs, engine, ['ignition', 'sets', s, 'plugs'], report));
}

type AnyPlace = { readonly cylinder: number; readonly position?: string | undefined };

/** Positions must suit the number of plugs in a cylinder. */
export function checkPlaces(places: readonly AnyPlace[], engine: EngineFields, path: (string | number)[], report: Report): void {
  const two = engine.plugsPerCylinder === 2;
  const seen = new Set<string>();
  places.forEach(({ cylinder, position }, i) => {
    if (cylinder > engine.cylinders) report([...path, i, 'cylinder'], `there is no cylinder ${cylinder}; allowed are 1 to ${engine.cylinders}`);
    if (two && (position === undefined || position === 'only')) report([...path, i, 'position'], 'two plugs a cylinder: say which, allowed are upper, lower, intake, exhaust, front, rear, unknown');
    if (!two && position !== undefined && position !== 'only') report([...path, i, 'position'], `one plug a cylinder: "${position}" is not allowed; leave it out or give only`);
    const key = `${cylinder} ${position ?? 'only'}`;
    if (seen.has(key)) report([...path, i], `cylinder ${cylinder}${position === undefined ? '' : ` ${position}`} stands here twice; name each plug once`);
    seen.add(key);
  });
  if (two) reportThirdPlugs(places, path, report);
}

function reportThirdPlugs(places: readonly { readonly cylinder: number }[], path: (string | number)[], report: Report): void {
  const inCylinder = new Map<number, number>();
  places.forEach(({ cylinder }, i) => {
    const so = (inCylinder.get(cylinder) ?? 0) + 1;
    inCylinder.set(cylinder, so);
    if (so === 3) report([...path, i], `a third plug in cylinder ${cylinder}; at most 2 are allowed`);
  });
}

export const engine = engineFields.superRefine((value, ctx) => checkEngine(value, (path, message) => ctx.addIssue({ code: 'custom', path, message })));
export { engineFields };
export type Engine = EngineFields;
export type Fitment = z.output<typeof fitment>;
export type FittedPlug = z.output<typeof fittedPlug>;
