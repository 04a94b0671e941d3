import { parse, parseTree, printParseErrorCode, type Node, type ParseError } from 'jsonc-parser';
import type { Problem } from '../../shared/formats/strict.ts';
import { err, type Result } from '../../shared/result.ts';

const PLAIN_JSON = { disallowComments: true, allowTrailingComma: false };

/**
 * Reads the text of a file in one of our formats. A fault of the JSON is told with its line and column, any other with its path.
 * @param what the file should be, with its article
 * @param parseInput takes the parsed JSON
 */
export function parseJsonText<T>(text: string, what: string, parseInput: (input: unknown) => Result<T, Problem[]>): Result<T, Problem[]> {
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  let input: unknown;
  try {
    input = JSON.parse(json);
  } catch {
    return err([{ path: '', message: faultOf(json, what) }]);
  }
  const parsed = parseInput(input);
  const twice = parsed.ok ? repeatedNames(json) : [];
  return twice.length > 0 ? err(twice) : parsed;
}

function faultOf(text: string, what: string): string {
  if (text.trim() === '') return `the file is empty; give ${what} as JSON`;
  const errors: ParseError[] = [];
  try { parse(text, errors, PLAIN_JSON); } catch { return 'not JSON: nested too deeply'; }
  const first = errors[0];
  const before = text.slice(0, first?.offset ?? text.length).split('\n');
  const fault = first === undefined ? 'a fault' : printParseErrorCode(first.error).replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter}`).toLowerCase();
  return `not JSON: ${fault} at line ${before.length}, column ${(before.at(-1) ?? '').length + 1}`;
}

/** Names that stand twice in one object: JSON keeps only the last of them, and what the first one said would be lost in silence. */
function repeatedNames(text: string): Problem[] {
  try {
    const root = parseTree(text, [], PLAIN_JSON);
    return root === undefined ? [] : repeatedIn(root, []);
  } catch {
    return [{ path: '', message: 'nested too deeply' }];
  }
}

function repeatedIn(node: Node, path: readonly (string | number)[]): Problem[] {
  if (node.type === 'array') return (node.children ?? []).flatMap((child, i) => repeatedIn(child, [...path, i]));
  if (node.type !== 'object') return [];
  const seen = new Set<string>();
  return (node.children ?? []).flatMap(({ children }) => {
    const [name, value] = children ?? [];
    const field = String(name?.value);
    const again: Problem[] = seen.has(field) ? [{ path: [...path, field].join('.'), message: 'stands here twice; give it once' }] : [];
    seen.add(field);
    return [...again, ...(value === undefined ? [] : repeatedIn(value, [...path, field]))];
  });
}
