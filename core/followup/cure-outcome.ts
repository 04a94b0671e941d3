import type { Cure } from '../../shared/formats/reading-sheet.v1.ts';
import type { CureFollowed, PlugChange } from '../../shared/formats/findings.v1.ts';
import type { CureOutcome } from '../../shared/vocabulary/follow-up.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import { plugKey } from '../domain/plugs.ts';
import { listWords, placesWords, placeWords, sentence, sentenceStart } from '../domain/words.ts';
import type { Cause, Knowledge } from '../knowledge/types.ts';
import { ranked, type Conclusion } from '../inference/conclude.ts';
import type { Instance, Network } from '../inference/network.ts';
import { WORTH_A_CURE } from '../inference/next-check.ts';
import { MOST_CURES } from '../inference/plan.ts';
import { reaches } from './cures-done.ts';
import type { SymptomChange } from './symptom-change.ts';

/** A change with the faults before and now that it rests on. */
export type Changed = PlugChange & { readonly faultsNow: readonly Verdict[]; readonly faultsBefore: readonly Verdict[] };
type Given = {
  readonly knowledge: Knowledge; readonly before: Conclusion; readonly now: Conclusion; readonly changes: readonly Changed[];
  readonly symptoms: readonly SymptomChange[]; readonly done: readonly Cure[];
};
type Item = { readonly cause: Cause; readonly places: readonly Instance[]; readonly done: boolean };

const allPlaces = (network: Network): Instance[] => [...network.shared, ...[...network.local.values()].flat()];

/** Cures that were carried out, each as it is noted; then those that the reading before called for and nobody carried out. */
function itemsOf({ before, done }: Given): Item[] {
  const { solution } = before;
  const places = allPlaces(solution.network);
  const made = done.flatMap((cure): Item[] => {
    const reached = places.filter((place) => reaches(cure, place));
    return reached[0] === undefined ? [] : [{ cause: reached[0].cause, places: reached, done: true }];
  });
  const taken = new Set(made.flatMap((item) => item.places));
  const open = ranked(places.filter((place) => !place.cause.harmless), solution, WORTH_A_CURE).slice(0, MOST_CURES).filter((place) => !taken.has(place));
  return [...made, ...open.map((place) => ({ cause: place.cause, places: [place], done: false }))];
}

/** What this cause does to a plug, as judgements. */
export const marksOf = (cause: Cause, { conditions }: Knowledge): readonly Verdict[] =>
  conditions.filter(({ id }) => cause.makes.some(({ condition }) => condition === id)).map(({ verdict }) => verdict);

/** The plugs in reach that bore a mark of this cause at the reading before. */
function concerned({ cause, places }: Item, { knowledge, changes }: Given): readonly Changed[] {
  const [keys, made] = [new Set(places.flatMap(({ plugs }) => plugs)), marksOf(cause, knowledge)];
  return changes.filter((c) => keys.has(plugKey(c.cylinder, c.position)) && c.faultsBefore.some((v) => made.includes(v)));
}

const wordsOf = (plugs: readonly Changed[]): string => sentenceStart(placesWords(plugs.map(placeWords)));

type Judged = { readonly outcome: CureOutcome; readonly why: string };

function byPlugs(told: readonly Changed[], made: readonly Verdict[]): Judged {
  const gone = told.filter(({ faultsNow }) => !faultsNow.some((v) => made.includes(v)));
  const less = told.filter((plug) => !gone.includes(plug) && plug.change === 'better');
  const still = told.filter((plug) => !gone.includes(plug) && !less.includes(plug));
  const parts = ([[gone, 'its mark is gone'], [less, 'its mark is less'], [still, 'its mark is still there']] as const)
    .filter(([plugs]) => plugs.length > 0).map(([plugs, words]) => `${placesWords(plugs.map(placeWords))}: ${words}`);
  const outcome = still.length === told.length ? 'not borne out' : gone.length === told.length ? 'borne out' : 'partly borne out';
  return { outcome, why: sentence(parts.join('; ')) };
}

