import type { FollowUp } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Change } from '../../shared/vocabulary/follow-up.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import type { PlugKey } from '../domain/plugs.ts';
import { numberWords, placesWords, placeWords, sentence, sentenceStart } from '../domain/words.ts';
import { conclude, type Conclusion, type Judged } from '../inference/conclude.ts';
import type { Knowledge } from '../knowledge/types.ts';
import { limitsOf } from './comparable.ts';
import { curesFollowed, marksOf, unknownCures, type Changed } from './cure-outcome.ts';
import { curesOn } from './cures-done.ts';
import { earlierSheet } from './earlier-reading.ts';
import { heatStepsTaken, heatValueChanged } from './heat-step-taken.ts';
import { symptomChanges } from './symptom-change.ts';
import { faultsOf, plugChange, type PlugThen } from './plug-change.ts';

/** Faults of the plug itself: a new plug cures them. */
const OF_THE_PLUG: readonly Verdict[] = ['worn', 'bridged', 'insulator damage', 'ignition leakage', 'wrong reach', 'not sealing'];

const thenOf = ({ plug, judgement }: Judged): PlugThen => ({ ...plug.reading, ...judgement, read: plug.seen.length > 0 });

/** Whether something was put right that can have made one of the faults of this plug. A cause that the knowledge does not have is given the credit. */
function cured(sheet: ReadingSheet, { plug, judgement }: Judged, knowledge: Knowledge): boolean {
  const faults = faultsOf(judgement);
  const renewed = (sheet.conditions?.tags ?? []).includes('plugs new') && faults.every((v) => OF_THE_PLUG.includes(v));
  if (renewed || heatStepsTaken(sheet).has(plug.key)) return true;
  return curesOn(sheet.since, plug.place.cylinder).some(({ cause }) => {
    const known = knowledge.causes.find(({ id }) => id === cause);
    return known === undefined || marksOf(known, knowledge).some((v) => faults.includes(v));
  });
}

function changesOf(sheet: ReadingSheet, before: Conclusion, now: Conclusion, knowledge: Knowledge): Changed[] {
  const then = new Map(before.judged.map((judged): [PlugKey, Judged] => [judged.plug.key, judged]));
  return now.judged.filter(({ plug }) => plug.reading !== undefined || (then.get(plug.key)?.plug.seen.length ?? 0) > 0).map((judged) => {
    const was = then.get(judged.plug.key);
    const faultsBefore = was === undefined ? [] : faultsOf(was.judgement);
    const { cylinder, position } = judged.plug.place;
    return {
      cylinder,
      position,
      ...plugChange(was && thenOf(was), thenOf(judged), was !== undefined && cured(sheet, was, knowledge)),
      before: was?.judgement.verdict ?? 'undetermined',
      now: judged.judgement.verdict,
      faultsBefore,
      faultsNow: faultsOf(judged.judgement),
    };
  });
}

const PHRASES: { readonly [C in Change | 'sound']: readonly [one: string, several: string] } = {
  worse: ['is worse', 'are worse'],
  new: ['has a new fault', 'have a new fault'],
  unchanged: ['is unchanged', 'are unchanged'],
  better: ['is better', 'are better'],
  cured: ['is cured', 'are cured'],
  'cannot be told': ['cannot be compared', 'cannot be compared'],
  sound: ['is sound as before', 'are sound as before'],
};
/** More plugs than this are counted, not listed. */
const MOST_LISTED = 4;

function summaryOf(changes: readonly Changed[]): string {
  const kindOf = ({ change, faultsNow }: Changed): keyof typeof PHRASES => (change === 'unchanged' && faultsNow.length === 0 ? 'sound' : change);
  const parts = (Object.keys(PHRASES) as (keyof typeof PHRASES)[]).flatMap((kind) => {
    const those = changes.filter((change) => kindOf(change) === kind);
    const [one, several] = PHRASES[kind];
    if (those.length === 0) return [];
    if (those.length === 1) return [`${placesWords(those.map(placeWords))} ${one}`];
    const counted = those.length > MOST_LISTED || kind === 'sound' || kind === 'cannot be told';
    return [`${counted ? `${those.length === changes.length ? 'all ' : ''}${numberWords(those.length)} plugs` : placesWords(those.map(placeWords))} ${several}`];
  });
  return sentence(parts.join('; '));
}

function heatLine(sheet: ReadingSheet): string | undefined {
  const taken = [...heatStepsTaken(sheet)];
  const [first] = taken;
  if (first === undefined) return heatValueChanged(sheet) ? 'The heat value was changed since the reading before; by how many steps is not noted at both readings.' : undefined;
  const steps = first[1];
  const even = taken.length === sheet.plugs.length && taken.every(([, other]) => other === steps);
  const size = (n: number): string => `${numberWords(Math.abs(n))} ${Math.abs(n) === 1 ? 'step' : 'steps'} ${n > 0 ? 'hotter' : 'colder'}`;
  const words = even
    ? `every plug stands ${size(steps)} than at the reading before`
    : `since the reading before: ${taken.map(([key, n]) => `cylinder ${key} ${size(n)}`).join(', ')}`;
  const judged = Math.abs(steps) > 1 ? 'More than one step at once cannot be judged step by step.' : 'This reading judges that step; no second one follows from it.';
  return `${sentenceStart(words)}. ${judged}`;
}

/** The reading before does not change while this one is being entered. */
const concluded = new WeakMap<Knowledge, { readonly key: string; readonly conclusion: Conclusion }>();

function concludedBefore(before: ReadingSheet, knowledge: Knowledge): Conclusion {
  const key = JSON.stringify(before);
  const known = concluded.get(knowledge);
  if (known?.key === key) return known.conclusion;
  const conclusion = conclude(before, knowledge);
  concluded.set(knowledge, { key, conclusion });
  return conclusion;
}

/**
 * This reading against the one before on its sheet: every plug, every cure, the heat step, and what limits the comparison.
 * @returns undefined when the sheet tells of no reading before
 */
export function followUp(sheet: ReadingSheet, now: Conclusion, knowledge: Knowledge): FollowUp | undefined {
  const before = earlierSheet(sheet);
  if (before === undefined) return undefined;
  const then = concludedBefore(before, knowledge);
  const done = sheet.since?.done ?? [];
  const changes = changesOf(sheet, then, now, knowledge);
  const symptoms = symptomChanges(sheet);
  const heat = heatLine(sheet);
  return {
    before: { ...(before.date !== undefined && { date: before.date }), ...(before.title !== undefined && { title: before.title }) },
    summary: summaryOf(changes),
    plugs: changes.map(({ faultsBefore: _, faultsNow: __, ...change }) => change),
    symptoms,
    cures: curesFollowed({ knowledge, before: then, now, changes, symptoms, done }),
    ...(heat !== undefined && { heat }),
    doubts: [...limitsOf(sheet), ...unknownCures({ before: then, done })],
  };
}
