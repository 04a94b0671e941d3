import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cylinderBands, normalCdf, plugBands, shares, type Banded } from '../../../../core/inference/bands.ts';
import { CYLINDER_FINDINGS, PLUG_FINDINGS } from '../../../../core/knowledge/findings.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { CylinderCheck, PlugReading } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';

type Weights = Readonly<Record<string, number>>;
const road: Engine = { use: 'road', cylinders: 4 };
const onPlug = (plug: Omit<PlugReading, 'cylinder'>, engine: Partial<Engine> = {}): Banded<string> | undefined =>
  plugBands({ cylinder: 1, ...plug }, { ...road, ...engine })[0];
/** What is banded of the first of several checks. */
const onCylinder = (checks: readonly Omit<CylinderCheck, 'cylinder'>[], engine: Partial<Engine> = {}): Banded<string>[] => {
  const cylinderChecks = checks.map((check, i) => ({ cylinder: i + 1, ...check }));
  return cylinderBands(cylinderChecks[0]!, sheetOf({ engine: { ...road, ...engine }, cylinderChecks }));
};
const likeliest = (weights: Weights = {}): string | undefined => Object.entries(weights).sort((a, b) => b[1] - a[1])[0]?.[0];

/** Share below the upper limit of a band: one half for a measurement that lies on it. */
function upTo(band: string, weights: Weights = {}): number {
  const entries = Object.entries(weights);
  return entries.slice(0, entries.findIndex(([is]) => is === band) + 1).reduce((sum, [, share]) => sum + share, 0);
}
/** Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1: one standard deviation below a limit. */
const ONE_BELOW = 0.8413447461;

describe('the normal distribution', () => {
  it('agrees with the printed table', () => {
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1.
    for (const [z, p] of [
      [0, 0.5],
      [0.5, 0.6914624613],
      [1, 0.8413447461],
      [1.96, 0.9750021049],
      [3, 0.998650102],
      [Infinity, 1],
    ] as const) {
      expect(normalCdf(z)).toBeCloseTo(p, 6);
      expect(normalCdf(-z)).toBeCloseTo(1 - p, 6);
    }
  });
});

