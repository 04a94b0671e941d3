/** Absent means not observed: fields without a value, and objects and lists left empty, are taken out. */
export const isEmpty = (value: unknown): boolean =>
  value === undefined || value === '' || (Array.isArray(value) && value.length === 0)
  || (typeof value === 'object' && value !== null && !Array.isArray(value) && Object.values(value).every(isEmpty));

/** A copy without its empty fields. */
export function pruned<T extends object>(value: T): T {
  return Object.fromEntries(Object.entries(value).filter(([, part]) => !isEmpty(part))) as T;
}

/** A copy with one field set, or taken out when the value is empty. */
export const withField = <T extends object>(value: T, field: PropertyKey, part: unknown): T => pruned({ ...value, [field]: part });

/** A list with one thing put in or taken out; what counts as the same thing is for the caller to say. */
export function toggled<T>(list: readonly T[] | undefined, item: T, on: boolean, same: (a: T, b: T) => boolean = Object.is): T[] {
  const rest = (list ?? []).filter((other) => !same(other, item));
  return on ? [...rest, item] : rest;
}
