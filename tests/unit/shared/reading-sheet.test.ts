import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SEEDS } from '../../../seeds/index.ts';
import { parseReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { fourCylinder, sootyThird, twinPlugFlatFour } from '../../fixtures/plain-sheets.ts';

type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };
type Path = readonly (string | number)[];

const isObject = (value: Json): value is { readonly [name: string]: Json } => typeof value === 'object' && value !== null && !Array.isArray(value);

function entriesOf(value: Json): [string | number, Json][] {
  if (Array.isArray(value)) return (value as readonly Json[]).map((each, i) => [i, each]);
  return isObject(value) ? Object.entries(value) : [];
}

const objectsIn = (value: Json, path: Path = []): Path[] =>
  [...(isObject(value) ? [path] : []), ...entriesOf(value).flatMap(([key, child]) => objectsIn(child, [...path, key]))];

function changedAt(value: Json, path: Path, change: (at: Json) => Json): Json {
  const [key, ...rest] = path;
  if (key === undefined) return change(value);
  if (Array.isArray(value)) return (value as readonly Json[]).map((each, i) => (i === key ? changedAt(each, rest, change) : each));
  return Object.fromEntries(entriesOf(value).map(([name, each]) => [name, name === key ? changedAt(each, rest, change) : each]));
}

const problems = (sheet: unknown): string[] => {
  const parsed = parseReadingSheet(sheet);
  return parsed.ok ? [] : parsed.error.map(({ path, message }) => `${path}: ${message}`);
};
const sheets = SEEDS.flatMap((seed) => seed.sheets) as Json[];

