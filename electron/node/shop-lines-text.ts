import type { Knowledge } from '../../core/knowledge/types.ts';
import { withShopLines } from '../../core/shop-lines/with-shop-lines.ts';
import { parseShopLines, type ShopLine } from '../../shared/formats/shop-lines.v1.ts';
import type { Problem } from '../../shared/formats/strict.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import { parseJsonText } from './json-text.ts';

/** What is wrong with the lines that are switched on, beside those that are there before them. Paths are those of a file of lines. */
export function problemsOfLines(lines: readonly ShopLine[], knowledge: Knowledge, before: readonly ShopLine[] = []): Problem[] {
  const { refused } = withShopLines(withShopLines(knowledge, before).knowledge, lines);
  return refused.flatMap(({ line, complaints }) => complaints.map(({ field, message }) => ({ path: `lines.${lines.indexOf(line)}.${field}`, message })));
}

/** Reads lines from the text of a file and holds them against the knowledge. */
export function parseShopLinesText(text: string, knowledge: Knowledge): Result<readonly ShopLine[], Problem[]> {
  const parsed = parseJsonText(text, 'a file of shop lines', parseShopLines);
  if (!parsed.ok) return parsed;
  const problems = problemsOfLines(parsed.value.lines, knowledge);
  return problems.length > 0 ? err(problems) : ok(parsed.value.lines);
}
