import { describe, expect, it } from 'vitest';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { ownerOf } from '../../../../core/knowledge/line-keys.ts';
import { groundedLines } from '../../../../core/knowledge/lint/grounded-lines.ts';
import { withShopLines } from '../../../../core/shop-lines/with-shop-lines.ts';
import { readingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { SEEDS } from '../../../../seeds/index.ts';
import { line } from '../shop-lines/any-lines.ts';

const sheets = SEEDS.flatMap((seed) => seed.sheets.map((sheet) => readingSheet.parse(sheet)));
const byKey = new Map(groundedLines(KNOWLEDGE).map((one) => [one.place, one]));

const told = sheets.flatMap((sheet) => {
  const { plugs, engine } = diagnose(sheet, { knowledge: KNOWLEDGE, digest: '' });
  const causes = [...plugs.flatMap((plug) => plug.causes), ...engine.causes];
  return causes.flatMap((cause) => [...cause.supports, ...cause.speaksAgainst].map((fact) => ({ cause, fact })));
});

describe('the reasons in the findings of the demo readings', () => {
  it('name lines that are in the knowledge', () => {
    const named = told.flatMap(({ fact }) => fact.lines ?? []);
    expect(named.length).toBeGreaterThan(100);
    expect(named.filter((key) => !byKey.has(key))).toEqual([]);
  });

  it('begin at the cause they speak of', () => {
    for (const { cause, fact } of told) if (fact.lines?.[0] !== undefined) expect(ownerOf(fact.lines[0])).toBe(cause.id.split(' @ ')[0]);
  });

  it('are in the words of the line that supports it', () => {
    const supporting = told.filter(({ cause, fact }) => cause.supports.includes(fact) && fact.lines !== undefined);
    expect(supporting.length).toBeGreaterThan(50);
    for (const { fact } of supporting) expect(fact.because).toBe(byKey.get(fact.lines!.at(-1)!)?.because);
  });

  it('carry no mark of a workshop, until a line of a workshop is among them', () => {
    expect(told.filter(({ fact }) => fact.addedBy !== undefined)).toEqual([]);
    const says = { kind: 'gives', of: 'oil-wet', symptom: 'vibration', strength: 'usually' } as const;
    const { knowledge, active } = withShopLines(KNOWLEDGE, [line(says)]);
    const sheet = readingSheet.parse({
      format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 4, cycle: 'four-stroke' }, symptoms: [{ what: 'vibration', cylinder: 2 }],
      plugs: [1, 2, 3, 4].map((cylinder) => ({ cylinder, tip: { deposit: cylinder === 2 ? 'wet oil' : 'light dusting' } })),
    });
    const { plugs } = diagnose(sheet, { knowledge, digest: '', shop: { lines: active, without: KNOWLEDGE } });
    const marked = plugs.flatMap(({ causes }) => causes).flatMap(({ supports }) => supports).filter(({ addedBy }) => addedBy !== undefined);
    expect(marked.length).toBeGreaterThan(0);
    for (const fact of marked) {
      expect(fact).toMatchObject({ text: 'cylinder 2: vibration', because: 'It is so on every second one here.', addedBy: 'Ann' });
      expect(fact.lines?.at(-1)).toBe('oil-wet gives vibration');
    }
  });
});
