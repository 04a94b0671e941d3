import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { numberWords } from '../../core/domain/words.ts';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Findings } from '../../shared/formats/findings.v1.ts';
import { ROOT } from '../run/vitest.ts';
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

const firstThree = (findings: Findings): Findings['engine']['causes'] =>
  [...findings.plugs.map((plug) => plug.causes.slice(0, 3)), findings.engine.causes.slice(0, 3)].flat();

function causeNamed({ expect: { causeWords = [] } }: Case, findings: Findings): boolean {
  const names = firstThree(findings).flatMap(({ id }) => {
    const cause = KNOWLEDGE.causes.find((c) => c.id === id.split(' @ ')[0]);
    return cause ? [cause.name, ...cause.synonyms] : [];
  });
  return causeWords.some((words) => names.some((name) => sameWords(words, name)));
}

/** Cases that are missed, and why it is right to miss them. One that is met again must leave the list. */
const RIGHT_TO_MISS: { readonly verdict: Readonly<Record<string, string>>; readonly cause: Readonly<Record<string, string>> } = {
  verdict: {
    'documented-030': 'aluminium specks alone: this source says pre-ignition, the source of that line of knowledge (S59) says detonation; both stop the engine',
  },
  cause: {
    'documented-020': 'the source names what the glaze is made of, not what made it; sudden load on soft deposits is what melts them',
    'documented-030': 'the source names the event, pre-ignition; the program names what brings knock',
    'documented-033': 'nothing on the sheet speaks of the plug that was fitted; use, mixture and ignition stand first in every published list for such a set',
    'documented-066': 'the source only says that the fault lies elsewhere, and so do the causes found',
  },
};

const scored = SCORED.map((c) => ({ c, findings: findingsOf(c) }));
const wrongVerdicts = scored.flatMap(({ c, findings }) => verdictMisses(c, findings).slice(0, 1).map((miss) => ({ id: c.id, miss })));
const wrongSteps = scored
  .filter(({ c, findings }) => c.expect.heatAllowed !== undefined && !c.expect.heatAllowed.includes(findings.heat.step))
  .map(({ c }) => c.id);
const stopsDue = scored.filter(({ c }) => c.expect.stopExpected === true);
const stopsMissed = stopsDue.filter(({ findings }) => findings.stop.length === 0).map(({ c }) => c.id);
const withCause = scored.filter(({ c }) => (c.expect.causeWords ?? []).length > 0);
const wrongCauses = withCause
  .filter(({ c, findings }) => !causeNamed(c, findings))
  .map(({ c, findings }) => ({
    id: c.id, miss: `${c.expect.causeWords?.join(', ')} | found ${[...new Set(firstThree(findings).map(({ name }) => name))].join(', ')}`,
  }));

type Miss = { readonly id: string; readonly miss: string };
const told = (misses: readonly Miss[], reasons: Readonly<Record<string, string>>): string =>
  misses.map(({ id, miss }) => `\n  missed ${id}: ${miss}${reasons[id] === undefined ? '' : `\n    right to miss: ${reasons[id]}`}`).join('');
const met = (all: number, misses: readonly unknown[]): string => share(all - misses.length, all);

describe('documented cases', () => {
  it('get a verdict that their source allows, in at least 92 of a hundred', () => {
    console.log(`documented cases, verdicts as in the source: ${met(scored.length, wrongVerdicts)}${told(wrongVerdicts, RIGHT_TO_MISS.verdict)}`);
    expect(scored.length - wrongVerdicts.length).toBeGreaterThanOrEqual(0.92 * scored.length);
  });

  it('get no heat step that their source forbids', () => {
    console.log(`documented cases, heat step allowed: ${met(scored.length, wrongSteps)}`);
    expect(wrongSteps).toEqual([]);
  });

  it('are stopped where the source says that running on destroys the engine', () => {
    console.log(`documented cases, expected stops: ${met(stopsDue.length, stopsMissed)}`);
    expect(stopsDue.length).toBeGreaterThan(0);
    expect(stopsMissed).toEqual([]);
  });

  it('have a cause of their source among the three likeliest, in at least 85 of a hundred', () => {
    console.log(`documented cases, a cause of the source among the first three: ${met(withCause.length, wrongCauses)}${told(wrongCauses, RIGHT_TO_MISS.cause)}`);
    expect(withCause.length - wrongCauses.length).toBeGreaterThanOrEqual(0.85 * withCause.length);
  });

  it('give no reason for a miss that is met', () => {
    const stale = (misses: readonly Miss[], reasons: Readonly<Record<string, string>>): string[] =>
      Object.keys(reasons).filter((id) => misses.every((m) => m.id !== id));
    expect([...stale(wrongVerdicts, RIGHT_TO_MISS.verdict), ...stale(wrongCauses, RIGHT_TO_MISS.cause)]).toEqual([]);
  });

  it('stand in the README with these very figures', () => {
    const readme = readFileSync(join(ROOT, 'README.md'), 'utf8').replace(/\s+/g, ' ');
    const said = /Of \d+ documented cases.*?stops fire/.exec(readme)?.[0] ?? '';
    const kinds = 'with a stated verdict (military and aviation manuals, accident reports, confirmed repairs)';
    expect(said).toBe(
      `Of ${scored.length} documented cases ${kinds}, ${scored.length - wrongVerdicts.length} get a verdict their source allows; ` +
        `${withCause.length - wrongCauses.length} of the ${withCause.length} whose source names a cause have it among the three likeliest; ` +
        `${wrongSteps.length === 0 ? 'no' : wrongSteps.length} heat step is one the source forbids; all ${numberWords(stopsDue.length)} expected stops fire`,
    );
  });
});
