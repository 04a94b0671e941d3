import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';

const fields = (part: object | undefined): number => Object.keys(part ?? {}).length;

/** How many things are entered at each station of a reading. Plugs: how many of them have a tip or a measurement. */
export type EnteredCounts = { readonly run: number; readonly plugs: number; readonly plugsInAll: number; readonly cylinders: number };

export function enteredCounts(sheet: ReadingSheet): EnteredCounts {
  const { tags = [], ...conditions } = sheet.conditions ?? {};
  return {
    run: fields(conditions) + tags.length + (sheet.symptoms?.length ?? 0) + (sheet.symptomsAbsent?.length ?? 0),
    plugs: sheet.plugs.filter((plug) => fields(plug.tip) + fields(plug.measured) > 0).length,
    plugsInAll: sheet.plugs.length,
    cylinders: (sheet.cylinderChecks ?? []).reduce((sum, check) => sum + fields(check) - 1, 0),
  };
}
