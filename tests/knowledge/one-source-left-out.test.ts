import { describe, expect, it } from 'vitest';
import { conclude } from '../../core/inference/conclude.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Knowledge, SourceId } from '../../core/knowledge/types.ts';
import { SCORED, share, sheetOf, verdictMisses } from './documented.ts';

/** A document that carries fewer lines alone than this cannot carry a judgement; leaving it out is not tried. */
const CARRIES_MUCH = 20;
/** Most of all documented cases that may be lost with one document, in a hundred. */
const POINTS = 5;

type Grounded = { readonly source: SourceId | readonly SourceId[] };

/** The knowledge without the lines whose only support is this document. */
function leftOut(id: SourceId): Knowledge {
  const others = <T extends Grounded>(lines: readonly T[]): T[] => lines.filter(({ source }) => [source].flat().some((other) => other !== id));
  return {
    ...KNOWLEDGE,
    conditions: KNOWLEDGE.conditions.map((c) => ({ ...c, shows: others(c.shows), gives: others(c.gives) })),
    causes: KNOWLEDGE.causes.map((c) => ({ ...c, makes: others(c.makes), shows: others(c.shows), gives: others(c.gives), moved: others(c.moved) })),
  };
}

const lines = ({ conditions, causes }: Knowledge): number =>
  [...conditions.flatMap((c) => [c.shows, c.gives]), ...causes.flatMap((c) => [c.makes, c.shows, c.gives, c.moved])].reduce((n, list) => n + list.length, 0);

/** Cases whose verdicts are not those of their source. */
const missed = (knowledge: Knowledge): string[] =>
  SCORED.filter((c) => {
    const plugs = conclude(sheetOf(c), knowledge).judged.map(({ plug: { place }, judgement }) => ({ ...place, verdict: judgement.verdict }));
    return verdictMisses(c, { plugs }).length > 0;
  }).map(({ id }) => id);

const ALL = lines(KNOWLEDGE);
const DOCUMENTS = KNOWLEDGE.sources
  .map(({ id }) => ({ id, without: leftOut(id) }))
  .map((document) => ({ ...document, gone: ALL - lines(document.without) }))
  .filter(({ gone }) => gone >= CARRIES_MUCH);
const before = missed(KNOWLEDGE);

describe('with the lines of one document left out, the documented cases', () => {
  it.each(DOCUMENTS)('are judged nearly as often as their sources do without $id', ({ id, gone, without }) => {
    const after = missed(without);
    const lost = after.filter((one) => !before.includes(one));
    console.log(`without ${id} (${gone} lines): ${share(SCORED.length - after.length, SCORED.length)}${lost.length === 0 ? '' : `, lost ${lost.join(', ')}`}`);
    expect((100 * (after.length - before.length)) / SCORED.length).toBeLessThanOrEqual(POINTS);
  }, 60_000);

  it('are tried without every document that carries much', () => {
    expect(DOCUMENTS.length).toBeGreaterThan(10);
  });
});
