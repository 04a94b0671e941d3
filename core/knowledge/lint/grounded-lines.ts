import { COMMON_PRACTICE, FROM_MEMORY, type Knowledge, type SourceId } from '../types.ts';

/** A line that has to say why and from where. */
export type GroundedLine = {
  readonly place: string;
  readonly because: string;
  readonly sources: readonly SourceId[];
  readonly against: readonly SourceId[];
};

type Grounds = { readonly because: string; readonly source: SourceId | readonly SourceId[]; readonly against?: { readonly source: SourceId } };

const line = (place: string, { because, source, against }: Grounds): GroundedLine => ({
  place, because, sources: [source].flat(), against: against === undefined ? [] : [against.source],
});

/** Every line of the knowledge that carries grounds, with its place. */
export function groundedLines(kb: Knowledge): GroundedLine[] {
  const conditions = kb.conditions.flatMap(({ id, shows, gives }) => [
    ...shows.map((link) => line(`${id} shows ${link.finding} ${link.is}`, link)),
    ...gives.map((link) => line(`${id} gives ${link.symptom}`, link)),
  ]);
  const causes = kb.causes.flatMap(({ id, makes, shows, gives, moved }) => [
    ...makes.map((link) => line(`${id} makes ${link.condition}`, link)),
    ...shows.map((link) => line(`${id} shows ${link.finding} ${link.is}`, link)),
    ...gives.map((link) => line(`${id} gives ${link.symptom}`, link)),
    ...moved.map((link) => line(`${id} moved by ${Object.values(link.by).flat().join(' or ')}`, link)),
  ]);
  const whole = [...kb.checks, ...kb.stopRules, ...kb.barsOnHotter, ...kb.cautions, ...kb.contradictions].map((entry) => line(entry.id, entry));
  return [...conditions, ...causes, ...whole];
}

/** Whether a source id is one of the two honest answers rather than a document. */
export const isNoDocument = (source: SourceId): boolean => source === COMMON_PRACTICE || source === FROM_MEMORY;
