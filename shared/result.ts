/** An expected outcome, good or bad, as a value. Throwing is for bugs only. */
export type Result<T, E> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const err = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });

/** Tells the compiler that every case was handled. @throws when a case slipped through at run time, which is a bug. */
export function assertNever(value: never): never {
  throw new Error(`case not handled: ${JSON.stringify(value)}`);
}
