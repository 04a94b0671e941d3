import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { sinceOf } from '../../core/followup/since.ts';
import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { problemLine } from '../../shared/formats/strict.ts';
import type { ShopLine } from '../../shared/formats/shop-lines.v1.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import { diagnoseSheet } from '../node/diagnosing.ts';
import { parseSheetText } from '../node/sheet-text.ts';
import { parseShopLinesText } from '../node/shop-lines-text.ts';
import { parseArguments, USAGE } from './arguments.ts';
import { findingsText } from './findings-text.ts';
import { readInput } from './input.ts';

/** A file that cannot be taken is told on standard error, one line a problem, with nothing on standard output. */
function refuse(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
  process.exitCode = 2;
}

/** The sheet in a file. The error is one line a problem, with the name of the file where several are read. */
async function sheetIn(file: string, name = ''): Promise<Result<ReadingSheet, string[]>> {
  const input = await readInput(file);
  if (!input.ok) return err([input.error]);
  const sheet = parseSheetText(input.value);
  return sheet.ok ? sheet : err(sheet.error.map((problem) => `${name}${problemLine(problem)}`));
}

/** The sheet beside an earlier one of the same engine. */
async function besides(sheet: ReadingSheet, file: string, lines: readonly ShopLine[]): Promise<Result<ReadingSheet, string[]>> {
  if (sheet.since !== undefined) return err(['--since: the sheet tells of a reading before already; leave the option out']);
  const earlier = await sheetIn(file, `${file}: `);
  if (!earlier.ok) return earlier;
  const both = parseReadingSheet({ ...sheet, since: sinceOf(earlier.value, diagnoseSheet(earlier.value, lines)) });
  return both.ok ? both : err(both.error.map(({ path, message }) => `${file}: ${problemLine({ path: path.replace('since.reading.', ''), message })}`));
}

/** The lines of a workshop in a file; none without a file. */
async function linesIn(file: string | undefined): Promise<Result<readonly ShopLine[], string[]>> {
  if (file === undefined) return ok([]);
  const input = await readInput(file);
  if (!input.ok) return err([input.error]);
  const lines = parseShopLinesText(input.value, KNOWLEDGE);
  return lines.ok ? lines : err(lines.error.map((problem) => `${file}: ${problemLine(problem)}`));
}

async function run(args: readonly string[]): Promise<void> {
  const asked = parseArguments(args);
  if (!asked.ok) return refuse(asked.error);
  if ('help' in asked.value) return void process.stdout.write(`${USAGE}\n`);
  const { file, asText, since, shop } = asked.value;
  const lines = await linesIn(shop);
  if (!lines.ok) return refuse(lines.error);
  const alone = await sheetIn(file);
  const sheet = alone.ok && since !== undefined ? await besides(alone.value, since, lines.value) : alone;
  if (!sheet.ok) return refuse(sheet.error);
  const findings = diagnoseSheet(sheet.value, lines.value);
  process.stdout.write(asText ? findingsText(findings, sheet.value) : `${JSON.stringify(findings, null, 2)}\n`);
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code !== 'EPIPE') throw error; });
await run(process.argv.slice(2));
