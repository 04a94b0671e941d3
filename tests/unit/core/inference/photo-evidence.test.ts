import { describe, expect, it } from 'vitest';
import { diagnose } from '../../../../core/inference/diagnose.ts';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { solverFor } from '../../../../core/inference/posterior.ts';
import { HEALTHY_PLUG } from '../../../../core/knowledge/findings.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { PRIORS, STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import { parseReadingSheet, type ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

type Plug = ReadingSheet['plugs'][number];
const sheet = (plug: Omit<Plug, 'cylinder'>): ReadingSheet => ({
  format: 'corenose.reading-sheet', version: 1, engine: { use: 'road', cylinders: 1 }, plugs: [{ cylinder: 1, ...plug }],
});
const kb = knowledge(
  [condition('soot', { leak: 0, shows: [shows('deposit', 'dry soot', 'usually')] })],
  [cause('rich', { scope: 'cylinder', makes: [makes('soot', 'often')] })],
);
function believed(plug: Omit<Plug, 'cylinder'>): number {
  const evidence = evidenceOf(sheet(plug));
  const network = networkFor(kb, evidence);
  return solverFor(network)(evidence).belief(network.local.get(1)![0]!);
}
const soot = (belief: number): Plug['photo'] => [{ facet: 'deposit', value: 'dry soot', belief }];
const problems = (photo: unknown): string[] => {
  const parsed = parseReadingSheet({ ...sheet({}), plugs: [{ cylinder: 1, photo }] });
  return parsed.ok ? [] : parsed.error.map(({ path, message }) => `${path}: ${message}`);
};
const doubtsOf = (plug: Omit<Plug, 'cylinder'>): string[] => diagnose(sheet(plug), { knowledge: KNOWLEDGE, digest: 'test' }).plugs[0]!.doubts;

describe('what a photo shows', () => {
  it('weighs as virtual evidence: the odds of the cause times the ratio of two mixtures, worked by hand', () => {
    // Pearl, Probabilistic Reasoning in Intelligent Systems, 1988, section 2.2.2.
    const values = Object.values(HEALTHY_PLUG.deposit);
    const healthy = HEALTHY_PLUG.deposit['dry soot'] / values.reduce((a, b) => a + b, 0);
    const belief = 0.8;
    const read = (p: number): number => belief * p + (1 - belief) / values.length;
    const there = STRENGTHS.often * read(STRENGTHS.usually + (1 - STRENGTHS.usually) * healthy) + (1 - STRENGTHS.often) * read(healthy);
    const odds = (PRIORS.common / (1 - PRIORS.common)) * (there / read(healthy));
    expect(believed({ photo: soot(belief) })).toBeCloseTo(odds / (1 + odds), 10);
  });

  it('says nothing at belief 0, the same as a note at belief 1, and more the surer it is', () => {
    expect(believed({ photo: soot(0) })).toBeCloseTo(PRIORS.common, 12);
    expect(believed({ photo: soot(1) })).toBeCloseTo(believed({ tip: { deposit: 'dry soot' } }), 12);
    const rising = [0, 0.2, 0.4, 0.6, 0.8, 1].map((belief) => believed({ photo: soot(belief) }));
    expect([...rising].sort((a, b) => a - b)).toEqual(rising);
  });

  it('is not counted again beside the same facet noted for sure, and sharpens one noted with doubt', () => {
    const sure = believed({ tip: { deposit: 'dry soot' } });
    expect(believed({ tip: { deposit: 'dry soot' }, photo: soot(0.9) })).toBe(sure);
    const doubted = believed({ tip: { deposit: 'dry soot', unsure: ['deposit'] } });
    const sharpened = believed({ tip: { deposit: 'dry soot', unsure: ['deposit'] }, photo: soot(0.9) });
    expect(sharpened).toBeGreaterThan(doubted);
    expect(sharpened).toBeLessThan(sure);
  });

  it('is told with its share, and against a note that says otherwise', () => {
    expect(doubtsOf({ photo: soot(0.7) })).toContain('Measured on a photo, counted for 70 %: deposit dry soot (photo).');
    expect(doubtsOf({ tip: { deposit: 'light dusting' }, photo: soot(0.7) })).toContain('The photo shows deposit dry soot, noted is light dusting.');
  });

  it('stops the engine where it is likelier than not, and not on a guess', () => {
    const stops = (belief: number): number =>
      diagnose(sheet({ photo: [{ facet: 'centreElectrode', value: 'melted', belief }] }), { knowledge: KNOWLEDGE, digest: 'test' }).stop.length;
    expect([stops(0.9), stops(0.3)]).toEqual([1, 0]);
  });
});

describe('a sheet with what photos show', () => {
  it('takes a value of the facet with a belief, once for each facet', () => {
    expect(problems(soot(0.5))).toEqual([]);
    expect(problems([...soot(0.5)!, ...soot(0.6)!])[0]).toBe('plugs.0.photo.1.facet: "deposit" stands here twice; give one value for each facet');
    expect(problems([{ facet: 'deposit', value: 'white', belief: 0.5 }])[0]).toMatch(/^plugs\.0\.photo\.0\.value: "white" is not allowed; allowed are none, light dusting/);
    expect(problems([{ facet: 'colour', value: 'white', belief: 0.5 }])[0]).toMatch(/^plugs\.0\.photo\.0\.facet: not a facet; allowed are noseColour/);
    expect(problems([{ facet: 'deposit', value: 'dry soot', belief: 1.2 }])[0]).toMatch(/^plugs\.0\.photo\.0\.belief: 1\.2 is too large/);
    expect(problems([{ facet: 'deposit', value: 'dry soot' }])[0]).toMatch(/^plugs\.0\.photo\.0\.belief: missing/);
  });
});
