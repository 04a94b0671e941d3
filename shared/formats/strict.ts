import { z } from 'zod';
import { err, ok, type Result } from '../result.ts';

/** One thing wrong with an input: where it is, and what is allowed there. */
export type Problem = { readonly path: string; readonly message: string };

/** What was received, as JSON where it can be put so. A call from a page may also carry what JSON cannot: big integers, objects in a ring. */
function textOf(received: unknown): string {
  try {
    const json: unknown = JSON.stringify(received);
    return typeof json === 'string' ? json : String(received);
  } catch {
    return `a ${typeof received}`;
  }
}

const wordsFor = (received: unknown): string => {
  const text = textOf(received);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
};

/** An object that takes these fields and no others, and says which it takes. */
export const record = <T extends z.ZodRawShape>(shape: T) =>
  z.strictObject(shape, {
    error: (issue) => {
      if (issue.code === 'unrecognized_keys') return `unknown field; allowed are ${Object.keys(shape).join(', ')}`;
      return issue.input === undefined ? 'missing; give an object' : `${wordsFor(issue.input)} is not an object; it takes the fields ${Object.keys(shape).join(', ')}`;
    },
  });

/** One of the given words; the message names the word found and all that are allowed. */
export const oneOf = <const T extends readonly [string, ...string[]]>(words: T) =>
  z.enum(words, {
    error: (issue) => (issue.input === undefined ? `missing; allowed are ${words.join(', ')}` : `${wordsFor(issue.input)} is not allowed; allowed are ${words.join(', ')}`),
  });

/** A number within bounds that carries its unit in every message. */
export const amount = (unit: string, low: number, high: number) =>
  z.number({ error: (issue) => `${issue.input === undefined ? 'missing' : `${wordsFor(issue.input)} is not a number`}; give ${unit} from ${low} to ${high}` })
    .min(low, { error: (issue) => `${String(issue.input)} is too small; give ${unit} from ${low} to ${high}` })
    .max(high, { error: (issue) => `${String(issue.input)} is too large; give ${unit} from ${low} to ${high}` });

export const count = (what: string, low: number, high: number) =>
  amount(what, low, high).int({ error: (issue) => `${String(issue.input)} is not a whole number; give ${what} from ${low} to ${high}` });

/** Free text of at most so many characters. */
export const text = (limit: number) =>
  z.string({ error: (issue) => (issue.input === undefined ? 'missing; give text' : `${wordsFor(issue.input)} is not text`) }).max(limit, { error: `too long; at most ${limit} characters` });

/** Flattens zod's issues to one problem a place; the name of an unknown field belongs to its path. */
export const problemsOf = (error: z.ZodError): Problem[] =>
  error.issues.flatMap((issue) => {
    const paths = issue.code === 'unrecognized_keys' ? issue.keys.map((key) => [...issue.path, key]) : [issue.path];
    return paths.map((path) => ({ path: path.join('.'), message: issue.message }));
  });

export function parseStrictly<S extends z.ZodType>(schema: S, input: unknown): Result<z.output<S>, Problem[]> {
  const parsed = schema.safeParse(input);
  return parsed.success ? ok(parsed.data) : err(problemsOf(parsed.error));
}

/** The line in which a problem is told on a terminal. */
export const problemLine = ({ path, message }: Problem): string => `${path === '' ? '(top)' : path}: ${message}`;
