import { describe, expect, it } from 'vitest';
import { markOf, plugFit, reportProbability, restProbability } from '../../../../core/inference/appearance.ts';
import { evidenceOf, type PlugEvidence } from '../../../../core/inference/evidence.ts';
import { HEALTHY_PLUG } from '../../../../core/knowledge/findings.ts';
import type { PlugReading } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { condition, shows } from './small-knowledge.ts';

const seenOn = (tip: PlugReading['tip']): PlugEvidence['seen'] => evidenceOf(sheetOf({ plugs: [{ cylinder: 1, tip }] })).cylinders[0]!.plugs[0]!.seen;
/** Share of a value on a sound plug. */
const sound = (finding: 'noseColour' | 'deposit', value: string): number => {
  const shares: Readonly<Record<string, number>> = HEALTHY_PLUG[finding];
  return shares[value]! / Object.values(shares).reduce((a, b) => a + b, 0);
};

// Strengths: usually 0.7, often 0.45, sometimes 0.2.
const soot = condition('soot', { shows: [shows('deposit', 'dry soot', 'usually'), shows('noseColour', 'black', 'often')] });
const oil = condition('oil', { shows: [shows('deposit', 'wet oil', 'usually'), shows('deposit', 'dry soot', 'sometimes')] });
const worn = condition('worn', {});
/** A list of its own each time: what was worked out for one is kept for it. */
const three = () => [soot, oil, worn];

describe('a finding that several things mark', () => {
  it('shows one of them in proportion to their marks', () => {
    // P = (1 - Q) · rest + Q · Σ report / Σ mark with Q = 1 - 0.3 · 0.1 (docs/inference.md), by hand.
    const q = 1 - 0.3 * 0.1;
    expect(reportProbability(0.01, [{ mark: 0.7, report: 0.7 }, { mark: 0.9, report: 0.2 }])).toBeCloseTo((1 - q) * 0.01 + q * (0.9 / 1.6), 12);
  });

  it('looks as on a sound part where nothing marks it', () => {
    expect(reportProbability(0.01, [])).toBe(0.01);
    expect(reportProbability(0.01, [{ mark: 0, report: 0 }])).toBe(0.01);
  });
});

describe('a report on a sound part', () => {
  it('has the share of the value among the weights, whatever they sum to', () => {
    expect(restProbability([0, 1, 0], [6, 3, 1])).toBeCloseTo(0.3, 12);
    expect(restProbability([0.5, 0.5, 0], [6, 3, 1])).toBeCloseTo(0.45, 12);
    expect(restProbability([1], [6, 3, 1])).toBeCloseTo(0.6, 12);
  });
});

describe('the mark of one source', () => {
  const links = [{ is: 'b', strength: 'usually' }, { is: 'c', strength: 'sometimes' }] as const;
  it('is the sum of its strengths; of it is reported what fits the report', () => {
    const { mark, report } = markOf(links, ['a', 'b', 'c'], [0, 1, 0.5]);
    expect(mark).toBeCloseTo(0.9, 12);
    expect(report).toBeCloseTo(0.7 + 0.2 * 0.5, 12);
    expect(markOf([{ is: 'z', strength: 'usually' }], ['a'], [1])).toEqual({ mark: 0.7, report: 0 });
    expect(markOf([], ['a'], [1])).toEqual({ mark: 0, report: 0 });
  });
});

describe('the fit of conditions to a plug', () => {
  /** How much better than no condition, worked out from the definition for each finding that was seen. */
  const fitOf = (tip: PlugReading['tip'], i: number, j: number): number => {
    const fit = plugFit(seenOn(tip), three());
    return fit.pair[i * 3 + j]! / fit.none;
  };

  it('is, for one condition, the chance of what was seen with it over that on a sound plug', () => {
    const rest = sound('deposit', 'dry soot');
    expect(fitOf({ deposit: 'dry soot' }, 0, 0)).toBeCloseTo((0.7 + 0.3 * rest) / rest, 9);
    expect(fitOf({ deposit: 'dry soot' }, 1, 1)).toBeCloseTo((0.1 * rest + 0.9 * (0.2 / 0.9)) / rest, 9);
    expect(fitOf({ deposit: 'dry soot' }, 2, 2)).toBeCloseTo(1, 12);
  });

  it('is, for two that mark the same finding, that of both together, and where one is silent that of the other', () => {
    const rest = sound('deposit', 'dry soot');
    const q = 1 - 0.3 * 0.1;
    const both = ((1 - q) * rest + q * (0.9 / 1.6)) / rest;
    expect(fitOf({ deposit: 'dry soot' }, 0, 1)).toBeCloseTo(both, 9);
    expect(fitOf({ deposit: 'dry soot' }, 1, 0)).toBeCloseTo(both, 9);
    for (const [i, j] of [[0, 2], [2, 0]] as const) expect(fitOf({ deposit: 'dry soot' }, i, j)).toBeCloseTo(fitOf({ deposit: 'dry soot' }, 0, 0), 12);
    for (const [i, j] of [[1, 2], [2, 1]] as const) expect(fitOf({ deposit: 'dry soot' }, i, j)).toBeCloseTo(fitOf({ deposit: 'dry soot' }, 1, 1), 12);
  });

  it('is the product over all that was seen', () => {
    const tip = { deposit: 'dry soot', noseColour: 'black' } as const;
    for (const [i, j] of [[0, 0], [0, 1], [1, 2]] as const)
      expect(fitOf(tip, i, j)).toBeCloseTo(fitOf({ deposit: 'dry soot' }, i, j) * fitOf({ noseColour: 'black' }, i, j), 6);
  });

  it('is scaled so that the best is 1, be it a condition or none', () => {
    const fit = plugFit(seenOn({ deposit: 'dry soot' }), three());
    expect(Math.max(fit.none, ...fit.pair)).toBe(1);
    expect([...fit.single]).toEqual([0, 1, 2].map((k) => fit.pair[k * 3 + k]));
    expect(plugFit([], three())).toEqual({ none: 1, single: Float64Array.of(1, 1, 1), pair: new Float64Array(9).fill(1) });
    const clean = plugFit(seenOn({ deposit: 'none' }), three());
    expect(clean.none).toBe(1);
    expect(clean.single[0]).toBeLessThan(1);
  });

  it('with something left aside is, up to a constant, the fit to the rest', () => {
    const seen = seenOn({ deposit: 'dry soot', noseColour: 'black' });
    const whole = plugFit(seen, three());
    const rest = seen.filter(({ finding }) => finding === 'deposit');
    const [without, anew] = [plugFit(rest, three(), { fit: whole, seen }), plugFit(rest, three())];
    for (let at = 0; at < 9; at += 1) expect(without.pair[at]! / without.none).toBeCloseTo(anew.pair[at]! / anew.none, 9);
    expect([...without.single]).toEqual([0, 1, 2].map((k) => without.pair[k * 3 + k]));
    expect(without.none).toBe(whole.none);
  });
});
