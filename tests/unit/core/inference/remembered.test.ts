import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { Knowledge } from '../../../../core/knowledge/types.ts';
import { parseReadingSheet, type CylinderCheck, type PlugReading, type ReadingSheet, type Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { BORESCOPE, SPARKS } from '../../../../shared/vocabulary/checks.ts';
import { CONDITION_TAGS, FUELS, SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import { FACET_NAMES } from '../../../../shared/vocabulary/tip.ts';
import { anySheet, facet } from './any-sheet.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition, knowledge } from './small-knowledge.ts';

/** Everything the solver keeps hangs on the knowledge, so a copy remembers nothing. */
const fresh = (): Knowledge => structuredClone(KNOWLEDGE);
const told = (sheet: ReadingSheet, of: Knowledge): string => JSON.stringify(diagnose(sheet, { knowledge: of, digest: 'test' }));

/** The sheet with one of its plugs entered otherwise. */
const withPlug = (sheet: ReadingSheet, at: number, change: (plug: PlugReading) => Partial<PlugReading>): ReadingSheet =>
  ({ ...sheet, plugs: sheet.plugs.map((plug, i) => (i === at ? { ...plug, ...change(plug) } : plug)) });

const doubted = (tip: Tip): Tip => {
  const named = FACET_NAMES.find((name) => tip[name] !== undefined);
  const { unsure, ...sure } = tip;
  return unsure === undefined && named !== undefined ? { ...tip, unsure: [named] } : sure;
};

/** Sheets of the same engine that differ in one thing, by what differs. */
const differing = (sheet: ReadingSheet): Readonly<Record<string, fc.Arbitrary<ReadingSheet>>> => {
  const at = fc.nat(sheet.plugs.length - 1);
  const cylinder = fc.integer({ min: 1, max: sheet.engine.cylinders });
  const checked = (check: CylinderCheck): ReadingSheet => ({ ...sheet, cylinderChecks: [check] });
  return {
    'one facet': fc.tuple(at, facet).map(([i, [name, value]]) => withPlug(sheet, i, ({ tip }) => ({ tip: { ...tip, [name]: value } }))),
    'one doubt': at.map((i) => withPlug(sheet, i, ({ tip }) => (tip === undefined ? {} : { tip: doubted(tip) } as Partial<PlugReading>))),
    'one measurement': fc.tuple(at, fc.double({ min: 0, max: 200, noNaN: true }))
      .map(([i, insulationMOhm]) => withPlug(sheet, i, ({ measured }) => ({ measured: { ...measured, insulationMOhm } }))),
    'one circumstance': fc.oneof(
      fc.constantFrom(...FUELS).map((fuel) => ({ ...sheet.conditions, fuel })),
      fc.constantFrom(...CONDITION_TAGS).map((tag) => ({ ...sheet.conditions, tags: [tag] })),
    ).map((conditions) => ({ ...sheet, conditions })),
    'one symptom': fc.tuple(fc.constantFrom(...SYMPTOMS), fc.option(cylinder, { nil: undefined }))
      .map(([what, where]) => ({ ...sheet, symptoms: [...(sheet.symptoms ?? []), where === undefined ? { what } : { what, cylinder: where }] })),
    'one check': fc.tuple(cylinder, fc.oneof(
      fc.integer({ min: 200, max: 1400 }).map((compressionKPa) => ({ compressionKPa })),
      fc.constantFrom(...SPARKS).map((spark) => ({ spark })), fc.constantFrom(...BORESCOPE).map((borescope) => ({ borescope })),
    )).map(([n, check]) => checked({ cylinder: n, ...check })),
  };
};

describe('what is kept from one reading to the next', () => {
  it.each(['one facet', 'one doubt', 'one measurement', 'one circumstance', 'one symptom', 'one check'])(
    'changes no byte of the findings: a sheet is read alike alone and after one of the same engine that differs in %s', (what) => {
      const pair = anySheet.chain((sheet) => differing(sheet)[what]!.map((other) => ({ sheet, other })));
      fc.assert(fc.property(pair, ({ sheet, other }) => {
        expect(parseReadingSheet(other)).toMatchObject({ ok: true });
        const remembering = fresh();
        told(other, remembering);
        expect(told(sheet, remembering)).toBe(told(sheet, fresh()));
      }), { numRuns: 17 });
    });

  const kb = knowledge([condition('soot', {})], [cause('rich', { moved: [{ by: { tag: 'choke sticking' }, how: 'likelier', because: '', source: '' }] })]);
  const memoryOf = (sheet: ReadingSheet, of: Knowledge): unknown => {
    const evidence = evidenceOf(sheet);
    return solverFor(networkFor(of, evidence))(evidence).ground.memory;
  };

  it('is let go after forty readings', () => {
    const of = structuredClone(kb);
    const memories = Array.from({ length: 41 }, () => memoryOf(sheetOf(), of));
    expect(new Set(memories.slice(0, 40)).size).toBe(1);
    expect(memories[40]).not.toBe(memories[0]);
  });

  it('serves again whatever was seen, but not where a circumstance made a cause likelier', () => {
    const of = structuredClone(kb);
    const first = memoryOf(sheetOf(), of);
    expect(memoryOf(sheetOf({ plugs: [{ cylinder: 1, tip: { noseColour: 'black' } }], symptoms: [{ what: 'misfire' }] }), of)).toBe(first);
    expect(memoryOf(sheetOf({ conditions: { tags: ['choke sticking'] } }), of)).not.toBe(first);
  });
});
