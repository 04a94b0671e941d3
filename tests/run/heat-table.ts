import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { withTables } from '../fixtures/heat-table.ts';
import { ROOT } from './vitest.ts';

/** Computes the tables of docs/heat.md anew. */
const DOCUMENT = join(ROOT, 'docs/heat.md');
writeFileSync(DOCUMENT, withTables(readFileSync(DOCUMENT, 'utf8')));