describe('a measurement', () => {
  it('is shared out completely, whatever the limits', () => {
    const number = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(number, fc.double({ min: 0.01, max: 2, noNaN: true }), number, number, (value, sigma, a, b) => {
        const all = Object.values(shares(value, sigma, [{ is: 'a', upTo: a }, { is: 'b', upTo: b }, { is: 'c', upTo: Infinity }]));
        expect(all.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 9);
        expect(Math.min(...all)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('on a limit belongs by half to each side, and by 84 % to the band whose limit is one repeatability above it', () => {
    const bands = [{ is: 'a', upTo: 2 }, { is: 'b', upTo: Infinity }];
    expect(shares(2, 0.3, bands)['a']).toBeCloseTo(0.5, 9);
    expect(shares(1.7, 0.3, bands)['a']).toBeCloseTo(ONE_BELOW, 6);
  });

  it('is shared out among the very values of its finding', () => {
    const all: Readonly<Record<string, readonly string[]>> = { ...PLUG_FINDINGS, ...CYLINDER_FINDINGS };
    const measured = { gapMm: 0.2, resistorKOhm: 5, insulationMOhm: 3, removalTorqueNm: 12 };
    const banded: Banded<string>[] = [
      ...plugBands({ cylinder: 1, measured }, road), ...plugBands({ cylinder: 1, measured, fitted: { gapNewMm: 0.8 } }, road),
      ...onCylinder([{ compressionKPa: 900, compressionWetKPa: 950, leakDownPercent: 5, egtC: 700 }, { compressionKPa: 950, egtC: 700 }]),
      ...onCylinder([{ compressionKPa: 900, differential: { heldKPa: 500, supplyKPa: 552 } }]),
    ];
    expect(banded).toHaveLength(14);
    for (const { finding, weights } of banded) expect(Object.keys(weights).sort()).toEqual([...all[finding]!].sort());
  });

  it('is nothing where nothing was measured', () => {
    expect(plugBands({ cylinder: 1 }, road)).toEqual([]);
    expect(cylinderBands({ cylinder: 1 }, sheetOf())).toEqual([]);
    expect(cylinderBands({ cylinder: 1 }, sheetOf({ cylinderChecks: [{ cylinder: 1 }] }))).toEqual([]);
  });
});

describe('a gap', () => {
  const gap = (gapMm: number, fitted: PlugReading['fitted'] = { gapNewMm: 0.8 }): Banded<string> | undefined => onPlug({ fitted, measured: { gapMm } });

  it('is judged against the new gap of its own plug: renew at 0.2 mm over', () => {
    // Workshop manuals of one car maker 1988 to 2007 (W1): 0.2 to 0.4 mm over new.
    expect([0.1, 0.6, 0.85, 1.1, 1.4].map((mm) => likeliest(gap(mm)?.weights))).toEqual(['closed', 'narrow', 'as set', 'wide', 'far too wide']);
    expect(upTo('as set', gap(1)?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('wide', gap(1.2)?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('narrow', gap(0.7)?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('closed', gap(0.15)?.weights)).toBeCloseTo(0.5, 6);
    expect(gap(1)).toMatchObject({ finding: 'gap', field: 'measured.gapMm', shown: 'gap 1 mm (new 0.8 mm)' });
  });

  it('is judged against the gap that the engine asks for where that of the plug is not noted', () => {
    expect(onPlug({ measured: { gapMm: 1 } }, { fitment: { gapMm: 0.8 } })).toEqual(gap(1));
    expect(onPlug({ fitted: {}, measured: { gapMm: 1 } }, { fitment: {} })).toBeUndefined();
  });

  it('without anything to compare it with says something only where it is absurd', () => {
    expect([0.1, 0.25, 0.26, 0.9, 1.59, 1.6, 1.7, 2].map((mm) => likeliest(gap(mm, {})?.weights))).toEqual(
      ['closed', 'narrow', undefined, undefined, undefined, 'wide', 'wide', 'far too wide'],
    );
    expect(gap(1.7, {})?.shown).toBe('gap 1.7 mm');
    for (const [mm, at] of [[1.8, 'wide'], [0.15, 'closed']] as const) expect(upTo(at, gap(mm, {})?.weights)).toBeCloseTo(0.5, 6);
  });
});

describe('the resistor of a plug', () => {
  const resistor = (resistorKOhm: number, plug: Partial<PlugReading> = {}, use: Engine['use'] = 'road'): Banded<string> | undefined =>
    onPlug({ ...plug, measured: { resistorKOhm } }, { use });
  const withResistor = { fitted: { resistor: true } };

  it('is in range to 8 kΩ on the road and to 5 kΩ in an aircraft', () => {
    // Scatter 5 % and 0.05 kΩ: one such step below the limit. Accepted on the road 3 to 7.5 kΩ (trade); aircraft renew above 5 kΩ (S54).
    expect(upTo('in range', resistor(8)?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('in range', resistor(7.95 / 1.05)?.weights)).toBeCloseTo(ONE_BELOW, 6);
    expect(upTo('in range', resistor(5, {}, 'aircraft')?.weights)).toBeCloseTo(0.5, 6);
    expect([5, 50, 200].map((kOhm) => likeliest(resistor(kOhm)?.weights))).toEqual(['in range', 'high', 'open']);
    expect(resistor(5)).toMatchObject({ finding: 'resistor', field: 'measured.resistorKOhm', shown: 'resistor 5 kΩ' });
  });

  it('can be low only where one is known to be there', () => {
    expect(upTo('low', resistor(2, withResistor)?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('low', resistor(0.6, withResistor, 'aircraft')?.weights)).toBeCloseTo(0.5, 6);
    expect(likeliest(resistor(0.3)?.weights)).toBe('in range');
    expect(likeliest(resistor(0.3, { fitted: { resistor: false } })?.weights)).toBe('in range');
  });
});

describe('the insulation of a plug', () => {
  const insulation = (insulationMOhm: number): Banded<string> | undefined => onPlug({ measured: { insulationMOhm } });

  it('is good from 10 MΩ, shunted under 1 MΩ, by the power of ten', () => {
    // One car maker's manuals: 10 MΩ or more is good (W1); coil ignition misses from about 0.1 to 1 MΩ (from memory).
    expect([50, 3, 0.1].map((mOhm) => likeliest(insulation(mOhm)?.weights))).toEqual(['good', 'low', 'shunted']);
    expect(upTo('low', insulation(10)?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('shunted', insulation(1)?.weights)).toBeCloseTo(0.5, 6);
    expect(insulation(3)).toMatchObject({ finding: 'insulation', field: 'measured.insulationMOhm', shown: 'insulation 3 MΩ' });
  });

  it('of nothing at all is shunted, not an error', () => {
    expect(insulation(0)?.weights).toEqual({ shunted: 1, low: 0, good: 0 });
  });
});

describe('the torque on removal', () => {
  const torque = (removalTorqueNm: number, fitted: PlugReading['fitted'] = {}, fitment: Engine['fitment'] = {}): Banded<string> | undefined =>
    onPlug({ fitted, measured: { removalTorqueNm } }, { fitment });
  const halfLoose = (nm: number, ...rest: [PlugReading['fitted']?, Engine['fitment']?]): void =>
    expect(torque(nm, ...rest)?.weights['loose']).toBeCloseTo(0.5, 6);

  it('is that of a loose plug under half of the least that its thread and seat are tightened to', () => {
    // Least torques in aluminium: M10 9.5, M12 15, M14 20 or conical 9.5, M18 conical 20 N·m (S36, university extension table); M8 8 N·m from memory.
    halfLoose(4, { thread: 'M8x1' });
    halfLoose(4.75, { thread: 'M10x1' });
    halfLoose(7.5, { thread: 'M12x1.25' });
    halfLoose(10, { thread: 'M14x1.25' });
    halfLoose(4.75, { thread: 'M14x1.25', seat: 'conical' });
    halfLoose(10, { thread: 'm18 x 1.5', seat: 'conical' });
    expect(torque(12, { thread: 'M14x1.25' })?.weights['loose']).toBeCloseTo(1 - ONE_BELOW, 6);
    expect(torque(10)).toMatchObject({ finding: 'removalTorque', field: 'measured.removalTorqueNm', shown: 'removal torque 10 N·m' });
  });

  it('goes by the plug, else by what the engine asks for, else by the commonest thread and seat', () => {
    halfLoose(10, {}, {});
    halfLoose(7.5, {}, { thread: 'M12x1.25' });
    halfLoose(10, { thread: 'M14x1.25' }, { thread: 'M12x1.25' });
    halfLoose(4.75, {}, { seat: 'conical' });
    halfLoose(10, { seat: 'gasket' }, { seat: 'conical' });
    expect(onPlug({ measured: { removalTorqueNm: 10 } })?.weights['loose']).toBeCloseTo(0.5, 6);
  });

  it('says nothing for a thread of which no torque is known', () => {
    for (const thread of ['7/8-18', 'M99x1', 'xM14', '1 M14']) expect(torque(10, { thread })).toBeUndefined();
  });
});

describe('compression', () => {
  const compression = (values: readonly (number | undefined)[], engine: Partial<Engine> = {}): Banded<string> | undefined =>
    onCylinder(values.map((compressionKPa) => ({ compressionKPa })), engine)[0];

  it('is low under three quarters of the best cylinder, and to be watched under nine tenths', () => {
    // US Army addendum on compression tests (S15) and car manuals (W19): lowest at least 75 % of the highest.
    expect([[1200, 1180], [960, 1200], [850, 1200]].map((values) => likeliest(compression(values)?.weights))).toEqual(['good', 'watch', 'low']);
    expect(upTo('low', compression([900, 1200])?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('watch', compression([1080, 800, 1200])?.weights)).toBeCloseTo(0.5, 6);
    expect(compression([900, 1200])).toMatchObject({ finding: 'compression', field: 'compressionKPa', shown: 'compression 900 kPa, best 1200 kPa' });
  });

  it('of a cylinder alone is low under 690 kPa, or under 480 where little is squeezed', () => {
    // Military manual (W4): 690 kPa (100 psi) at least; two-strokes and low ratios in proportion (common practice).
    expect(upTo('low', compression([690])?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('watch', compression([690 * 1.15, undefined])?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('low', compression([690], { compressionRatio: 7, cycle: 'four-stroke' })?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('low', compression([480], { compressionRatio: 6.9 })?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('low', compression([480], { compressionRatio: 9, cycle: 'two-stroke' })?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('low', compression([690 * 0.97])?.weights)).toBeCloseTo(ONE_BELOW, 6);
    expect(compression([690])).toMatchObject({ finding: 'compression', field: 'compressionKPa', shown: 'compression 690 kPa' });
    expect(compression([2000])?.weights['good']).toBeCloseTo(1, 6);
  });

  it('of an engine that squeezes nothing anywhere is low', () => {
    expect(compression([0, 0])?.weights).toMatchObject({ low: 1, good: 0 });
  });

  it('that rises by 69 kPa with oil points to rings', () => {
    // US Army compression test: a rise of 69 kPa (10 psi) with oil (S15, S18).
    const wet = (check: Partial<CylinderCheck>): Banded<string> | undefined => onCylinder([check]).find(({ finding }) => finding === 'compressionWet');
    expect(upTo('unchanged', wet({ compressionKPa: 700, compressionWetKPa: 769 })?.weights)).toBeCloseTo(0.5, 6);
    expect([710, 900].map((compressionWetKPa) => likeliest(wet({ compressionKPa: 700, compressionWetKPa })?.weights))).toEqual(['unchanged', 'rises']);
    expect(wet({ compressionKPa: 700, compressionWetKPa: 900 })).toMatchObject({ field: 'compressionWetKPa', shown: 'compression with oil 900 kPa, dry 700 kPa' });
    expect(wet({ compressionWetKPa: 900 })).toBeUndefined();
    expect(wet({ compressionKPa: 900 })).toBeUndefined();
  });
});

describe('leakage past a cylinder', () => {
  it('is good to 10 % and a fault over 30 % in a car', () => {
    // Car manuals (S58, W20).
    const leak = (leakDownPercent: number): Banded<string> | undefined => onCylinder([{ leakDownPercent }])[0];
    expect([5, 15, 25, 40].map((percent) => likeliest(leak(percent)?.weights))).toEqual(['good', 'fair', 'worn', 'fault']);
    for (const [percent, at] of [[10, 'good'], [20, 'fair'], [30, 'worn']] as const) expect(upTo(at, leak(percent)?.weights)).toBeCloseTo(0.5, 6);
    expect(leak(15)).toMatchObject({ finding: 'leakDown', field: 'leakDownPercent', shown: 'leak-down 15 %' });
  });

  it('is a fault in an aircraft where less than 60 of 80 is held', () => {
    // FAA AC 43.13-1B, paragraph 8-14: below 60/80 where the engine maker says nothing else (S06).
    const held = (heldKPa: number): Banded<string> | undefined => onCylinder([{ differential: { heldKPa, supplyKPa: 552 } }])[0];
    expect(upTo('worn', held(414)?.weights)).toBeCloseTo(0.5, 6);
    expect([76, 69, 62, 55].map((of80) => likeliest(held(552 * (of80 / 80))?.weights))).toEqual(['good', 'fair', 'worn', 'fault']);
    expect(held(414)).toMatchObject({ finding: 'leakDown', field: 'differential', shown: 'differential 414 kPa of 552 kPa held' });
  });
});

describe('the exhaust of a cylinder', () => {
  const exhaust = (...egt: readonly (number | undefined)[]): Banded<string> | undefined => onCylinder(egt.map((egtC) => ({ egtC })))[0];

  it('is told against the middle one of the others, from 40 K on', () => {
    // Common practice, no source.
    expect([exhaust(640, 700, 900, 690), exhaust(700, 700, 700), exhaust(760, 700)].map((band) => likeliest(band?.weights))).toEqual(['colder', 'like the others', 'hotter']);
    expect(upTo('colder', exhaust(660, 1000, 700, 90)?.weights)).toBeCloseTo(0.5, 6);
    expect(upTo('like the others', exhaust(740, 700, 1100, 90)?.weights)).toBeCloseTo(0.5, 6);
    expect(exhaust(740, 700)).toMatchObject({ finding: 'exhaustTemperature', field: 'egtC', shown: 'exhaust 740 °C, the others 700 °C' });
  });

  it('says nothing alone', () => {
    expect(exhaust(640)).toBeUndefined();
    expect(exhaust(640, undefined)).toBeUndefined();
    expect(exhaust(undefined, 640)).toBeUndefined();
  });
});
