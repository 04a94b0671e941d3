import { describe, expect, it } from 'vitest';
import { conclude } from '../../core/inference/conclude.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Knowledge, SourceId } from '../../core/knowledge/types.ts';
import { SCORED, share, sheetOf, verdictMisses, type Case } from './documented.ts';

/**
 * Whether the documented cases are met only because the knowledge was copied from their own documents: every line whose only support is a document is
 * taken out, and that document's cases are judged again. Most cases come from documents that no line rests on; for these nothing can be left out.
 */
const DOCUMENTS: readonly (readonly [title: RegExp, ids: readonly SourceId[]])[] = [
  [/^FAA-H-8083-32/, ['S01', 'S02', 'S03']],
  [/^FAA safety library/, ['S07']],
  [/^TM 10-3930-633-12/, ['S17']],
  [/^TM 10-3930-653-14/, ['S16']],
];
const POINTS = 5;

type Grounded = { readonly source: SourceId | readonly SourceId[] };

/** The knowledge without the lines that rest on these sources alone. */
function leftOut(ids: readonly SourceId[]): Knowledge {
  const others = <T extends Grounded>(lines: readonly T[]): T[] => lines.filter(({ source }) => [source].flat().some((id) => !ids.includes(id)));
  return {
    ...KNOWLEDGE,
    conditions: KNOWLEDGE.conditions.map((c) => ({ ...c, shows: others(c.shows), gives: others(c.gives) })),
    causes: KNOWLEDGE.causes.map((c) => ({ ...c, makes: others(c.makes), shows: others(c.shows), gives: others(c.gives), moved: others(c.moved) })),
  };
}

const lines = ({ conditions, causes }: Knowledge): number =>
  [...conditions.flatMap((c) => [c.shows, c.gives]), ...causes.flatMap((c) => [c.makes, c.shows, c.gives, c.moved])].reduce((n, list) => n + list.length, 0);

/** Cases whose verdicts are not those of their source. */
const missed = (cases: readonly Case[], knowledge: Knowledge): string[] =>
  cases
    .filter((c) => {
      const plugs = conclude(sheetOf(c), knowledge).judged.map(({ plug: { place }, judgement }) => ({ ...place, verdict: judgement.verdict }));
      return verdictMisses(c, { plugs }).length > 0;
    })
    .map(({ id }) => id);

describe('with the lines of one source left out', () => {
  it('the cases of that very source are judged nearly as often as the source does', () => {
    const runs = DOCUMENTS.map(([title, ids]) => {
      const own = SCORED.filter(({ source }) => title.test(source.title));
      const without = leftOut(ids);
      return { ids, own, gone: lines(KNOWLEDGE) - lines(without), before: missed(own, KNOWLEDGE), after: missed(own, without) };
    });
    for (const { ids, own, gone, before, after } of runs)
      console.log(`without ${ids.join(', ')} (${gone} lines): ${share(own.length - after.length, own.length)} of its cases, with it ${own.length - before.length}${after.map((id) => `\n  missed ${id}`).join('')}`);
    const cases = runs.reduce((n, { own }) => n + own.length, 0);
    const lost = runs.reduce((n, { before, after }) => n + after.length - before.length, 0);
    const misses = missed(SCORED, KNOWLEDGE).length;
    console.log(`each case without its own source: ${share(SCORED.length - misses - lost, SCORED.length)}, with it ${share(SCORED.length - misses, SCORED.length)}; ${lost} of the ${cases} cases with a source of their own lost`);
    expect(runs.every(({ own, gone }) => own.length > 0 && gone > 0)).toBe(true);
    expect((100 * lost) / SCORED.length).toBeLessThanOrEqual(POINTS);
  }, 120_000);
});
