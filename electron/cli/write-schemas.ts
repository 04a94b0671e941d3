import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { jsonSchemas } from '../../shared/formats/export-schemas.ts';

/** Writes the open formats as JSON Schema beside their source. `--check` writes nothing and fails when a file is not what the source says. */
const FOLDER = new URL('../../shared/formats/schemas/', import.meta.url);
const check = process.argv.includes('--check');

const current = (name: string): string | undefined => { try { return readFileSync(new URL(name, FOLDER), 'utf8'); } catch { return undefined; } };

mkdirSync(FOLDER, { recursive: true });
for (const [name, schema] of Object.entries(jsonSchemas())) {
  const text = `${JSON.stringify(schema, null, 2)}\n`;
  if (current(name) === text) continue;
  if (check) {
    process.stderr.write(`shared/formats/schemas/${name}: not what the source says; run npm run schemas\n`);
    process.exitCode = 1;
  } else {
    writeFileSync(new URL(name, FOLDER), text);
  }
}