/** By what was felt, where no plug tells. @param silent why no plug tells, without a full stop */
function bySymptoms(symptoms: readonly SymptomChange[], silent: string): Judged {
  const [gone, still] = (['gone', 'still there'] as const).map((word) => symptoms.filter(({ change }) => change === word).map(({ what }) => what)) as [string[], string[]];
  if (still.length > 0) return { outcome: gone.length > 0 ? 'partly borne out' : 'not borne out', why: `${silent}; still felt: ${listWords(still)}.` };
  return gone.length > 0 ? { outcome: 'borne out', why: `${silent}; no longer felt: ${listWords(gone)}.` } : { outcome: 'cannot be told', why: `${silent}.` };
}

/** What was felt at the reading before and this cause can give, by itself or through what it makes of a plug. */
function feltOf({ cause }: Item, { knowledge, symptoms }: Given): readonly SymptomChange[] {
  const made = knowledge.conditions.filter(({ id }) => cause.makes.some(({ condition }) => condition === id));
  const given = new Set([cause, ...made].flatMap(({ gives }) => gives.map(({ symptom }) => symptom)));
  return symptoms.filter(({ what, change }) => change !== 'new' && given.has(what));
}

function judged(item: Item, given: Given): Judged {
  const [plugs, felt] = [concerned(item, given), feltOf(item, given)];
  if (plugs.length === 0) return bySymptoms(felt, 'No plug bore a mark of this cause at the reading before');
  const told = plugs.filter(({ change }) => change !== 'cannot be told');
  if (told.length === 0) return bySymptoms(felt, `${wordsOf(plugs)}: not read since, or not judged`);
  const seen = byPlugs(told, marksOf(item.cause, given.knowledge));
  const still = felt.filter(({ change }) => change === 'still there').map(({ what }) => what);
  return seen.outcome === 'borne out' && still.length > 0 ? { outcome: 'partly borne out', why: `${seen.why} But still felt: ${listWords(still)}.` } : seen;
}

/** Two cures at once that may both have helped one plug cannot be told apart. */
function doneTogether(item: Item, items: readonly Item[], given: Given): string {
  const mine = concerned(item, given);
  const others = items.filter((other) => other !== item && other.done && concerned(other, given).some((plug) => mine.includes(plug)));
  return others.length === 0 ? '' : ` Done together with: ${listWords(others.map(({ cause }) => cause.name))}; which of them did it cannot be told.`;
}

const strongest = (beliefs: readonly number[]): number => beliefs.reduce((most, belief) => Math.max(most, belief), 0);

function followed(item: Item, items: readonly Item[], given: Given): CureFollowed {
  const { cause, places, done } = item;
  const { outcome, why } = done ? judged(item, given) : { outcome: 'not done' as const, why: 'Not noted as done.' };
  const ids = new Set(places.map(({ id }) => id));
  const there = allPlaces(given.now.solution.network).filter(({ id }) => ids.has(id));
  const group = places.length === 1 && places[0]?.group ? ` (${places[0].group})` : '';
  return {
    cause: cause.id,
    name: `${cause.name}${group}`,
    cylinders: cause.scope === 'engine' ? [] : [...new Set(places.flatMap(({ cylinders }) => cylinders))].sort((a, b) => a - b),
    do: cause.cure,
    outcome,
    beliefBefore: strongest(places.map(given.before.solution.belief)),
    beliefNow: strongest(there.map(given.now.solution.belief)),
    why: `${sentence(why)}${outcome === 'borne out' || outcome === 'partly borne out' ? doneTogether(item, items, given) : ''}`,
  };
}

/** What became of each cure, those carried out first. */
export function curesFollowed(given: Given): CureFollowed[] {
  const items = itemsOf(given);
  return items.map((item) => followed(item, items, given));
}

/** Causes that are noted as put right and that this program does not know on this engine. */
export const unknownCures = ({ before, done }: Pick<Given, 'before' | 'done'>): string[] =>
  done.filter((cure) => !allPlaces(before.solution.network).some((place) => reaches(cure, place)))
    .map(({ cause }) => `"${cause}" is noted as put right, but the knowledge has no such cause at that place of this engine; nothing was concluded from it.`);
