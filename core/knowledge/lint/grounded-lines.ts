import { givesKey, makesKey, movedKey, showsKey } from '../line-keys.ts';
import { COMMON_PRACTICE, FROM_MEMORY, OWN_LINE, type Dissent, type Knowledge, type SourceId } from '../types.ts';

/** A line that has to say why and from where. */
export type GroundedLine = {
  readonly place: string;
  readonly because: string;
  readonly sources: readonly SourceId[];
  readonly against: readonly SourceId[];
};

type Grounds = { readonly because: string; readonly source: SourceId | readonly SourceId[]; readonly against?: Dissent | readonly Dissent[] };

const line = (place: string, { because, source, against }: Grounds): GroundedLine => ({
  place, because, sources: [source].flat(), against: against === undefined ? [] : [against].flat().map((dissent) => dissent.source),
});

/** Every line of the knowledge that carries grounds, with its place. */
export function groundedLines(kb: Knowledge): GroundedLine[] {
  const conditions = kb.conditions.flatMap(({ id, shows, gives }) => [
    ...shows.map((link) => line(showsKey(id, link), link)),
    ...gives.map((link) => line(givesKey(id, link), link)),
  ]);
  const causes = kb.causes.flatMap(({ id, makes, shows, gives, moved }) => [
    ...makes.map((link) => line(makesKey(id, link), link)),
    ...shows.map((link) => line(showsKey(id, link), link)),
    ...gives.map((link) => line(givesKey(id, link), link)),
    ...moved.map((link) => line(movedKey(id, link), link)),
  ]);
  const whole = [...kb.checks, ...kb.stopRules, ...kb.barsOnHotter, ...kb.cautions, ...kb.contradictions].map((entry) => line(entry.id, entry));
  return [...conditions, ...causes, ...whole];
}

/** Whether a source id is one of the honest answers rather than a document. */
export const isNoDocument = (source: SourceId): boolean => [COMMON_PRACTICE, FROM_MEMORY, OWN_LINE].includes(source);
