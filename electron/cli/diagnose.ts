import { problemLine } from '../../shared/formats/strict.ts';
import { diagnoseSheet } from '../node/diagnosing.ts';
import { parseSheetText } from '../node/sheet-text.ts';
import { parseArguments, USAGE } from './arguments.ts';
import { findingsText } from './findings-text.ts';
import { readInput } from './input.ts';

/** A file that cannot be taken is told on standard error, one line a problem, with nothing on standard output. */
function refuse(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
  process.exitCode = 2;
}

async function run(args: readonly string[]): Promise<void> {
  const asked = parseArguments(args);
  if (!asked.ok) return refuse(asked.error);
  if ('help' in asked.value) return void process.stdout.write(`${USAGE}\n`);
  const input = await readInput(asked.value.file);
  if (!input.ok) return refuse([input.error]);
  const sheet = parseSheetText(input.value);
  if (!sheet.ok) return refuse(sheet.error.map(problemLine));
  const findings = diagnoseSheet(sheet.value);
  process.stdout.write(asked.value.asText ? findingsText(findings, sheet.value) : `${JSON.stringify(findings, null, 2)}\n`);
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code !== 'EPIPE') throw error; });
await run(process.argv.slice(2));
