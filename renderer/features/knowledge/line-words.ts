import type { Knowledge } from '../../../core/knowledge/types.ts';
import { ownerOf } from '../../../core/knowledge/line-keys.ts';
import type { Text } from '../../text/index.ts';

/** What a line says, as one reads it in a list: its owner by name, then what it does and to what. */
export function lineWords(key: string, knowledge: Knowledge, text: Text['knowledge']): string {
  const { conditions, causes } = knowledge;
  const owner = ownerOf(key);
  const name = [...causes, ...conditions].find(({ id }) => id === owner)?.name;
  if (name === undefined) return ownName(owner, knowledge);
  const rest = key.slice(owner.length + 1);
  const made = /^makes (.+)$/.exec(rest)?.[1];
  const said = made === undefined ? undefined : conditions.find(({ id }) => id === made)?.name ?? made;
  if (said !== undefined) return `${name} – ${text.leads(said)}`;
  const shown = /^shows (swap \S+|known-good \S+|\S+) (.+)$/.exec(rest);
  if (shown !== null) return `${name} – ${text.shows(text.finding(shown[1] ?? ''), shown[2] ?? '')}`;
  const given = /^gives (.+)$/.exec(rest)?.[1];
  return `${name} – ${given === undefined ? rest.replace(/^moved by /, '') : text.gives(given)}`;
}

/** The name of what is neither cause nor condition, and is one line in itself. */
function ownName(id: string, { checks, stopRules, barsOnHotter, contradictions, cautions }: Knowledge): string {
  const check = checks.find((each) => each.id === id)?.name;
  const sign = barsOnHotter.find((each) => each.id === id)?.sign;
  return check ?? sign ?? [...stopRules, ...contradictions, ...cautions].find((each) => each.id === id)?.words ?? id;
}
