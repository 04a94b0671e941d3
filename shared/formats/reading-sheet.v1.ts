import { z } from 'zod';
import { BORESCOPE, INJECTORS, SPARKS, SPEED_DROPS, SWAP_PARTS } from '../vocabulary/checks.ts';
import { CONDITION_TAGS, DUTIES, FUELS, STOPS, SYMPTOMS } from '../vocabulary/conditions.ts';
import { POSITIONS } from '../vocabulary/engine.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS, type FacetName, type FacetValue, type Overall } from '../vocabulary/tip.ts';
import type { Result } from '../result.ts';
import { checkEngine, checkPlaces, cylinderNumber, engineFields, fittedPlug } from './engine.ts';
import { amount, oneOf, parseStrictly, record, text, type Problem } from './strict.ts';

export const conditions = record({
  fuel: oneOf(FUELS).optional(),
  duty: oneOf(DUTIES).optional(),
  stop: oneOf(STOPS).optional(),
  warm: z.boolean({ error: 'give true or false' }).optional(),
  distanceKm: amount('km', 0, 1_000_000).optional(),
  hours: amount('h', 0, 100_000).optional(),
  ambientC: amount('°C', -60, 60).optional(),
  altitudeM: amount('m', -500, 12_000).optional(),
  coolantC: amount('°C', -40, 150).optional(),
  lambda: amount('a lambda', 0.4, 2.5).optional(),
  egtC: amount('°C', 0, 1200).optional(),
  boostKPa: amount('kPa above ambient', 0, 500).optional(),
  advanceDeg: amount('degrees of crank before top dead centre', -20, 70).optional(),
  speedRpm: amount('r/min', 50, 25_000).optional(),
  tags: z.array(oneOf(CONDITION_TAGS)).optional(),
  text: text(4000).optional(),
});

type FacetFields = { [F in FacetName]: z.ZodOptional<z.ZodType<FacetValue<F>, FacetValue<F>>> };
const facetFields = Object.fromEntries(FACET_NAMES.map((name) => [name, oneOf(TIP_FACETS[name]).optional()])) as unknown as FacetFields;

export const tip = record({
  ...facetFields,
  overall: oneOf(OVERALL).optional(),
  unsure: z.array(oneOf(FACET_NAMES as readonly [FacetName, ...FacetName[]])).optional(),
});

export const measured = record({
  gapMm: amount('mm', 0, 5).optional(),
  resistorKOhm: amount('kΩ', 0, 1_000_000).optional(),
  insulationMOhm: amount('MΩ', 0, 1_000_000).optional(),
  removalTorqueNm: amount('N·m', 0, 200).optional(),
});

const seenByPhoto = (facet: FacetName) => record({ facet: z.literal(facet), value: oneOf(TIP_FACETS[facet]), belief: amount('a belief', 0, 1) });
const [firstFacet, ...otherFacets] = FACET_NAMES.map(seenByPhoto);
if (firstFacet === undefined) throw new Error('there is no facet for a photo to show');
/** What a measured photo suggests of one facet, and how sure the measuring is of it: 0 says nothing, 1 leaves no doubt. */
const photoFinding = z.discriminatedUnion('facet', [firstFacet, ...otherFacets], { error: `not a facet; allowed are ${FACET_NAMES.join(', ')}` });

const plug = record({
  cylinder: cylinderNumber,
  position: oneOf(POSITIONS).optional(),
  fitted: fittedPlug.optional(),
  tip: tip.optional(),
  measured: measured.optional(),
  photo: z.array(photoFinding).optional(),
  note: text(4000).optional(),
});

export const cylinderCheck = record({
  cylinder: cylinderNumber,
  compressionKPa: amount('kPa', 0, 6000).optional(),
  compressionWetKPa: amount('kPa', 0, 6000).optional(),
  leakDownPercent: amount('%', 0, 100).optional(),
  differential: record({ heldKPa: amount('kPa', 0, 1500), supplyKPa: amount('kPa', 50, 1500) }).optional(),
  spark: oneOf(SPARKS).optional(),
  injector: oneOf(INJECTORS).optional(),
  speedDropWhenCut: oneOf(SPEED_DROPS).optional(),
  egtC: amount('°C', 0, 1200).optional(),
  borescope: oneOf(BORESCOPE).optional(),
  swaps: z.array(record({ part: oneOf(SWAP_PARTS), to: cylinderNumber, followed: z.boolean({ error: 'give true or false' }) })).optional(),
  substitutions: z.array(record({ part: oneOf(SWAP_PARTS), cured: z.boolean({ error: 'give true or false' }) })).optional(),
});

const heading = {
  title: text(200).optional(),
  date: z.union([z.iso.date(), z.iso.datetime({ offset: true, local: true })], { error: 'not an ISO 8601 date; give for example 2026-03-14 or 2026-03-14T09:30:00Z' }).optional(),
};
const observed = {
  conditions: conditions.optional(),
  symptoms: z.array(record({ what: oneOf(SYMPTOMS), cylinder: cylinderNumber.optional() })).optional(),
  symptomsAbsent: z.array(oneOf(SYMPTOMS)).optional(),
  plugs: z.array(plug, { error: 'missing; give one entry for each plug that was read' }).min(1, { error: 'no plug; give at least one' }),
  cylinderChecks: z.array(cylinderCheck).optional(),
};

