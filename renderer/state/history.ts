/** What a person typed and could not be taken yet, by the path of its field. */
export type Pending = Readonly<Record<string, string>>;

export type Step<T> = { readonly before: T; readonly target: string | null };

/** Where we are, the steps that led here, and the steps taken back. */
export type History<T> = { readonly now: T; readonly past: readonly Step<T>[]; readonly future: readonly T[] };

export const MOST_STEPS = 500;

export const startHistory = <T>(now: T): History<T> => ({ now, past: [], future: [] });

/** One step forward. Steps with the same target that follow each other become one. */
export function record<T>(history: History<T>, now: T, target: string | null = null): History<T> {
  const last = history.past.at(-1);
  if (target !== null && last?.target === target && history.future.length === 0) return { ...history, now };
  return { now, past: [...history.past, { before: history.now, target }].slice(-MOST_STEPS), future: [] };
}

export function undone<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return { now: last.before, past: history.past.slice(0, -1), future: [history.now, ...history.future] };
}

export function redone<T>(history: History<T>): History<T> {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  return { now: next, past: [...history.past, { before: history.now, target: null }], future };
}
