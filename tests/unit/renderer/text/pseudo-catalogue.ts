import type { Text } from '../../../../renderer/text/index.ts';

type Words = string | number | null | ((...given: never[]) => unknown) | { readonly [key: string]: Words } | readonly Words[];

function bracketed(words: Words, except: readonly string[]): Words {
  if (typeof words === 'string') return words === '' ? words : `⟦${words}⟧`;
  if (typeof words === 'function') return (...given: never[]) => bracketed(words(...given) as Words, except);
  if (Array.isArray(words)) return words.map((each: Words) => bracketed(each, except));
  if (typeof words !== 'object' || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([key, each]) => [key, except.includes(key) ? each : bracketed(each, except)]));
}

/** The same with every text in brackets, but for what stands under the names in `except`. */
const marked = <T>(value: T, except: readonly string[] = []): T => bracketed(value as unknown as Words, except) as unknown as T;

/** The catalogue with every text in brackets, those that its functions put together as well. */
export const markedCatalogue = (text: Text): Text => marked(text);

/** What of a text does not stand in brackets. */
export function unmarked(text: string): string {
  const rest = text.replace(/⟦[^⟦⟧]*⟧/g, '');
  return rest === text ? rest : unmarked(rest);
}
