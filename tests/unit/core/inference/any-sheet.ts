import fc from 'fast-check';
import type { ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { BORESCOPE, SPARKS } from '../../../../shared/vocabulary/checks.ts';
import { CONDITION_TAGS, DUTIES, FUELS, STOPS, SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import { IGNITION_KINDS, MIXTURE_KINDS, USES } from '../../../../shared/vocabulary/engine.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS, type FacetName } from '../../../../shared/vocabulary/tip.ts';

/** Random sheets that pass the strict format; facets are drawn independently, so most are stranger than any real plug. */
export const facet = fc.constantFrom(...FACET_NAMES).chain((name) => fc.tuple(fc.constant(name), fc.constantFrom(...TIP_FACETS[name])));

const tip: fc.Arbitrary<Tip> = fc
  .tuple(fc.array(facet, { maxLength: 6 }), fc.option(fc.constantFrom(...OVERALL), { freq: 6 }), fc.boolean())
  .map(([facets, overall, doubt]): Tip => {
    const given = Object.fromEntries(facets) as Tip;
    const [first] = Object.keys(given) as FacetName[];
    return { ...given, ...(overall === null ? {} : { overall }), ...(doubt && first !== undefined ? { unsure: [first] } : {}) };
  });

const some = <T>(arb: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(arb, { nil: undefined, freq: 2 });
const present = <T extends object>(record: T): T => Object.fromEntries(Object.entries(record).filter(([, v]) => v !== undefined)) as T;

const measured = fc
  .record({
    gapMm: some(fc.double({ min: 0, max: 2.5, noNaN: true })),
    insulationMOhm: some(fc.double({ min: 0, max: 200, noNaN: true })),
    removalTorqueNm: some(fc.double({ min: 0, max: 60, noNaN: true })),
  })
  .map(present);
const fitted = fc
  .record({
    heatStepsFromSpecified: some(fc.integer({ min: -3, max: 3 })),
    matchesSpecified: some(fc.boolean()),
    reachMm: some(fc.constantFrom(12.7, 19, 26.5)),
  })
  .map(present);
const check = fc
  .record({
    compressionKPa: some(fc.integer({ min: 200, max: 1400 })),
    spark: some(fc.constantFrom(...SPARKS)),
    borescope: some(fc.constantFrom(...BORESCOPE)),
  })
  .map(present);

const conditions = fc
  .record({
    fuel: some(fc.constantFrom(...FUELS)),
    duty: some(fc.constantFrom(...DUTIES)),
    stop: some(fc.constantFrom(...STOPS)),
    warm: some(fc.boolean()),
    lambda: some(fc.double({ min: 0.6, max: 1.4, noNaN: true })),
    tags: some(fc.uniqueArray(fc.constantFrom(...CONDITION_TAGS), { maxLength: 3 })),
  })
  .map(present);

const engineParts = fc.record({
  use: fc.constantFrom(...USES),
  cylinders: fc.integer({ min: 1, max: 4 }),
  twin: fc.boolean(),
  cycle: some(fc.constantFrom('four-stroke' as const, 'two-stroke' as const)),
  aspiration: some(fc.constantFrom('natural' as const, 'boosted' as const)),
  mixture: some(fc.constantFrom(...MIXTURE_KINDS)),
  ignition: some(fc.constantFrom(...IGNITION_KINDS)),
  reach: fc.boolean(),
});

export const anySheet: fc.Arbitrary<ReadingSheet> = engineParts.chain(({ use, cylinders, twin, cycle, aspiration, mixture, ignition, reach }) => {
  const places = Array.from({ length: cylinders }, (_, i) => i + 1).flatMap((cylinder) =>
    twin && cylinders < 4 ? (['upper', 'lower'] as const).map((position) => ({ cylinder, position })) : [{ cylinder }],
  );
  return fc
    .record({
      plugs: fc.tuple(
        ...places.map((place) =>
          fc.record({ tip: some(tip), measured: some(measured), fitted: some(fitted) }).map((plug) => ({ ...place, ...present(plug) })),
        ),
      ),
      conditions: some(conditions),
      symptoms: fc.array(fc.record({ what: fc.constantFrom(...SYMPTOMS), cylinder: some(fc.integer({ min: 1, max: cylinders })) }).map(present), {
        maxLength: 2,
      }),
      checks: some(fc.record({ cylinder: fc.integer({ min: 1, max: cylinders }), check }).map(({ cylinder, check: c }) => [{ cylinder, ...c }])),
    })
    .map(
      (drawn): ReadingSheet =>
        present({
          format: 'corenose.reading-sheet' as const,
          version: 1 as const,
          engine: present({
            use,
            cylinders,
            plugsPerCylinder: twin && cylinders < 4 ? (2 as const) : (1 as const),
            cycle,
            aspiration,
            mixture: mixture && { kind: mixture },
            ignition: ignition && { kind: ignition },
            fitment: reach ? { reachMm: 19 } : undefined,
          }),
          plugs: drawn.plugs,
          conditions: drawn.conditions,
          symptoms: drawn.symptoms,
          cylinderChecks: drawn.checks,
        }) as ReadingSheet,
    );
});
