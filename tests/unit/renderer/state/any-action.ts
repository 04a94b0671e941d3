import fc from 'fast-check';
import { conditions, cylinderCheck, measured, type ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { BORESCOPE, SWAP_PARTS } from '../../../../shared/vocabulary/checks.ts';
import { CONDITION_TAGS, DUTIES, SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import { POSITIONS } from '../../../../shared/vocabulary/engine.ts';
import { FACET_NAMES, OVERALL, TIP_FACETS } from '../../../../shared/vocabulary/tip.ts';
import { plugKey } from '../../../../core/domain/plugs.ts';
import type { ReadingAction } from '../../../../renderer/state/reading-action.ts';

const maybe = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(of, { nil: undefined });
const number = fc.oneof(fc.double({ min: -50, max: 20_000, noNaN: true }), fc.constantFrom(Number.NaN, Infinity, 0, 1));
const cylinder = fc.integer({ min: 0, max: 19 });
const key = fc.oneof(fc.tuple(cylinder, fc.constantFrom(...POSITIONS)).map(([n, position]) => plugKey(n, position)), fc.constantFrom('', 'upper', '3 sideways'));
const facet = fc.constantFrom(...FACET_NAMES);
const numeric = <T extends object>(shape: T, not: readonly string[]) => fc.constantFrom(...Object.keys(shape).filter((field) => !not.includes(field)));

const loose = fc.oneof(
  facet.chain((name) => fc.record({ type: fc.constant('tip'), plug: key, facet: fc.constant(name), value: maybe(fc.constantFrom(...TIP_FACETS[name], 'mauve')) })),
  fc.record({ type: fc.constant('overall'), plug: key, value: maybe(fc.constantFrom(...OVERALL)) }),
  fc.record({ type: fc.constant('unsure'), plug: key, facet, on: fc.boolean() }),
  fc.record({ type: fc.constant('copyTip'), from: key, to: fc.array(key), only: fc.array(fc.constantFrom('overall', ...FACET_NAMES)) }, { requiredKeys: ['type', 'from', 'to'] }),
  fc.record({ type: fc.constantFrom('clearTip', 'plugOff', 'plugOn'), plug: key }),
  fc.record({ type: fc.constant('measured'), plug: key, field: numeric(measured.shape, []), value: maybe(number) }),
  fc.record({ type: fc.constant('fitted'), plugs: fc.array(key), fitted: maybe(fc.record({ gapNewMm: number, designation: fc.string() }, { requiredKeys: [] })) }),
  fc.record({ type: fc.constant('note'), plug: key, text: fc.string() }),
  fc.record({ type: fc.constant('condition'), field: numeric(conditions.shape, ['tags', 'text', 'warm', 'fuel', 'duty', 'stop']), value: maybe(number) }),
  fc.record({ type: fc.constant('condition'), field: fc.constant('duty'), value: maybe(fc.constantFrom(...DUTIES)) }),
  fc.record({ type: fc.constant('tag'), tag: fc.constantFrom(...CONDITION_TAGS), on: fc.boolean() }),
  fc.record({ type: fc.constant('symptom'), what: fc.constantFrom(...SYMPTOMS), cylinder: maybe(cylinder), on: fc.boolean() }),
  fc.record({ type: fc.constant('symptomAbsent'), what: fc.constantFrom(...SYMPTOMS), on: fc.boolean() }),
  fc.record({ type: fc.constant('check'), cylinder, field: numeric(cylinderCheck.shape, ['cylinder', 'swaps', 'substitutions', 'differential']), value: maybe(number) }),
  fc.record({ type: fc.constant('check'), cylinder, field: fc.constant('borescope'), value: maybe(fc.constantFrom(...BORESCOPE)) }),
  fc.record({ type: fc.constant('check'), cylinder, field: fc.constant('differential'), value: maybe(fc.record({ heldKPa: number, supplyKPa: number })) }),
  fc.record({ type: fc.constant('swap'), cylinder, swap: fc.record({ part: fc.constantFrom(...SWAP_PARTS), to: cylinder, followed: fc.boolean() }), on: fc.boolean() }),
  fc.record({ type: fc.constant('substitution'), cylinder, substitution: fc.record({ part: fc.constantFrom(...SWAP_PARTS), cured: fc.boolean() }), on: fc.boolean() }),
  fc.record({ type: fc.constant('since'), since: maybe(fc.record({ reading: fc.record({ plugs: fc.array(fc.record({ cylinder }), { maxLength: 2 }) }) })) }),
  fc.record({ type: fc.constant('cure'), cure: fc.record({ cause: fc.string({ maxLength: 90 }), cylinders: fc.array(cylinder, { maxLength: 3 }) }, { requiredKeys: ['cause'] }), on: fc.boolean() }),
  fc.record({ type: fc.constant('meta'), title: fc.string(), date: fc.constantFrom('', '2026-03-14', 'tomorrow') }, { requiredKeys: ['type'] }),
);

/** Anything a person, or a fault in a screen, could ask for: allowed and not. */
export const anyAction: fc.Arbitrary<ReadingAction> = loose as unknown as fc.Arbitrary<ReadingAction>;

export const fourCylinders: ReadingSheet = {
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4, layout: 'inline' },
  plugs: [{ cylinder: 1 }, { cylinder: 2 }, { cylinder: 3 }, { cylinder: 4 }],
};

export const twinPlugFlatFour: ReadingSheet = {
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'aircraft', cylinders: 4, layout: 'flat', plugsPerCylinder: 2 },
  plugs: [1, 2, 3, 4].flatMap((n) => [{ cylinder: n, position: 'upper' as const }, { cylinder: n, position: 'lower' as const }]),
};
