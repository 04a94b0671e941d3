import { COMMON_PRACTICE, FROM_MEMORY, OWN_LINE, type Knowledge } from '../../../core/knowledge/types.ts';
import { groundedLines, isNoDocument, type GroundedLine } from '../../../core/knowledge/lint/grounded-lines.ts';
import { sentenceStart } from '../../../core/domain/words.ts';
import type { Shelf } from '../../app/route.ts';
import { CURES_KEY, WELL_KEY } from './uses.ts';
import type { Text } from '../../text/index.ts';

/** Something that can be looked up. `group`: what it stands under in the list. `words`: all it can be found by, in small letters. */
export type Entry = { readonly shelf: Shelf; readonly id: string; readonly name: string; readonly group: string; readonly words: string };

const entry = (shelf: Shelf, id: string, name: string, group: string, ...more: readonly string[]): Entry =>
  ({ shelf, id, name, group, words: [name, group, ...more].join(' ').toLowerCase() });

/** The sources as entries, the two honest answers among them. */
function sourceEntries({ sources }: Knowledge, text: Text): Entry[] {
  const words = text.knowledge.sources;
  return [
    ...sources.map(({ id, title }) => entry('sources', id, title, id)),
    entry('sources', COMMON_PRACTICE, words.practice, ''), entry('sources', FROM_MEMORY, words.memory, ''),
  ];
}

/** The words of the tables under what they say, then what stands beside the lines. */
function wordEntries({ intro, strengths, priors, moves, words }: Text['knowledge']): Entry[] {
  const table = (said: Readonly<Record<string, string>>, group: string): Entry[] => Object.entries(said).map(([id, name]) => entry('words', id, name, group));
  return [
    ...table(strengths, intro.strengths), ...table(priors, intro.priors), ...table(moves, intro.moves),
    entry('words', CURES_KEY, words.cures, words.other, words.curesAbout), entry('words', WELL_KEY, words.well, words.other, words.wellAbout),
  ];
}

/** All that can be looked up, shelf by shelf, each shelf in the order of the knowledge. */
export function entriesOf(knowledge: Knowledge, text: Text, told: Text['told']): readonly Entry[] {
  const { conditions, causes, checks, stopRules, barsOnHotter, contradictions, cautions } = knowledge;
  const said = told.sentence;
  return [
    ...conditions.map(({ id, name, verdict, meaning, shows }) => (
      entry('looks', id, said(name), text.findings.verdicts[verdict], said(meaning), ...shows.map(({ is }) => is)))),
    ...causes.map(({ id, name, kind, synonyms, gives }) => (
      entry('causes', id, told.cause(id, name), text.knowledge.kinds[kind], ...synonyms.map(said), ...gives.map(({ symptom }) => symptom)))),
    ...checks.map(({ id, name, scope, how }) => entry('checks', id, told.check(id, name), text.knowledge.checks.where[scope], said(how))),
    ...stopRules.map(({ id, words, because }) => entry('stops', id, said(words), '', said(because))),
    ...barsOnHotter.map(({ id, sign, because, anyOf }) => (
      entry('bars', id, anyOf.map(text.knowledge.term).join('; '), said(sentenceStart(sign)), said(because)))),
    ...contradictions.map(({ id, words, because }) => entry('contradictions', id, said(words), '', said(because))),
    ...cautions.map(({ id, words }) => entry('cautions', id, said(words), '')),
    ...wordEntries(text.knowledge), ...sourceEntries(knowledge, text),
  ];
}

/** Entries that hold every word typed, those that have them in their name first. A word may be typed by its beginning. */
export function found(typed: string, entries: readonly Entry[]): readonly Entry[] {
  const wanted = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const holds = (text: string): boolean => wanted.every((word) => text.split(/[\s,.:;()]+/).some((each) => each.startsWith(word)));
  const all = entries.filter(({ words }) => holds(words));
  const named = all.filter(({ name }) => holds(name.toLowerCase()));
  return [...named, ...all.filter((each) => !named.includes(each))];
}

/** Every line that rests on a source, and every line it speaks against. */
export function restingOn(source: string, knowledge: Knowledge): { readonly lines: readonly GroundedLine[]; readonly disputed: readonly GroundedLine[] } {
  const lines = groundedLines(knowledge);
  return { lines: lines.filter(({ sources }) => sources.includes(source)), disputed: lines.filter(({ against }) => against.includes(source)) };
}

/** How many lines rest on what. A line with a document counts as documented, whatever else it names. */
export function grounding(knowledge: Knowledge): Readonly<Record<'lines' | 'documented' | 'practice' | 'memory' | 'own' | 'disputed', number>> {
  const lines = groundedLines(knowledge);
  const undocumented = lines.filter(({ sources }) => sources.every(isNoDocument));
  const onlyOn = (source: string): number => undocumented.filter(({ sources }) => sources[0] === source).length;
  const [practice, memory, own] = [onlyOn(COMMON_PRACTICE), onlyOn(FROM_MEMORY), onlyOn(OWN_LINE)];
  const disputed = lines.filter(({ against }) => against.length > 0).length;
  return { lines: lines.length, documented: lines.length - undocumented.length, practice, memory, own, disputed };
}
