import { describe, expect, it } from 'vitest';
import { anchor, type TipReading } from '../../../../core/thermal/anchor.ts';
import { afterOffset, offsetAt, PRIOR } from '../../../../core/thermal/belief.ts';
import { slopesAt, tipBand, UNEXPLAINED } from '../../../../core/thermal/tip.ts';
import type { Celsius } from '../../../../shared/quantities.ts';
import { coverage, CRUISE, FULL_LOAD, WAYS_OF_READING } from '../../../fixtures/simulated-engines.ts';
import { gas, plug, REFERENCE } from '../../../fixtures/heat-engines.ts';

const full = gas(REFERENCE, FULL_LOAD);
const cruise = gas(REFERENCE, CRUISE);
const width = ({ low, high }: { low: number; high: number }): number => high - low;
const read = (felt: typeof full, showed: TipReading['showed']): TipReading => ({ gas: felt, seat: plug(), showed });

describe('the model corrected by an engine’s own readings', () => {
  it.each(WAYS_OF_READING)('holds the truth at full load in 85 to 95 of 100 simulated engines: $name', ({ read: reading }) => {
    const { share, narrower } = coverage(reading, 1000);
    expect(share).toBeGreaterThanOrEqual(0.85);
    expect(share).toBeLessThanOrEqual(0.95);
    expect(narrower).toBeLessThanOrEqual(1);
  }, 60_000);

  it('weighs a thermocouple against the model by one over the variances, worked by hand', () => {
    const { belief, steps: [step] } = anchor([read(full, { kind: 'thermocouple', value: 700 as Celsius })]);
    const slopes = slopesAt(full, plug(), 'nose');
    const [own, measured] = [offsetAt(PRIOR, slopes).variance, 10 ** 2 + UNEXPLAINED ** 2];
    const model = tipBand(full, plug()).middle;
    expect(step!.after.middle).toBeCloseTo((model / own + 700 / measured) / (1 / own + 1 / measured), 9);
    expect(offsetAt(belief, slopes).variance).toBeCloseTo(1 / (1 / own + 1 / measured), 9);
  });

  it('agrees on a soft limit with the integral worked by brute force', () => {
    const slopes = slopesAt(cruise, plug(), 'nose');
    const [model, own] = [tipBand(cruise, plug()).middle, offsetAt(PRIOR, slopes).variance];
    const edge = { middle: 450, deviation: Math.hypot((500 - 360) / 2 / 1.6449, UNEXPLAINED) };
    // Both the offset and the limit on a fine grid; kept where the tip lies above the limit.
    const grid = Array.from({ length: 401 }, (_, i) => -6 + i * 0.03);
    const weight = (z: number): number => Math.exp(-(z ** 2) / 2);
    let [mass, first, second] = [0, 0, 0];
    for (const z of grid) {
      const offset = z * Math.sqrt(own);
      const above = grid.reduce((sum, y) => sum + (model + offset > edge.middle + y * edge.deviation ? weight(y) : 0), 0);
      mass += weight(z) * above;
      first += weight(z) * above * offset;
      second += weight(z) * above * offset ** 2;
    }
    const { belief } = anchor([read(cruise, { kind: 'self-cleaned' })]);
    const got = offsetAt(belief, slopes);
    expect(Math.abs(got.mean - first / mass)).toBeLessThan(0.5);
    expect(Math.abs(Math.sqrt(got.variance) - Math.sqrt(second / mass - (first / mass) ** 2))).toBeLessThan(0.5);
  });

  it('narrows the band with every reading and calls it calibrated; the model alone is predicted', () => {
    const { belief, steps } = anchor([
      read(cruise, { kind: 'self-cleaned' }), read(full, { kind: 'not blistered' }), read(full, { kind: 'known good' }),
      read(cruise, { kind: 'thermocouple', value: 520 as Celsius }),
    ]);
    expect(steps[0]!.before.basis).toBe('predicted');
    for (const { before, after } of steps) {
      expect(width(after)).toBeLessThan(width(before));
      expect(after.basis).toBe('calibrated');
    }
    expect(belief.readings).toBe(4);
    expect(width(tipBand(full, plug(), belief))).toBeLessThan(width(tipBand(full, plug())) / 2);
  });

  it('moves up when soot went, the glaze blistered or an electrode melted, and down when soot stayed or the glaze is sound', () => {
    const moved = (showed: TipReading['showed']): number => {
      const [step] = anchor([read(cruise, showed)]).steps;
      return step!.after.middle - step!.before.middle;
    };
    for (const kind of ['self-cleaned', 'blistered', 'melted'] as const) expect(moved({ kind })).toBeGreaterThan(0);
    for (const kind of ['soot kept', 'not blistered'] as const) expect(moved({ kind })).toBeLessThan(0);
  });

  it('says how far a reading was from what it expected', () => {
    const [usual, odd] = [600, 900].map((value) => anchor([read(cruise, { kind: 'thermocouple', value: value as Celsius })]).steps[0]!.surprise);
    expect(usual!).toBeLessThan(1);
    expect(odd!).toBeGreaterThan(3);
    const [step] = anchor([read(cruise, { kind: 'melted' })]).steps;
    expect(step!.surprise).toBeLessThan(0.01);
  });

  it('learns about other running as far as it is alike, and not at all from what it knew', () => {
    const slopes = slopesAt(cruise, plug(), 'nose');
    expect(afterOffset(PRIOR, slopes, offsetAt(PRIOR, slopes)).mean).toEqual(PRIOR.mean);
    const { belief } = anchor([read(cruise, { kind: 'thermocouple', value: 480 as Celsius })]);
    const [here, there] = [tipBand(cruise, plug(), belief), tipBand(full, plug(), belief)];
    expect(there.middle).toBeLessThan(tipBand(full, plug()).middle);
    expect(width(there)).toBeGreaterThan(width(here));
  });
});
