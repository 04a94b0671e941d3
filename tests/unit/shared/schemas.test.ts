import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { SEEDS } from '../../../seeds/index.ts';
import { jsonSchemas } from '../../../shared/formats/export-schemas.ts';
import { parseReadingSheet, type ReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';
import { plainFindings } from '../../fixtures/plain-findings.ts';
import { sootyThird } from '../../fixtures/plain-sheets.ts';

const published = (name: string): object => JSON.parse(readFileSync(new URL(`../../../shared/formats/schemas/${name}`, import.meta.url), 'utf8')) as object;

/** An independent reader of JSON Schema, draft 2020-12. */
function judge(name: string): (value: unknown) => boolean {
  const ajv = new Ajv2020({ strict: true, allowUnionTypes: true });
  addFormats(ajv);
  const validate = ajv.compile(published(name));
  return (value) => validate(value);
}

describe('the published schemas', () => {
  it.each(Object.entries(jsonSchemas()))('say what the program checks: %s', (name, schema) => {
    expect(published(name)).toEqual(JSON.parse(JSON.stringify(schema)));
  });

  it('let every sheet of the demo library pass before an outside judge', () => {
    const passes = judge('reading-sheet.v1.schema.json');
    for (const sheet of SEEDS.flatMap(({ sheets }) => sheets)) expect(passes(sheet)).toBe(true);
  });

  it('let findings pass before an outside judge', () => {
    expect(judge('findings.v1.schema.json')(plainFindings(sootyThird))).toBe(true);
  });

  it.each([
    ['a field nobody knows', { ...sootyThird, colour: 'red' }],
    ['a field nobody knows, deep inside', { ...sootyThird, plugs: [{ cylinder: 1, tip: { shine: 'dull' } }] }],
    ['a word that is not in the list', { ...sootyThird, plugs: [{ cylinder: 1, tip: { noseColour: 'mauve' } }] }],
    ['half a cylinder', { ...sootyThird, plugs: [{ cylinder: 1.5 }] }],
    ['a number out of its range', { ...sootyThird, plugs: [{ cylinder: 1, measured: { gapMm: 9 } }] }],
    ['no plug', { ...sootyThird, plugs: [] }],
    ['another version', { ...sootyThird, version: 2 }],
    ['a day that is not in the calendar', { ...sootyThird, date: '2026-02-30' }],
  ])('refuse, as the program does, %s', (_what, sheet) => {
    expect(judge('reading-sheet.v1.schema.json')(sheet)).toBe(false);
    expect(parseReadingSheet(sheet).ok).toBe(false);
  });

  it('need the program for what stands between fields: a fifth cylinder of four', () => {
    const fifth: ReadingSheet = { ...sootyThird, plugs: [{ cylinder: 5 }] };
    expect(judge('reading-sheet.v1.schema.json')(fifth)).toBe(true);
    expect(parseReadingSheet(fifth)).toMatchObject({ ok: false, error: [{ path: 'plugs.0.cylinder' }] });
  });
});
