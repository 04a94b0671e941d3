export const WIDTH = 100;

const TIED = '\u00a0';

/**
 * Breaks words into lines of at most `WIDTH` columns, keeping a number and its % together.
 * The first line starts with `lead`, the others are indented to its width.
 */
export function wrapped(words: string, lead = ''): string {
  const indent = ' '.repeat(lead.length);
  const lines = [lead];
  for (const word of words.replaceAll(' %', `${TIED}%`).split(/[ \n\t]+/).filter((part) => part !== '')) {
    const line = lines.at(-1) ?? '';
    const fresh = line.length === lead.length;
    if (!fresh && line.length + 1 + word.length > WIDTH) lines.push(indent + word);
    else lines[lines.length - 1] = fresh ? line + word : `${line} ${word}`;
  }
  return lines.join('\n').replaceAll(TIED, ' ');
}

export const percent = (p: number): string => (p > 0 && p < 0.005 ? 'under 1 %' : p < 1 && p > 0.995 ? 'over 99 %' : `${Math.round(p * 100)} %`);

/** `cylinder 3`, `cylinders 1 and 2`, `cylinders 1, 2 and 3`. */
export function cylindersIn(cylinders: readonly number[]): string {
  const last = cylinders.at(-1);
  return cylinders.length <= 1 ? `cylinder ${last ?? ''}`.trim() : `cylinders ${cylinders.slice(0, -1).join(', ')} and ${String(last)}`;
}
