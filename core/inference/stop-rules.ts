import type { Findings } from '../../shared/formats/findings.v1.ts';
import { placesWords, placeWords, sentenceStart } from '../domain/words.ts';
import type { Bar, Caution, Circumstance, StopRule, Term } from '../knowledge/types.ts';
import { holds } from './circumstances.ts';
import type { CylinderEvidence, Evidence, PlugEvidence } from './evidence.ts';

/** A rule that fired, with the places where it did. */
export type Stop = { readonly rule: StopRule; readonly cylinder: number; readonly plugs: readonly PlugEvidence[] };

/** Of the plug in this hole where the circumstance is about a plug, else of the engine. */
const circumstanceHolds = (circumstance: Circumstance, plug: PlugEvidence, evidence: Evidence): boolean =>
  holds(circumstance, evidence.sheet, plug.reading === undefined ? [] : [plug.reading]) === true;

/** A doubted value counts: a stop costs a look, a missed stop costs an engine. */
function termHolds(term: Term, plug: PlugEvidence, cylinder: CylinderEvidence, evidence: Evidence): boolean {
  if ('plug' in term) return plug.seen.some((o) => o.finding === term.plug && term.is.includes(o.value));
  if ('cylinder' in term) return cylinder.seen.some((o) => o.finding === term.cylinder && term.is.includes(o.value));
  if ('symptom' in term) return evidence.present.includes(term.symptom) || cylinder.symptoms.includes(term.symptom);
  return circumstanceHolds(term.circumstance, plug, evidence);
}

const fires = (rule: StopRule, plug: PlugEvidence, cylinder: CylinderEvidence, evidence: Evidence): boolean =>
  rule.anyOf.some((terms) => terms.length > 0 && terms.every((term) => termHolds(term, plug, cylinder, evidence)));

export function stopsFor(rules: readonly StopRule[], evidence: Evidence): Stop[] {
  return rules.flatMap((rule) =>
    evidence.cylinders.flatMap((cylinder) => {
      const plugs = cylinder.plugs.filter((plug) => fires(rule, plug, cylinder, evidence));
      return plugs.length === 0 ? [] : [{ rule, cylinder: cylinder.cylinder, plugs }];
    }),
  );
}

/** One line a rule, with all the places where it fired. */
export function stopLines(stops: readonly Stop[]): Findings['stop'] {
  const placed = (rule: StopRule): boolean => rule.anyOf.some((terms) => terms.some((term) => 'plug' in term || 'cylinder' in term));
  return [...new Set(stops.map(({ rule }) => rule))].map((rule) => {
    const fired = stops.filter((stop) => stop.rule === rule);
    if (!placed(rule)) return { rule: rule.id, why: rule.words };
    const where = sentenceStart(placesWords(fired.flatMap(({ plugs }) => plugs.map(({ place }) => placeWords(place)))));
    return { rule: rule.id, ...(fired.length === 1 && { cylinder: (fired[0] as Stop).cylinder }), why: `${where}: ${rule.words}` };
  });
}

/** The bars on a hotter plug that something on the sheet sets. */
export const barsFor = (bars: readonly Bar[], evidence: Evidence): Bar[] =>
  bars.filter(({ anyOf }) => anyOf.some((term) => evidence.cylinders.some((c) => c.plugs.some((plug) => termHolds(term, plug, c, evidence)))));

/** Cautions without a term always stand; the others where one of their terms holds anywhere. */
export function cautionsFor(cautions: readonly Caution[], evidence: Evidence): string[] {
  return cautions
    .filter(
      ({ when }) =>
        when === undefined || when.some((term) => evidence.cylinders.some((c) => c.plugs.some((plug) => termHolds(term, plug, c, evidence)))),
    )
    .map(({ words }) => words);
}
