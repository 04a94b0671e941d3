type Sheet = { readonly date: string } & Readonly<Record<string, unknown>>;
type Cure = { readonly cause: string; readonly cylinders?: readonly number[] };
/** What the club put right before the reading of this day, and what it had tried before the one before that to no avail. */
type Work = { readonly date: string; readonly done: readonly Cure[]; readonly tried?: readonly Cure[] };

/** Every sheet with the one before it and the work between the two. @param sheets of one engine, in order of date */
export const inTime = (sheets: readonly Sheet[], works: readonly Work[] = []): readonly Sheet[] => sheets.map((sheet, i) => {
  const before = sheets[i - 1];
  if (before === undefined) return sheet;
  const { format: _, version: __, engine: ___, ...reading } = before;
  const { date: ____, ...work } = works.find(({ date }) => date === sheet.date) ?? { date: '' };
  return { ...sheet, since: { reading, ...work } };
});
