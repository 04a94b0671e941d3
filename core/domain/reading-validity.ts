import type { ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import type { SourceId } from '../knowledge/types.ts';
import { READING_QUESTIONS, READING_RULES, type Effect, type ReadingQuestion } from './reading-rules.ts';

/** One thing that makes a reading worth more or less, with its reason. */
export type ReadingNote = {
  readonly id: string;
  readonly effect: Effect;
  readonly words: string;
  readonly because: string;
  readonly source: readonly SourceId[];
  readonly remedy?: string;
};

/** How far the set can answer one question. `cannot tell yet`: something that decides it was not noted. */
export type Standing = 'good' | 'with care' | 'says little' | 'cannot tell yet';
export type ReadingAnswer = { readonly question: ReadingQuestion; readonly standing: Standing; readonly notes: readonly ReadingNote[] };

const ORDER: readonly Effect[] = ['spoils', 'weakens', 'not known', 'bear in mind', 'supports'];

function standingOf(notes: readonly ReadingNote[]): Standing {
  const has = (effect: Effect): boolean => notes.some((note) => note.effect === effect);
  if (has('spoils')) return 'says little';
  if (has('not known')) return 'cannot tell yet';
  return has('weakens') ? 'with care' : 'good';
}

function notesFor(question: ReadingQuestion, sheet: ReadingSheet): readonly ReadingNote[] {
  const notes = READING_RULES.flatMap(({ holds, effects, ...rule }) => {
    const effect = effects[question];
    return effect !== undefined && holds(sheet) ? [{ ...rule, effect }] : [];
  });
  return ORDER.flatMap((effect) => notes.filter((note) => note.effect === effect));
}

/**
 * What these plugs, run in this way, can answer: worst news first, each with reason and source.
 * An engine with one plug has no neighbours, so that question is left out. Never throws; what is not noted counts as not known.
 */
export function readingValidity(sheet: ReadingSheet): readonly ReadingAnswer[] {
  const alone = sheet.engine.cylinders * (sheet.engine.plugsPerCylinder ?? 1) === 1;
  return READING_QUESTIONS.filter((question) => !(alone && question === 'between cylinders')).map((question) => {
    const notes = notesFor(question, sheet);
    return { question, standing: standingOf(notes), notes };
  });
}
