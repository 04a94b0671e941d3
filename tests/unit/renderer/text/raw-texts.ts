import * as engineWords from '../../../../shared/vocabulary/engine.ts';
import * as conditionWords from '../../../../shared/vocabulary/conditions.ts';
import * as tipWords from '../../../../shared/vocabulary/tip.ts';
import * as verdictWords from '../../../../shared/vocabulary/verdicts.ts';
import { unmarked } from './pseudo-catalogue.ts';

export function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(stringsIn);
}

export const vocabularyWords = (): readonly string[] => [engineWords, conditionWords, tipWords, verdictWords].flatMap((words) => stringsIn({ ...words }));

const SPOKEN = ['aria-label', 'title', 'placeholder', 'alt'];

function* textsIn(root: HTMLElement): Generator<string> {
  for (const element of root.querySelectorAll('*')) {
    if (element.matches('script, style, kbd, kbd *')) continue;
    for (const name of SPOKEN) yield element.getAttribute(name) ?? '';
    for (const node of element.childNodes) if (node.nodeType === Node.TEXT_NODE) yield node.nodeValue ?? '';
  }
}

const bare = (text: string): string => text.replace(/[\d.,:;·+−–÷×()/<>≤≥&'"“”…¹²³-]+/g, ' ').replace(/\s+/g, ' ').trim().toLowerCase();

/** Units, sources by their letter, and months: the same in every language, or written by the language's own rules. */
const NEUTRAL = new Set([
  'mm', 'cm', 'kpa', 'psi', '°c', '°f', 'n·m', 'n m', 'lb ft', 'km', 'mi', 'in', 'h', 'kω', 'mω', 'kv', 'kn', 'lbf', 'r min', 'min', 'ms', 's', 'λ', 'm', 'ft', '%', '°', 'w',
  ...Array.from({ length: 12 }, (_, month) => new Date(2026, month).toLocaleDateString('en-GB', { month: 'long' }).toLowerCase()),
]);

/**
 * Every text that a person reads or hears in here and that stands neither in brackets nor among the known words. Signs and figures are left out.
 * @param known words that the catalogue need not hold
 */
export function rawTextsIn(root: HTMLElement, known: readonly string[]): readonly string[] {
  const allowed = new Set(known.map(bare));
  const raw = [...textsIn(root)].map((text) => bare(unmarked(text)));
  return [...new Set(raw.filter((text) => /\p{L}/u.test(text) && !NEUTRAL.has(text) && !allowed.has(text)))];
}
