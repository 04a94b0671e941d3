import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor, type Instance } from '../../../../core/inference/network.ts';
import { decisionEntropy, nextChecks, worldsOf, worth, type Question, type World } from '../../../../core/inference/next-check.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { CYLINDER_FINDINGS, HEALTHY_CYLINDER, HEALTHY_PLUG } from '../../../../core/knowledge/findings.ts';
import { PRIORS, STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import type { Cause, Check, Knowledge } from '../../../../core/knowledge/types.ts';
import type { NextCheck } from '../../../../shared/formats/findings.v1.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

const compression: Check = {
  id: 'compression',
  name: 'Measure the compression',
  scope: 'cylinder',
  minutes: 10,
  tells: { finding: 'compression' },
  how: 'Measure.',
  cautions: [],
  because: 'made up',
  source: 'common practice',
};
/** A look for one cause, found almost always where it is and hardly ever where it is not. */
const look = (id: string, ...looksFor: string[]): Check => ({ ...compression, id, name: id, how: 'Look.', tells: { looksFor, finds: 'almost always', falselyFinds: 'hardly ever' } });

const lowCompression: Cause['shows'] = [{ finding: 'compression', is: 'low', strength: 'usually', because: 'made up', source: 'common practice' }];
const [rings, guides, seal] = [cause('rings', { name: 'Worn rings', shows: lowCompression }), cause('guides', { name: 'Worn guides' }), cause('seal', { cure: 'cure guides' })];
const coil = cause('coil', { name: 'Coil weak', part: 'coil' });

const at = (one: Cause): Instance => ({ id: one.id, cause: one, group: '', cylinders: [1], plugs: ['1'], prior: 0.1, moves: [] });
const world = (probability: number, ...causes: readonly Cause[]): World => ({ causes: causes.map(at), probability });
const ask = (parts: Partial<Question>, sheet: Partial<ReadingSheet> = {}): NextCheck[] => nextChecks({
  checks: [compression], worlds: [world(0.5, rings), world(0.5, guides)], answers: () => true, cylinder: 1, evidence: evidenceOf(sheetOf(sheet)), scope: 'cylinder', ...parts,
});
const idsOf = (checks: readonly NextCheck[]): string[] => checks.map(({ id }) => id);

const entropy = (ps: readonly number[]): number => ps.reduce((h, p) => (p > 0 ? h - p * Math.log2(p) : h), 0);

describe('what a check tells', () => {
  it('is what the definition of mutual information says, of a finding with several values', () => {
    // Shannon: I = H(decision) - Σ P(outcome) H(decision | outcome), summed here straight from the definition.
    const worlds = [world(0.5, rings), world(0.3, guides), world(0.15), world(0.05, rings, guides)];
    const healthy: Readonly<Record<string, number>> = HEALTHY_CYLINDER.compression;
    const chance = ({ causes }: World, value: string): number => {
      const rest = (healthy[value] ?? 0) / 100;
      return causes.some((i) => i.cause.id === 'rings') ? (1 - STRENGTHS.usually) * rest + (value === 'low' ? STRENGTHS.usually : 0) : rest;
    };
    const after = CYLINDER_FINDINGS.compression.reduce((sum, value) => {
      const joint = worlds.map((w) => w.probability * chance(w, value));
      const p = joint.reduce((a, b) => a + b, 0);
      return sum + p * entropy(joint.map((v) => v / p));
    }, 0);
    const [check] = ask({ worlds });
    expect(check?.gainBits).toBe(Math.round(1000 * (entropy([0.5, 0.3, 0.15, 0.05]) - after)) / 1000);
  });

  it('is one bit less the doubt of a noisy look, for two like chances', () => {
    // Binary channel: finds 0.9, falsely finds 0.015. I = H((0.9 + 0.015) / 2) - (H(0.9) + H(0.015)) / 2.
    const binary = (p: number): number => entropy([p, 1 - p]);
    const [check] = ask({ checks: [look('look', 'rings')] });
    expect(check?.gainBits).toBeCloseTo(binary(0.4575) - (binary(0.9) + binary(0.015)) / 2, 3);
    expect(check?.why).toBe('Look. If found (46 %): worn rings; if not found (54 %): worn guides.');
  });

  it('counts causes with one cure as one decision, and leaves out what cannot have made the plug so', () => {
    const two = [world(0.5, guides), world(0.5, seal)];
    expect(ask({ checks: [look('look', 'seal')], worlds: two })).toEqual([]);
    expect(ask({ checks: [look('look', 'rings')], answers: ({ id }) => id !== 'rings' && id !== 'guides' })).toEqual([]);
    const blurred = [world(0.25, guides, rings), world(0.25, guides), world(0.25, coil, rings), world(0.25, coil)];
    const plain = [world(0.5, guides), world(0.5, coil)];
    const gain = (worlds: readonly World[]): number | undefined => ask({ checks: [look('look', 'guides')], worlds, answers: ({ id }) => id !== 'rings' })[0]?.gainBits;
    expect(gain(blurred)).toBe(gain(plain));
  });

  it('is nothing about which of two ways leads to the same cures, in whatever order they are named', () => {
    expect(ask({ checks: [look('look', 'seal')], worlds: [world(0.5, guides, rings), world(0.5, rings, seal)] })).toEqual([]);
  });

  it('is only about causes that can have made the plug so, also where it finds others', () => {
    // It finds rings as well as guides, yet the decision is between guides and coil: joint chances by hand, finds 0.9, falsely finds 0.015.
    const worlds = [world(0.5, guides), world(0.25, coil), world(0.25, coil, rings)];
    const [check] = ask({ checks: [look('look', 'guides', 'rings')], worlds, answers: ({ id }) => id !== 'rings' });
    const found = [0.5 * 0.9, 0.25 * 0.015 + 0.25 * 0.9];
    const missed = [0.5 - found[0]!, 0.5 - found[1]!];
    const [f, m] = [found[0]! + found[1]!, missed[0]! + missed[1]!];
    expect(check?.gainBits).toBeCloseTo(1 - f * entropy(found.map((p) => p / f)) - m * entropy(missed.map((p) => p / m)), 3);
    const [told] = ask({ checks: [look('look', 'guides')], worlds: [world(0.5, guides, rings), world(0.5, coil, rings)], answers: ({ id }) => id !== 'rings' });
    expect(told?.why).toBe('Look. If found (46 %): worn guides; if not found (54 %): coil weak.');
  });

  it('is weighed anew for another question about the same worlds', () => {
    const worlds = [world(0.5, guides), world(0.5, coil)];
    const asked = (answers: Question['answers']): number => ask({ checks: [look('look', 'guides')], worlds, answers }).length;
    expect([asked(() => true), asked(() => false), asked(({ id }) => id === 'guides'), asked(() => true)]).toEqual([1, 0, 1, 1]);
  });

  it('is not spoilt by a world that cannot be', () => {
    expect(ask({ worlds: [world(0.5, rings), world(0.5, guides), world(0, coil)] })).toEqual(ask({}));
  });

  it('leaves out outcomes that are hardly likely', () => {
    const weak = cause('coil', { name: 'Coil weak', shows: [{ ...lowCompression[0]!, finding: 'spark', is: 'weak' }] });
    const [check] = ask({ checks: [{ ...compression, tells: { finding: 'spark' } }], worlds: [world(0.5, weak), world(0.5, guides)] });
    // Of a sound spark 70 % look strong and 26 % present; none at all is met in 1 of 100.
    expect(check?.why).toMatch(/^Measure\. If strong or present \(62 %\): worn guides; if weak \(37 %\): coil weak\.$/);
  });

  it('says what each likely outcome points to, outcomes that point the same way in one', () => {
    const [check] = ask({});
    expect(check).toMatchObject({ id: 'compression', name: 'Measure the compression', cylinder: 1, effortMinutes: 10 });
    // low: (0.7 + 0.3 · 0.01 + 0.01) / 2 = 36 %; good and watch the rest, where 0.99 stands against 0.3 · 0.99.
    expect(check?.why).toBe('Measure. If good or watch (64 %): worn guides; if low (36 %): worn rings.');
  });

  it('points to nothing where no cause that matters is likely by then', () => {
    const [check] = ask({ checks: [look('look', 'rings')], worlds: [world(0.3, rings), world(0.1, guides), world(0.6)] });
    expect(check?.why).toBe('Look. If found (28 %): worn rings; if not found (72 %): nothing that stands out.');
    const [leaning] = ask({ checks: [look('look', 'rings')], worlds: [world(0.3, rings), world(0.2, guides), world(0.5)] });
    expect(leaning?.why).toMatch(/if not found \(\d+ %\): worn guides\.$/);
  });

  it('is offered too where it leaves the same cause worth its cure or short of it', () => {
    // Found 0.9 · 0.68 + 0.015 · 0.32 = 62 %, and then the rings stand at 99 %; not found they are left 0.068 / 0.383 = 18 %, under one in four.
    const [check] = ask({ checks: [look('look', 'rings')], worlds: [world(0.68, rings), world(0.32)] });
    expect(check?.why).toBe('Look. If found (62 %): worn rings; if not found (38 %): worn rings, though less likely.');
  });

  it('points to the cause that is first by name where two are as likely', () => {
    for (const two of [[rings, guides], [guides, rings]]) {
      const [check] = ask({ checks: [look('look', 'coil')], worlds: [world(0.5, coil), ...two.map((one) => world(0.25, one))] });
      expect(check?.why).toMatch(/not found \(\d+ %\): worn guides\.$/);
    }
  });
});

describe('a check that is not offered', () => {
  it('is one whose likely outcomes all point the same way, or one that tells next to nothing', () => {
    expect(ask({ checks: [look('look', 'seal')] })).toEqual([]);
    expect(ask({ worlds: [world(0.95, rings), world(0.05)] })).toEqual([]);
    expect(ask({ worlds: [world(1, rings)] })).toEqual([]);
    expect(ask({ checks: [{ ...look('look', 'rings'), tells: { looksFor: ['rings'], finds: 'often', falselyFinds: 'often' } }] })).toEqual([]);
    expect(ask({ worlds: [world(0.5, guides), world(0.5)], checks: [{ ...compression, tells: { finding: 'spark' } }] })).toEqual([]);
  });

  it('is one of the other scope: of the engine, or of a cylinder', () => {
    const engineWide: Check = { ...look('look', 'rings'), scope: 'engine' };
    expect(ask({ checks: [engineWide] })).toEqual([]);
    const [asked, ...none] = ask({ checks: [compression, engineWide], scope: 'engine' });
    expect(asked).toMatchObject({ id: 'look' });
    expect(asked).not.toHaveProperty('cylinder');
    expect(none).toEqual([]);
  });

  it('is one that was made on this cylinder, not one made on another', () => {
    expect(ask({}, { cylinderChecks: [{ cylinder: 1, compressionKPa: 1200 }] })).toEqual([]);
    expect(idsOf(ask({}, { cylinderChecks: [{ cylinder: 2, compressionKPa: 1200 }, { cylinder: 1, spark: 'weak' }] }))).toEqual(['compression']);
  });

  it('is a look at what was noted of every plug that was read', () => {
    const reads: Check = { ...look('look', 'rings'), reads: ['deposit', 'noseColour'] };
    const noted = (...tips: NonNullable<ReadingSheet['plugs'][number]['tip']>[]): string[] =>
      idsOf(ask({ checks: [reads] }, { plugs: tips.map((tip, i) => ({ cylinder: i + 1, tip })) }));
    expect(noted({ deposit: 'none' }, { noseColour: 'white' })).toEqual([]);
    expect(noted({ deposit: 'none', specks: 'none' })).toEqual([]);
    expect(noted({ deposit: 'none' }, {})).toEqual([]);
    expect(noted({ deposit: 'none' }, { specks: 'none' })).toEqual(['look']);
    expect(noted({})).toEqual(['look']);
    expect(idsOf(ask({ checks: [{ ...reads, reads: [] }] }, { plugs: [{ cylinder: 1, tip: { deposit: 'none' } }] }))).toEqual(['look']);
  });

  it('is a swap or a comparison on an engine with one cylinder, and what its part is lacking for', () => {
    const swap: Check = { ...compression, id: 'swap', tells: { finding: 'swap coil' } };
    const worlds = [world(0.5, coil), world(0.5, rings)];
    const one = { engine: { use: 'road', cylinders: 1 } } as const;
    expect([idsOf(ask({ checks: [swap], worlds })), idsOf(ask({ checks: [swap], worlds }, one))]).toEqual([['swap'], []]);
    expect(idsOf(ask({}, one))).toEqual(['compression']);
    expect(idsOf(ask({ checks: [look('look', 'rings')] }, one))).toEqual(['look']);
    expect(ask({ checks: [{ ...compression, needs: { cycle: 'two-stroke' } }] })).toEqual([]);
    for (const finding of ['swap plug', 'swap lead', 'swap injector', 'speedDropWhenCut', 'exhaustTemperature'] as const) {
      const part = finding.startsWith('swap') ? finding.slice(5) as 'plug' | 'lead' | 'injector' : undefined;
      const shown: Cause['shows'] = finding === 'speedDropWhenCut' ? [{ ...lowCompression[0]!, finding, is: 'none' }]
        : finding === 'exhaustTemperature' ? [{ ...lowCompression[0]!, finding, is: 'colder' }] : [];
      const telling = [world(0.5, cause('told', { ...(part && { part }), shows: shown })), world(0.5, guides)];
      const check: Check = { ...compression, tells: { finding } };
      expect([ask({ checks: [check], worlds: telling }).length, ask({ checks: [check], worlds: telling }, one).length]).toEqual([1, 0]);
    }
  });
});

describe('the order of the checks', () => {
  it('is by what they tell a minute, five more counted for fetching the tool; then by id', () => {
    const quick: Check = { ...look('b', 'rings'), minutes: 5 };
    const slow: Check = { ...look('c', 'rings'), minutes: 60 };
    const all = [slow, compression, quick, { ...quick, id: 'a' }];
    for (const checks of [all, all.toReversed()]) expect(idsOf(ask({ checks }))).toEqual(['a', 'b', 'compression', 'c']);
    expect(worth({ gainBits: 0.6, effortMinutes: 10 })).toBeCloseTo(0.04, 12);
  });

  it('ends with the fourth', () => {
    expect(idsOf(ask({ checks: ['e', 'd', 'c', 'b', 'a'].map((id) => look(id, 'rings')) }))).toEqual(['a', 'b', 'c', 'd']);
  });
});

describe('the entropy of a decision', () => {
  it('between two like chances is one bit, and of what never happens nothing', () => {
    const one = { probability: 0.25, decision: 1 };
    expect(decisionEntropy([{ probability: 0.5, decision: 0 }, one, one, { probability: 0, decision: 2 }])).toBeCloseTo(1, 12);
    expect(decisionEntropy([0, 1, 2, 3].map((decision) => ({ probability: 0.25, decision })))).toBeCloseTo(2, 12);
  });
});

describe('the likely states of a cylinder', () => {
  const oily = (cylinders: number): Partial<ReadingSheet> => ({
    engine: { use: 'road', cylinders }, plugs: Array.from({ length: cylinders }, (_, i) => ({ cylinder: i + 1, tip: { deposit: 'wet oil' as const } })),
  });
  const oil = condition('oil', { leak: 0, verdict: 'oil fouling', shows: [shows('deposit', 'wet oil', 'almost always')] });
  const local = (id: string): Cause => cause(id, { scope: 'cylinder', makes: [makes('oil', 'usually')] });
  const solve = (kb: Knowledge, sheet: Partial<ReadingSheet>) => {
    const evidence = evidenceOf(sheetOf(sheet));
    return solverFor(networkFor(kb, evidence))(evidence);
  };
  const chance = (worlds: readonly World[], ...ids: string[]): number =>
    worlds.find(({ causes }) => causes.map(({ cause: { id } }) => id).sort().join() === ids.join())?.probability ?? 0;

  it('weigh as Bayes’ rule says, worked by hand for two causes of one plug, the likeliest first', () => {
    const healthy = Object.values(HEALTHY_PLUG.deposit).reduce((a, b) => a + b, 0);
    const rest = HEALTHY_PLUG.deposit['wet oil'] / healthy;
    const seen = (made: number): number => made * (0.9 + 0.1 * rest) + (1 - made) * rest;
    const p = PRIORS.common;
    const weights = { none: (1 - p) ** 2 * seen(0), one: p * (1 - p) * seen(0.7), both: p ** 2 * seen(0.91) };
    const all = weights.none + 2 * weights.one + weights.both;
    const worlds = worldsOf(solve(knowledge([oil], [local('guides'), local('rings')]), oily(1)), 1);
    expect(chance(worlds)).toBeCloseTo(weights.none / all, 9);
    expect(chance(worlds, 'guides')).toBeCloseTo(weights.one / all, 9);
    expect(chance(worlds, 'rings')).toBeCloseTo(weights.one / all, 9);
    expect(chance(worlds, 'guides', 'rings')).toBeCloseTo(weights.both / all, 9);
    expect(worlds.map(({ probability }) => probability)).toEqual(worlds.map(({ probability }) => probability).sort((a, b) => b - a));
  });

  it('hold every cause, shared or its own, as often as it is believed', () => {
    const kb = knowledge([oil], [cause('breather', { makes: [makes('oil', 'often')] }), local('rings'), cause('unseen', { scope: 'plug' })]);
    const solution = solve(kb, { ...oily(3), plugs: oily(3).plugs!.map((plug) => (plug.cylinder === 3 ? { ...plug, tip: { deposit: 'none' } } : plug)) });
    for (const n of [1, 3]) {
      const worlds = worldsOf(solution, n);
      expect(worlds.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
      for (const instance of [...solution.network.shared, ...solution.network.local.get(n)!]) {
        const held = worlds.filter(({ causes }) => causes.includes(instance)).reduce((sum, { probability }) => sum + probability, 0);
        // Three causes at once on a cylinder are outside the bound of its worlds: that much they may differ.
        expect(held).toBeCloseTo(solution.belief(instance), 2);
      }
    }
  });
});
