import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { READING_RULES } from '../../../../core/domain/reading-rules.ts';
import { readingValidity, type Standing } from '../../../../core/domain/reading-validity.ts';
import { SOURCES } from '../../../../core/knowledge/sources.ts';
import { COMMON_PRACTICE, FROM_MEMORY } from '../../../../core/knowledge/types.ts';
import type { Conditions, ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { CONDITION_TAGS, DUTIES, FUELS, STOPS } from '../../../../shared/vocabulary/conditions.ts';

const WELL_RUN: Conditions = { fuel: 'petrol', duty: 'full load', stop: 'clean cut', warm: true, distanceKm: 30, tags: ['plugs new'] };

const four = (conditions: Conditions, more: Partial<ReadingSheet> = {}): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'competition', cylinders: 4 },
  plugs: [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: { noseColour: 'light tan' } })), conditions, ...more,
});
const answer = (sheet: ReadingSheet, question: string) => readingValidity(sheet).find((a) => a.question === question);
const standing = (sheet: ReadingSheet, question = 'mixture and heat'): Standing | undefined => answer(sheet, question)?.standing;
const notes = (sheet: ReadingSheet, question = 'mixture and heat'): string[] => answer(sheet, question)?.notes.map((note) => note.words) ?? [];

describe('a mixture and heat reading', () => {
  it('is good when new plugs were run warm at the load in question and cut clean (S61, S62: articles on the cut and on warming)', () => {
    expect(standing(four(WELL_RUN))).toBe('good');
  });
  it('says little after idling before the stop (S60: plugs left idling differ from those stopped at load)', () => {
    expect(standing(four({ ...WELL_RUN, stop: 'idled before stop' }))).toBe('says little');
  });
  it('is read with care after driving home (S60: the tip shows the last running only)', () => {
    expect(standing(four({ ...WELL_RUN, stop: 'driven home' }))).toBe('with care');
  });
  it('says little from a cold engine, noted or measured (S62: fully warm; 60 °C as the line is common practice, no source)', () => {
    expect(standing(four({ ...WELL_RUN, warm: false }))).toBe('says little');
    const { warm: _, ...notNoted } = WELL_RUN;
    expect(standing(four({ ...notNoted, coolantC: 45 }))).toBe('says little');
    expect(standing(four({ ...notNoted, coolantC: 88 }))).toBe('good');
  });
  it('says little from new plugs that ran less than ten minutes (S62: at least 10 min on a new plug before it colours)', () => {
    const { distanceKm: _, ...noDistance } = WELL_RUN;
    expect(standing(four({ ...noDistance, hours: 0.15 }))).toBe('says little');
    expect(standing(four({ ...noDistance, hours: 0.17 }))).toBe('good');
    expect(standing(four({ ...WELL_RUN, distanceKm: 5 }))).toBe('says little');
  });
  it('is read with care where old colour may hide new (S61: fresh plugs for mixture reading)', () => {
    expect(standing(four({ ...WELL_RUN, tags: [], distanceKm: 3000 }))).toBe('with care');
  });
  it('sends the reader of an alcohol engine to the rim and the first three threads (S60)', () => {
    const methanol = answer(four({ ...WELL_RUN, fuel: 'methanol' }), 'mixture and heat');
    expect(methanol?.standing).toBe('with care');
    expect(methanol?.notes.find((note) => note.effect === 'weakens')?.remedy).toMatch(/rim.*first three threads/);
  });
  it('warns that unleaded fuel colours faintly without calling the reading bad (S60, S61)', () => {
    expect(notes(four(WELL_RUN)).join(' ')).toContain('Unleaded fuel colours faintly');
    expect(notes(four({ ...WELL_RUN, fuel: 'leaded petrol' })).join(' ')).not.toContain('Unleaded');
  });
  it('sends the reader of a two-stroke to the root of the nose (S63, S59)', () => {
    const sheet = four(WELL_RUN, { engine: { use: 'small', cylinders: 4, cycle: 'two-stroke' } });
    expect(answer(sheet, 'mixture and heat')?.notes.some((note) => /root of the nose/.test(note.because))).toBe(true);
  });
  it('cannot be told from a sheet that notes nothing, and asks for what is missing', () => {
    const silent = answer(four({}), 'mixture and heat');
    expect(silent?.standing).toBe('cannot tell yet');
    expect(silent?.notes.filter((note) => note.effect === 'not known').every((note) => note.remedy !== undefined)).toBe(true);
  });
});

