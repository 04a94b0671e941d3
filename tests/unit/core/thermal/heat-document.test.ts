import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { heatTables, withTables } from '../../../fixtures/heat-table.ts';

const text = readFileSync(join(import.meta.dirname, '../../../../docs/heat.md'), 'utf8');

it('shows in docs/heat.md what the model says today; npm run heat-table writes it anew', () => {
  const tables = heatTables();
  expect(withTables(text, tables)).toBe(text);
  for (const computed of Object.values(tables)) expect(text).toContain(computed);
}, 60_000);
