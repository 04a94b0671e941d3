import { parseReadingSheet, type ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Problem } from '../../shared/formats/strict.ts';
import { err, type Result } from '../../shared/result.ts';

/** Reads a sheet from the text of a file. A fault of the JSON is told with its line and column, any other with its path. */
export function parseSheetText(text: string): Result<ReadingSheet, Problem[]> {
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  let input: unknown;
  try {
    input = JSON.parse(json);
  } catch (error) {
    return err([{ path: '', message: jsonProblem(json, error instanceof Error ? error.message : String(error)) }]);
  }
  return parseReadingSheet(input);
}

function jsonProblem(text: string, message: string): string {
  if (text.trim() === '') return 'the file is empty; give a reading sheet as JSON';
  const offset = Number(/at position (\d+)/.exec(message)?.[1] ?? text.length);
  const before = text.slice(0, offset).split('\n');
  const what = message.replace(/(,? "[^]*" is not valid JSON| in JSON at position[^]*)$/, '').replace(/^U/, 'u').replace(/^E/, 'e').replace(' of JSON input', ' of the file');
  return `not JSON: ${what} at line ${before.length}, column ${(before.at(-1) ?? '').length + 1}`;
}
