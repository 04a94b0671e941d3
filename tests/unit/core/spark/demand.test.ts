import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engineCorrelationVoltage } from '../../../../core/spark/breakdown.ts';
import { firingDemand, type Gap } from '../../../../core/spark/demand.ts';
import { availableVoltage, misfireShare, widestGap, type Ignition } from '../../../../core/spark/reserve.ts';
import type { Kelvin, Kilovolt, Megohm, Millimetre } from '../../../../shared/quantities.ts';

type Plain = Partial<{ gap: number; pressure: number; temperature: number; electrode: number; lambda: number; polarity: Gap['polarity']; wear: number }>;
const gap = (more: Plain = {}): Gap => ({
  gap: (more.gap ?? 0.8) as Millimetre, electrode: (more.electrode ?? 900) as Kelvin,
  gas: { pressure: more.pressure ?? 1.2e6, temperature: more.temperature ?? 640 },
  lambda: more.lambda ?? 0.9, polarity: more.polarity ?? 'negative', wear: more.wear ?? 0,
});
function demand(one: Gap): { low: number; middle: number; high: number; notes: readonly unknown[] } {
  const result = firingDemand(one);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}
const COIL: Ignition = { kind: 'coil', open: 30 as Kilovolt };

describe('the voltage a gap asks', () => {
  const anyGap = fc.record({
    gap: fc.double({ min: 0.3, max: 1.4, noNaN: true }), pressure: fc.double({ min: 3e5, max: 3e6, noNaN: true }),
    temperature: fc.double({ min: 450, max: 800, noNaN: true }),
  });

  it('rises with gap, pressure, wear and wrong polarity, and falls in hotter gas', () => {
    fc.assert(fc.property(anyGap, (one) => {
      const { middle } = demand(gap(one));
      expect(demand(gap({ ...one, gap: one.gap + 0.1 })).middle).toBeGreaterThan(middle);
      expect(demand(gap({ ...one, pressure: 1.1 * one.pressure })).middle).toBeGreaterThan(middle);
      expect(demand(gap({ ...one, wear: 1 })).middle).toBeGreaterThan(middle);
      expect(demand(gap({ ...one, polarity: 'positive' })).middle).toBeGreaterThan(middle);
      expect(demand(gap({ ...one, temperature: 1.1 * one.temperature })).middle).toBeLessThan(middle);
    }));
  });

  it('is a band that takes in the correlation measured on engines (SAE 2000-01-0245, from memory)', () => {
    fc.assert(fc.property(anyGap, (one) => {
      const { low, high } = demand(gap(one));
      const measured = engineCorrelationVoltage(one.pressure, one.temperature, one.gap);
      if (one.pressure / one.temperature < 1400) return; // thinner than in the engines of the correlation
      expect(measured).toBeGreaterThanOrEqual(low);
      expect(measured).toBeLessThanOrEqual(high);
    }));
  });

  it('differs from that correlation by less than 30 % at the densities of engines', () => {
    for (const width of [0.6, 0.8, 1.0, 1.1]) for (const pressure of [6e5, 1e6, 1.5e6, 2e6]) {
      const measured = engineCorrelationVoltage(pressure, 650, width);
      expect(Math.abs(demand(gap({ gap: width, pressure, temperature: 650, electrode: 650 })).middle / measured - 1)).toBeLessThan(0.3);
    }
  });

  it('is wider outside the tried range and says why', () => {
    const [inside, outside] = [demand(gap({ gap: 1.5 })), demand(gap({ gap: 1.6 }))];
    expect(inside.notes).toEqual([]);
    expect(outside.notes).toEqual([{ kind: 'outside', of: 'gap', value: 1.6, least: 0.3, most: 1.5 }]);
    expect((outside.high - outside.low) / outside.middle).toBeGreaterThan((inside.high - inside.low) / inside.middle);
  });

  it('is refused for a gap that is none', () => {
    expect(firingDemand(gap({ gap: 0 }))).toEqual({ ok: false, error: [{ kind: 'outside', of: 'gap', value: 0, least: 0.1, most: 3 }] });
  });
});

describe('the reserve of the ignition', () => {
  it('falls to half when the drain equals the source, and a fast ignition minds less', () => {
    expect(availableVoltage(COIL, 0.3 as Megohm)).toBeCloseTo(15, 9);
    expect(availableVoltage({ kind: 'capacitor discharge', open: 30 as Kilovolt }, 0.3 as Megohm)).toBeGreaterThan(26);
  });

  it('fails half the sparks where demand and supply meet', () => {
    expect(misfireShare(20 as Kilovolt, 20 as Kilovolt)).toBeCloseTo(0.5, 6);
    expect(misfireShare(20 as Kilovolt, 30 as Kilovolt)).toBeLessThan(0.001);
  });

  it('gives a widest gap as a range that shrinks as the nose fouls, and none when it is shorted', () => {
    const at = (shunt: number): ReturnType<typeof widestGap> => widestGap(gap(), COIL, shunt as Megohm);
    const [clean, fouled, shorted] = [at(1000), at(0.5), at(0.01)];
    if (!clean.ok || !fouled.ok || !shorted.ok) throw new Error('refused');
    expect(clean.value.surely!).toBeLessThan(clean.value.likely!);
    expect(clean.value.likely!).toBeLessThanOrEqual(clean.value.perhaps!);
    expect(fouled.value.likely!).toBeLessThan(clean.value.likely!);
    expect(shorted.value).toEqual({ surely: undefined, likely: undefined, perhaps: undefined });
    expect(widestGap(gap({ wear: 2 }), COIL, 10 as Megohm)).toEqual({ ok: false, error: [{ kind: 'outside', of: 'wear of the edges', value: 2, least: 0, most: 1 }] });
  });
});
