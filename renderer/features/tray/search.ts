import type { Question } from '../../ui/drawn-tip/index.ts';
import { SEQUENCE, valuesOf } from './questions.ts';

export type Match = { readonly question: Question; readonly value: string };

/** The deposit is what people mean first. */
const ORDER: readonly Question[] = ['deposit', ...SEQUENCE.filter((question) => question !== 'deposit')];

/** Values that hold all words typed, in the value or in its question; those that begin with the first word come first. */
export function matches(typed: string, nameOf: (question: Question) => string, valueName: (value: string) => string, most = 12): readonly Match[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const [first] = words;
  if (first === undefined) return [];
  const rank = ({ question, value }: Match): number => {
    const name = valueName(value).toLowerCase();
    if (!words.every((word) => `${name} ${nameOf(question).toLowerCase()}`.includes(word))) return 3;
    return name.startsWith(first) ? 0 : name.includes(first) ? 1 : 2;
  };
  const all = ORDER.flatMap((question) => valuesOf(question).map((value): Match => ({ question, value })));
  return all.map((match, i) => ({ match, i, rank: rank(match) })).filter((found) => found.rank < 3)
    .sort((a, b) => a.rank - b.rank || a.i - b.i).slice(0, most).map(({ match }) => match);
}
