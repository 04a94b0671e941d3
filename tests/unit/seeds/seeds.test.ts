import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SEEDS } from '../../../seeds/index.ts';
import { parseReadingSheet } from '../../../shared/formats/reading-sheet.v1.ts';

const folder = join(import.meta.dirname, '../../../seeds');
const files = readdirSync(folder, { recursive: true }).map(String).filter((file) => file.endsWith('.json') && file !== 'tsconfig.json');

const sheets = SEEDS.flatMap(({ name, sheets: raw }) => raw.map((sheet) => {
  const parsed = parseReadingSheet(sheet);
  return { engine: name, parsed, problems: parsed.ok ? [] : parsed.error };
}));

describe('the demo library', () => {
  it('holds every sheet of its folder', () => {
    expect(sheets).toHaveLength(files.length);
  });

  it.each(sheets)('has a sheet of the $engine without a problem', ({ problems }) => {
    expect(problems).toEqual([]);
  });

  it('tells of each engine at least two readings, in order of date, with one engine record', () => {
    for (const { name } of SEEDS) {
      const own = sheets.flatMap(({ engine, parsed }) => (engine === name && parsed.ok ? [parsed.value] : []));
      const dates = own.map((sheet) => sheet.date ?? '');
      expect(own.length).toBeGreaterThanOrEqual(2);
      expect(dates).toEqual([...new Set(dates)].sort());
      for (const sheet of own) expect(sheet.engine).toEqual(own[0]?.engine);
      expect(own[0]?.engine.name).toBe(name);
    }
  });

  it('has a tip for every plug of every engine', () => {
    for (const { parsed } of sheets) {
      if (!parsed.ok) continue;
      const { engine, plugs } = parsed.value;
      expect(plugs.filter((plug) => plug.tip !== undefined)).toHaveLength(engine.cylinders * (engine.plugsPerCylinder ?? 1));
    }
  });
});
