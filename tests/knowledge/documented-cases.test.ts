import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import { findingsOf, SCORED, share, verdictMisses, type Case } from './documented.ts';

const plain = (words: string): string[] =>
  words
    .toLowerCase()
    .replace(/[^a-z ]/g, ' ')
    .split(/\s+/)
    .filter((w) => w.length > 2)
    .map((w) => w.replace(/(ing|ed|s)$/, ''));
/** Two phrases name the same cause when all the words of the shorter stand in the longer. */
const sameWords = (a: string, b: string): boolean => {
  const [short, long] = [plain(a), plain(b)].sort((x, y) => x.length - y.length) as [string[], string[]];
  return short.length > 0 && short.every((word) => long.includes(word));
};

function causeNamed({ expect: { causeWords = [] } }: Case, findings: Findings): boolean {
  const top = [...findings.plugs.map((plug) => plug.causes.slice(0, 3)), findings.engine.causes.slice(0, 3)].flat();
  const names = top.flatMap(({ id }) => {
    const cause = KNOWLEDGE.causes.find((c) => c.id === id.split(' @ ')[0]);
    return cause ? [cause.name, ...cause.synonyms] : [];
  });
  return causeWords.some((words) => names.some((name) => sameWords(words, name)));
}

const scored = SCORED.map((c) => ({ c, findings: findingsOf(c) }));

describe('documented cases', () => {
  it('get a verdict that their source allows, in at least nine of ten', () => {
    const misses = scored.flatMap(({ c, findings }) => {
      const found = verdictMisses(c, findings);
      return found.length === 0 ? [] : [`${c.id}: ${found[0]}`];
    });
    console.log(
      `documented cases, verdicts as in the source: ${share(scored.length - misses.length, scored.length)}${misses.map((m) => `\n  missed ${m}`).join('')}`,
    );
    expect(scored.length - misses.length).toBeGreaterThanOrEqual(0.9 * scored.length);
  });

  it('get no heat step that their source forbids', () => {
    const wrong = scored
      .filter(({ c, findings }) => c.expect.heatAllowed !== undefined && !c.expect.heatAllowed.includes(findings.heat.step))
      .map(({ c }) => c.id);
    console.log(`documented cases, heat step allowed: ${share(scored.length - wrong.length, scored.length)}`);
    expect(wrong).toEqual([]);
  });

  it('are stopped where the source says that running on destroys the engine', () => {
    const due = scored.filter(({ c }) => c.expect.stopExpected === true);
    const missed = due.filter(({ findings }) => findings.stop.length === 0).map(({ c }) => c.id);
    console.log(`documented cases, expected stops: ${share(due.length - missed.length, due.length)}`);
    expect(due.length).toBeGreaterThan(0);
    expect(missed).toEqual([]);
  });

  it('often name among the three likeliest causes one that the source names', () => {
    const told = scored.filter(({ c }) => (c.expect.causeWords ?? []).length > 0);
    const named = told.filter(({ c, findings }) => causeNamed(c, findings));
    console.log(
      `documented cases, a cause of the source among the first three: ${share(named.length, told.length)}${told
        .filter((t) => !named.includes(t))
        .map(
          ({ c, findings }) =>
            `\n  missed ${c.id}: ${c.expect.causeWords?.join(', ')} | found ${[...new Set([...findings.plugs.flatMap((p) => p.causes.slice(0, 3)), ...findings.engine.causes.slice(0, 3)].map((x) => x.name))].join(', ')}`,
        )
        .join('')}`,
    );
    expect(named.length / told.length).toBeGreaterThan(0.5);
  });
});