/** A cause that somebody put right, by its id in the findings; without cylinders, wherever it acts. */
const cure = record({ cause: text(80).min(1, { error: 'empty; give the id of a cause' }), cylinders: z.array(cylinderNumber).min(1, { error: 'no cylinder; give at least one or leave the list out' }).optional() });
/** The reading before of the same engine. `done`: put right between the two; `tried`: put right before that reading, which it had not changed. */
export const since = record({ reading: record({ ...heading, ...observed }), done: z.array(cure).optional(), tried: z.array(cure).optional() });

const sheetFields = record({
  format: z.literal('corenose.reading-sheet', { error: 'give "corenose.reading-sheet"' }),
  version: z.literal(1, { error: 'this program reads version 1' }),
  ...heading,
  engine: engineFields,
  ...observed,
  since: since.optional(),
});

type Sheet = z.output<typeof sheetFields>;
type Path = readonly (string | number)[];
type Report = (path: Path, message: string) => void;
type Checked = Omit<Sheet, 'format' | 'version' | 'since'>;

function checkCylinder({ engine }: Checked, n: number | undefined, path: Path, report: Report): void {
  if (n !== undefined && n > engine.cylinders) report(path, `there is no cylinder ${n}; allowed are 1 to ${engine.cylinders}`);
}

function checkCylinders(sheet: Checked, report: Report): void {
  sheet.symptoms?.forEach((s, i) => checkCylinder(sheet, s.cylinder, ['symptoms', i, 'cylinder'], report));
  const seen = new Set<number>();
  sheet.cylinderChecks?.forEach((check, i) => {
    checkCylinder(sheet, check.cylinder, ['cylinderChecks', i, 'cylinder'], report);
    if (seen.has(check.cylinder)) report(['cylinderChecks', i, 'cylinder'], `cylinder ${check.cylinder} stands here twice; put its checks in one entry`);
    seen.add(check.cylinder);
    if (check.differential && check.differential.heldKPa > check.differential.supplyKPa) report(['cylinderChecks', i, 'differential', 'heldKPa'], 'more held than supplied; held is at most the supply');
    check.swaps?.forEach((swap, s) => {
      checkCylinder(sheet, swap.to, ['cylinderChecks', i, 'swaps', s, 'to'], report);
      if (swap.to === check.cylinder) report(['cylinderChecks', i, 'swaps', s, 'to'], 'swapped with itself; name another cylinder');
    });
  });
}

function checkSymptoms(sheet: Checked, report: Report): void {
  sheet.symptomsAbsent?.forEach((what, i) => {
    if (sheet.symptoms?.some((s) => s.what === what)) report(['symptomsAbsent', i], `"${what}" is also given as present; give one of the two`);
  });
}

function checkUnsure(sheet: Checked, report: Report): void {
  sheet.plugs.forEach((p, i) => p.tip?.unsure?.forEach((facet, u) => {
    if (p.tip?.[facet] === undefined) report(['plugs', i, 'tip', 'unsure', u], `"${facet}" is marked unsure but has no value; give the value or leave the mark out`);
  }));
}

function checkPhotos(sheet: Checked, report: Report): void {
  sheet.plugs.forEach(({ photo = [] }, i) => photo.forEach(({ facet }, at) => {
    if (photo.findIndex((other) => other.facet === facet) < at) report(['plugs', i, 'photo', at, 'facet'], `"${facet}" stands here twice; give one value for each facet`);
  }));
}

function checkReading(sheet: Checked, report: Report): void {
  checkPlaces(sheet.plugs, sheet.engine, ['plugs'], report);
  checkCylinders(sheet, report);
  checkSymptoms(sheet, report);
  checkUnsure(sheet, report);
  checkPhotos(sheet, report);
}

function checkCures(sheet: Sheet, list: 'done' | 'tried', report: Report): void {
  sheet.since?.[list]?.forEach(({ cylinders }, i) => cylinders?.forEach((n, c) => checkCylinder(sheet, n, ['since', list, i, 'cylinders', c], report)));
}

export const readingSheet = sheetFields.superRefine((sheet, ctx) => {
  const report: Report = (path, message) => ctx.addIssue({ code: 'custom', path: [...path], message });
  checkEngine(sheet.engine, (path, message) => report(['engine', ...path], message));
  checkReading(sheet, report);
  if (sheet.since === undefined) return;
  checkReading({ ...sheet.since.reading, engine: sheet.engine }, (path, message) => report(['since', 'reading', ...path], message));
  checkCures(sheet, 'done', report);
  checkCures(sheet, 'tried', report);
});

export type ReadingSheet = Sheet;
export type Conditions = z.output<typeof conditions>;
export type Tip = { readonly [F in FacetName]?: FacetValue<F> | undefined } & {
  readonly overall?: Overall | undefined; readonly unsure?: readonly FacetName[] | undefined;
};
export type PlugReading = ReadingSheet['plugs'][number];
export type Measured = z.output<typeof measured>;
export type CylinderCheck = z.output<typeof cylinderCheck>;
/** What a reading is compared with. */
export type Since = z.output<typeof since>;
export type Cure = z.output<typeof cure>;

/** The one way in for a sheet of unknown origin. */
export const parseReadingSheet = (input: unknown): Result<ReadingSheet, Problem[]> => parseStrictly(readingSheet, input);
