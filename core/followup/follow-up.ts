import type { FollowUp } from '../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import type { PlugKey } from '../domain/plugs.ts';
import { conclude, type Conclusion, type Judged } from '../inference/conclude.ts';
import type { Knowledge } from '../knowledge/types.ts';
import { changeSentence } from './change-sentence.ts';
import { limitsOf } from './comparable.ts';
import { curesFollowed, marksOf, unknownCures, type Changed } from './cure-outcome.ts';
import { curesOn } from './cures-done.ts';
import { earlierSheet } from './earlier-reading.ts';
import { heatStepsTaken, heatStepSentence } from './heat-step-taken.ts';
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
  const heat = heatStepSentence(sheet);
  return {
    before: { ...(before.date !== undefined && { date: before.date }), ...(before.title !== undefined && { title: before.title }) },
    summary: changeSentence(changes),
    plugs: changes.map(({ faultsBefore: _, faultsNow: __, ...change }) => change),
    symptoms,
    cures: curesFollowed({ knowledge, before: then, now, changes, symptoms, done }),
    ...(heat !== undefined && { heat }),
    doubts: [...limitsOf(sheet), ...unknownCures({ before: then, done })],
  };
}
