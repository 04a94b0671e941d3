import type { Circumstance } from './types.ts';

/*
 * What one line of the knowledge is called: its owner, what it does, and to what. The same words in the linter, in the findings and in an
 * address. Unique, because ids are, and because no owner says a thing twice.
 */

export const makesKey = (cause: string, { condition }: { readonly condition: string }): string => `${cause} makes ${condition}`;
export const showsKey = (owner: string, { finding, is }: { readonly finding: string; readonly is: string }): string => `${owner} shows ${finding} ${is}`;
export const givesKey = (owner: string, { symptom }: { readonly symptom: string }): string => `${owner} gives ${symptom}`;

/** A circumstance by its kind and value; what was noted needs no kind. */
export function movedKey(cause: string, { by }: { readonly by: Circumstance }): string {
  const [kind, value] = Object.entries(by)[0] as [string, unknown];
  return `${cause} moved by ${kind === 'tag' ? '' : `${kind} `}${[value].flat().join(' or ')}`;
}

/** The id of the cause, condition or rule that a line belongs to. */
export const ownerOf = (key: string): string => key.split(' ', 1)[0] ?? '';
