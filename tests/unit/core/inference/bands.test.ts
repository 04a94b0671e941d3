import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cylinderBands, normalCdf, plugBands, shares } from '../../../../core/inference/bands.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';

const sheet = (parts: Partial<ReadingSheet>): ReadingSheet => ({
  format: 'corenose.reading-sheet',
  version: 1,
  engine: { use: 'road', cylinders: 4 },
  plugs: [{ cylinder: 1 }],
  ...parts,
});
const compressions = (values: readonly number[]): ReadingSheet =>
  sheet({ cylinderChecks: values.map((compressionKPa, i) => ({ cylinder: i + 1, compressionKPa })) });
const likeliest = (weights: Readonly<Record<string, number>>): string | undefined => Object.entries(weights).sort((a, b) => b[1] - a[1])[0]?.[0];

describe('the normal distribution', () => {
  it('agrees with the printed table', () => {
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1.
    for (const [z, p] of [
      [0, 0.5],
      [0.5, 0.6914624613],
      [1, 0.8413447461],
      [1.96, 0.9750021049],
      [3, 0.998650102],
    ] as const) {
      expect(normalCdf(z)).toBeCloseTo(p, 6);
      expect(normalCdf(-z)).toBeCloseTo(1 - p, 6);
    }
  });
});

describe('bands', () => {
  it('share a measurement out completely', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: 0.01, max: 2, noNaN: true }), (value, sigma) => {
        const all = Object.values(
          shares(value, sigma, [
            { is: 'a', upTo: -1 },
            { is: 'b', upTo: 1 },
            { is: 'c', upTo: Infinity },
          ]),
        );
        expect(all.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 9);
        expect(Math.min(...all)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('call a cylinder under three quarters of the best one low', () => {
    // US Army addendum on compression tests (S15) and car manuals (W19): lowest at least 75 % of the highest.
    const bands = (values: readonly number[]): (string | undefined)[] => {
      const s = compressions(values);
      return (s.cylinderChecks ?? []).map((check) => likeliest(cylinderBands(check, s)[0]?.weights ?? {}));
    };
    expect(bands([1200, 1180, 850, 1190])).toEqual(['good', 'good', 'low', 'good']);
    expect(bands([1200, 960, 1180, 1190])).toEqual(['good', 'watch', 'good', 'good']);
  });

  it('take a clear rise with oil for rings', () => {
    // US Army compression test: a rise of 69 kPa (10 psi) with oil points to rings (S15, S18).
    const wet = (compressionWetKPa: number): string | undefined => {
      const check = { cylinder: 1, compressionKPa: 700, compressionWetKPa };
      return likeliest(cylinderBands(check, sheet({ cylinderChecks: [check] })).find(({ finding }) => finding === 'compressionWet')?.weights ?? {});
    };
    expect(wet(900)).toBe('rises');
    expect(wet(710)).toBe('unchanged');
  });

  it('put the differential limit of aircraft at 60 of 80', () => {
    // FAA AC 43.13-1B, paragraph 8-14: below 60/80 where the engine maker says nothing else (S06).
    const held = (heldKPa: number): string | undefined => {
      const check = { cylinder: 1, differential: { heldKPa, supplyKPa: 552 } };
      return likeliest(cylinderBands(check, sheet({ cylinderChecks: [check] }))[0]?.weights ?? {});
    };
    expect(held(552 * (59 / 80) - 10)).toBe('fault');
    expect(held(552 * (62 / 80))).toBe('worn');
    expect(held(552 * (76 / 80))).toBe('good');
  });

  it('judge a gap against the new gap of its own plug: renew at 0.2 mm over', () => {
    // Workshop manuals of one car maker 1988 to 2007 (W1): 0.2 to 0.4 mm over new.
    const gap = (gapMm: number): string | undefined =>
      likeliest(plugBands({ cylinder: 1, fitted: { gapNewMm: 0.8 }, measured: { gapMm } }, sheet({}).engine)[0]?.weights ?? {});
    expect([0.1, 0.6, 0.85, 1.1, 1.4].map(gap)).toEqual(['closed', 'narrow', 'as set', 'wide', 'far too wide']);
  });

  it('call ten megohms good and a tenth of one shunted', () => {
    // One car maker's manuals: 10 MΩ or more is good (W1); coil ignition misses from about 0.1 to 1 MΩ (from memory).
    const insulation = (insulationMOhm: number): string | undefined =>
      likeliest(plugBands({ cylinder: 1, measured: { insulationMOhm } }, sheet({}).engine)[0]?.weights ?? {});
    expect([50, 3, 0.1].map(insulation)).toEqual(['good', 'low', 'shunted']);
  });

  it('say nothing of a gap that is neither absurd nor comparable', () => {
    expect(plugBands({ cylinder: 1, measured: { gapMm: 0.9 } }, sheet({}).engine)).toEqual([]);
  });
});
