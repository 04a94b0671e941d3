import type { Conditions, ReadingSheet } from '../../shared/formats/reading-sheet.v1.ts';
import { readingValidity } from '../domain/reading-validity.ts';
import { freshPlugs } from './treated.ts';

const RUN_WORDS = { fuel: 'fuel', duty: 'running', stop: 'how it was stopped' } as const;

function runOtherwise(before: Conditions, now: Conditions): string[] {
  const differing = (Object.keys(RUN_WORDS) as (keyof typeof RUN_WORDS)[]).flatMap((field) => {
    const [was, is] = [before[field], now[field]];
    return was === undefined || is === undefined || was === is ? [] : [`${RUN_WORDS[field]}: ${was}, now ${is}`];
  });
  return differing.length === 0 ? [] : [`The two readings follow different running (${differing.join('; ')}): a difference may come from that.`];
}

/** What makes this reading by itself worth little, such as new plugs that had no time to colour. */
const spoilt = (sheet: ReadingSheet): string[] =>
  [...new Set(readingValidity(sheet).flatMap(({ notes }) => notes.filter(({ effect, id }) => effect === 'spoils' && id !== 'few-km').map(({ words }) => words)))];

function plugsCarryOver(sheet: ReadingSheet): string[] {
  const worked = (sheet.since?.done ?? []).length > 0;
  return worked && !freshPlugs(sheet) ? ['The plugs are not noted as cleaned or renewed: part of what is seen may be from before the work.'] : [];
}

/** What limits the comparison of this reading with the one before; empty when they may well be compared. */
export function limitsOf(sheet: ReadingSheet): string[] {
  const { since, date } = sheet;
  if (since === undefined) return [];
  const backwards = date !== undefined && since.reading.date !== undefined && since.reading.date.slice(0, 10) > date.slice(0, 10);
  return [
    ...(backwards ? ['What stands here as the reading before is dated later than this one.'] : []),
    ...runOtherwise(since.reading.conditions ?? {}, sheet.conditions ?? {}),
    ...plugsCarryOver(sheet),
    ...spoilt(sheet),
  ];
}