describe('a wear and oil reading', () => {
  it('wants 500 to 5000 km of normal use (common practice, no source)', () => {
    expect(standing(four({ ...WELL_RUN, distanceKm: 499 }), 'wear and oil')).toBe('says little');
    expect(standing(four({ ...WELL_RUN, distanceKm: 500 }), 'wear and oil')).toBe('good');
    expect(standing(four({ ...WELL_RUN, distanceKm: 5000 }), 'wear and oil')).toBe('good');
    expect(notes(four({ ...WELL_RUN, distanceKm: 5001 }), 'wear and oil')).toEqual(['Long running on these plugs.']);
  });
  it('takes hours where no distance is known', () => {
    expect(standing(four({ hours: 40 }), 'wear and oil')).toBe('good');
    expect(standing(four({ hours: 2 }), 'wear and oil')).toBe('says little');
  });
});

describe('a comparison between cylinders', () => {
  it('is void with plugs of two types (S16: all plugs of an engine of one make and heat range)', () => {
    const plugs = [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: { noseColour: 'brown' as const }, fitted: { designation: cylinder === 3 ? 'Tarn 6' : 'Tarn 7' } }));
    expect(standing(four(WELL_RUN, { plugs }), 'between cylinders')).toBe('says little');
  });
  it('takes the same designation written in another case as one type', () => {
    const plugs = [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: { noseColour: 'brown' as const }, fitted: { designation: cylinder === 3 ? 'tarn 7 ' : 'Tarn 7' } }));
    expect(standing(four(WELL_RUN, { plugs }), 'between cylinders')).toBe('good');
  });
  it('is read with care while plugs are missing (S14: one or two against the set)', () => {
    expect(standing(four(WELL_RUN, { plugs: [{ cylinder: 3, tip: { noseColour: 'black' } }] }), 'between cylinders')).toBe('with care');
  });
  it('is not asked of a single-cylinder engine with one plug', () => {
    const single = four(WELL_RUN, { engine: { use: 'small', cylinders: 1 }, plugs: [{ cylinder: 1 }] });
    expect(readingValidity(single).map((a) => a.question)).not.toContain('between cylinders');
  });
});

const optional = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined });
const anyConditions = fc.record({
  fuel: optional(fc.constantFrom(...FUELS)), duty: optional(fc.constantFrom(...DUTIES)), stop: optional(fc.constantFrom(...STOPS)),
  warm: optional(fc.boolean()), distanceKm: optional(fc.integer({ min: 0, max: 20_000 })), hours: optional(fc.integer({ min: 0, max: 400 })),
  tags: optional(fc.uniqueArray(fc.constantFrom(...CONDITION_TAGS), { maxLength: 6 })),
}).map((record) => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Conditions);

describe('whatever was noted', () => {
  it('idling before the stop never counts as a good mixture reading', () => {
    fc.assert(fc.property(anyConditions, (conditions) => {
      expect(standing(four({ ...conditions, stop: 'idled before stop' }))).toBe('says little');
    }));
  });
  it('every judgement short of good names what to blame', () => {
    fc.assert(fc.property(anyConditions, (conditions) => {
      for (const { standing: word, notes: grounds } of readingValidity(four(conditions)))
        expect(word === 'good' || grounds.some((note) => ['spoils', 'weakens', 'not known'].includes(note.effect))).toBe(true);
    }));
  });
  it('every rule gives a reason and a source that the register holds', () => {
    for (const rule of READING_RULES) {
      expect(rule.because, rule.id).not.toBe('');
      expect(rule.source.length, rule.id).toBeGreaterThan(0);
      for (const id of rule.source) expect([COMMON_PRACTICE, FROM_MEMORY, ...SOURCES.map((source) => source.id)], rule.id).toContain(id);
    }
  });
});