describe('a reading sheet', () => {
  it('takes an unknown field nowhere, and names its path', () => {
    const planted = fc.constantFrom(...sheets).chain((sheet) => fc.record({ sheet: fc.constant(sheet), path: fc.constantFrom(...objectsIn(sheet)) }));
    fc.assert(fc.property(planted, fc.stringMatching(/^[a-z]{12}$/), ({ sheet, path }, name) => {
      const wrong = changedAt(sheet, path, (at) => ({ ...(at as object), [name]: 1 }));
      const found = problems(wrong);
      expect(found).toHaveLength(1);
      expect(found[0]).toMatch(new RegExp(`^${[...path, name].join('[.]')}: unknown field; allowed are `));
    }), { numRuns: 300 });
  });

  it('comes out of its check exactly as it went in', () => {
    for (const sheet of sheets) expect(parseReadingSheet(sheet)).toEqual({ ok: true, value: sheet });
  });

  it.each([
    ['engine: missing; give an object', { engine: undefined }],
    ['engine.firingOrder: 3 numbers; give each of the 4 cylinders once', { engine: { ...fourCylinder, firingOrder: [1, 3, 4] } }],
    ['engine.firingOrder.3: cylinder 1 stands here twice', { engine: { ...fourCylinder, firingOrder: [1, 3, 4, 1] } }],
    ['engine.mixture.groups.1.0: cylinder 1 stands in two places', { engine: { ...fourCylinder, mixture: { kind: 'carburettor', groups: [[1], [1]] } } }],
    ['engine.banks.0.0: there is no cylinder 5; allowed are 1 to 4', { engine: { ...fourCylinder, banks: [[5]] } }],
    ['engine.adjacent.0: a cylinder is not its own neighbour', { engine: { ...fourCylinder, adjacent: [[2, 2]] } }],
    ['engine.layout: single means one cylinder, not 4', { engine: { ...fourCylinder, layout: 'single' } }],
    ['plugs.0.position: two plugs a cylinder: say which', { engine: twinPlugFlatFour, plugs: [{ cylinder: 1 }] }],
    ['plugs.0.position: one plug a cylinder: "upper" is not allowed', { plugs: [{ cylinder: 1, position: 'upper' }] }],
    ['plugs.1: cylinder 1 upper stands here twice', { engine: twinPlugFlatFour, plugs: [{ cylinder: 1, position: 'upper' }, { cylinder: 1, position: 'upper' }] }],
    ['plugs.2: a third plug in cylinder 1', { engine: twinPlugFlatFour, plugs: [{ cylinder: 1, position: 'upper' }, { cylinder: 1, position: 'lower' }, { cylinder: 1, position: 'intake' }] }],
    ['plugs.0.tip.unsure.0: "specks" is marked unsure but has no value', { plugs: [{ cylinder: 1, tip: { unsure: ['specks'] } }] }],
    ['plugs.0.measured.gapMm: 9 is too large; give mm from 0 to 5', { plugs: [{ cylinder: 1, measured: { gapMm: 9 } }] }],
    ['plugs.0.measured.gapMm: "0.7" is not a number; give mm from 0 to 5', { plugs: [{ cylinder: 1, measured: { gapMm: '0.7' } }] }],
    ['symptomsAbsent.0: "misfire" is also given as present', { symptoms: [{ what: 'misfire' }], symptomsAbsent: ['misfire'] }],
    ['symptoms.0.cylinder: there is no cylinder 5', { symptoms: [{ what: 'misfire', cylinder: 5 }] }],
    ['cylinderChecks.1.cylinder: cylinder 1 stands here twice', { cylinderChecks: [{ cylinder: 1 }, { cylinder: 1 }] }],
    ['cylinderChecks.0.differential.heldKPa: more held than supplied', { cylinderChecks: [{ cylinder: 1, differential: { heldKPa: 600, supplyKPa: 550 } }] }],
    ['cylinderChecks.0.swaps.0.to: swapped with itself', { cylinderChecks: [{ cylinder: 1, swaps: [{ part: 'coil', to: 1, followed: true }] }] }],
    ['conditions.lambda: 14.7 is too large; give a lambda from 0.4 to 2.5', { conditions: { lambda: 14.7 } }],
    ['date: not an ISO 8601 date', { date: '14/03/2026' }],
    ['since.reading: missing; give an object', { since: {} }],
    ['since.reading.plugs: no plug; give at least one', { since: { reading: { plugs: [] } } }],
    ['since.reading.plugs.0.cylinder: there is no cylinder 5; allowed are 1 to 4', { since: { reading: { plugs: [{ cylinder: 5 }] } } }],
    ['since.reading.engine: unknown field; allowed are title, date, conditions', { since: { reading: { engine: fourCylinder, plugs: [{ cylinder: 1 }] } } }],
    ['since.reading.symptomsAbsent.0: "misfire" is also given as present', { since: { reading: { symptoms: [{ what: 'misfire' }], symptomsAbsent: ['misfire'], plugs: [{ cylinder: 1 }] } } }],
    ['since.done.0.cylinders.0: there is no cylinder 5', { since: { reading: { plugs: [{ cylinder: 1 }] }, done: [{ cause: 'guides-worn', cylinders: [5] }] } }],
    ['since.tried.0.cause: missing; give text', { since: { reading: { plugs: [{ cylinder: 1 }] }, tried: [{}] } }],
  ])('tells %s', (start, change) => {
    expect(problems({ ...sootyThird, ...change })).toEqual([expect.stringContaining(start) as string]);
  });

  it.each(['2026-03-14', '2026-03-14T09:30:00Z', '2026-03-14T09:30:00+02:00', '2026-03-14T09:30:00', '2024-02-29'])('may be dated %s (ISO 8601)', (date) => {
    expect(problems({ ...sootyThird, date })).toEqual([]);
  });

  it.each(['2026-3-14', '2026-02-29', '2026-13-01', 'yesterday', '2026-03-14T25:00:00Z', ''])('may not be dated %j', (date) => {
    expect(problems({ ...sootyThird, date })).toHaveLength(1);
  });

  it('survives whatever JSON holds', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => { expect(parseReadingSheet(value).ok).toBe(false); }));
  });
});
