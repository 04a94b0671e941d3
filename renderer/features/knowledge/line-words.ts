import { givesKey, makesKey, movedKey, showsKey } from '../../../core/knowledge/line-keys.ts';
import type { Knowledge } from '../../../core/knowledge/types.ts';
import { once } from '../../../core/once.ts';
import type { Text } from '../../text/index.ts';

type Words = Pick<Text, 'knowledge' | 'told'>;
/** What a line says, in the words of a catalogue. */
type Said = (words: Words) => string;

/** Each line by its key. What is neither cause nor condition is one line in itself. */
function saidIn(knowledge: Knowledge): ReadonlyMap<string, Said> {
  const { causes, conditions, checks, stopRules, barsOnHotter, contradictions, cautions } = knowledge;
  const nameOf = (id: string): string => conditions.find((condition) => condition.id === id)?.name ?? id;
  const ofBoth = [...causes, ...conditions].flatMap((owner): (readonly [string, Said])[] => [
    ...owner.shows.map((link) => [showsKey(owner.id, link), ({ knowledge: text, told }: Words) => `${told.sentence(owner.name)} – ${text.shows(text.finding(link.finding), link.is)}`] as const),
    ...owner.gives.map((link) => [givesKey(owner.id, link), ({ knowledge: text, told }: Words) => `${told.sentence(owner.name)} – ${text.gives(link.symptom)}`] as const),
  ]);
  const ofCauses = causes.flatMap((cause): (readonly [string, Said])[] => [
    ...cause.makes.map((link) => [makesKey(cause.id, link), ({ knowledge: text, told }: Words) => `${told.sentence(cause.name)} – ${text.leads(told.sentence(nameOf(link.condition)))}`] as const),
    ...cause.moved.map((link) => [movedKey(cause.id, link), ({ knowledge: text, told }: Words) => `${told.sentence(cause.name)} – ${text.circumstance(link.by)}`] as const),
  ]);
  const whole = [...checks.map(({ id, name }) => [id, name] as const), ...barsOnHotter.map(({ id, sign }) => [id, sign] as const),
    ...[...stopRules, ...contradictions, ...cautions].map(({ id, words }) => [id, words] as const)];
  return new Map([...whole.map(([id, english]) => [id, ({ told }: Words) => told.sentence(english)] as const), ...ofBoth, ...ofCauses]);
}

const known = new WeakMap<Knowledge, ReadonlyMap<string, Said>>();

/** What a line says, as one reads it in a list: its owner by name, then what it does and to what. A line that is no longer there is named by its key. */
export function lineWords(key: string, knowledge: Knowledge, words: Words): string {
  return once(known, knowledge, () => saidIn(knowledge)).get(key)?.(words) ?? key;
}
