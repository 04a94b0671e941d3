/** How many of these fields hold something. */
export const countAt = (fields: object, paths: readonly string[]): number =>
  paths.filter((path) => (fields as Record<string, unknown>)[path] !== undefined).length;
