import type { FollowUp } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { SymptomTag } from '../../shared/vocabulary/conditions.ts';

export type SymptomChange = FollowUp['symptoms'][number];

/** What was felt at either reading, and whether it is still there. Gone means that somebody looked for it and did not find it. */
export function symptomChanges({ since, symptoms = [], symptomsAbsent = [] }: ReadingSheet): SymptomChange[] {
  const before = since?.reading.symptoms ?? [];
  const now = new Set(symptoms.map(({ what }) => what));
  const was = [...new Set(before.map(({ what }) => what))];
  const came = [...now].filter((what) => !was.includes(what));
  const becameOf = (what: SymptomTag): SymptomChange['change'] => (now.has(what) ? 'still there' : symptomsAbsent.includes(what) ? 'gone' : 'cannot be told');
  return [...was.map((what): SymptomChange => ({ what, change: becameOf(what) })), ...came.map((what): SymptomChange => ({ what, change: 'new' }))];
}
