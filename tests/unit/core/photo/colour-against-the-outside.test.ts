import { converter, differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adaptation } from '../../../../core/photo/bradford.ts';
import { ciede2000 } from '../../../../core/photo/ciede2000.ts';
import { D65, labFromLinear, labFromXyz, xyzFromLab, type Lab } from '../../../../core/photo/lab.ts';
import { applied, type Triple } from '../../../../core/photo/matrix.ts';
import { byteOf, decoded, encoded, linearFromXyz, LIGHT_OF_BYTE, xyzFromLinear } from '../../../../core/photo/srgb.ts';
import published from '../../../fixtures/colour-check-values.json' with { type: 'json' };

const triple = (numbers: readonly number[]): Triple => numbers as unknown as Triple;
const lightOf = (rgb8: readonly number[]): Triple => triple(rgb8.map((byte) => LIGHT_OF_BYTE[byte] ?? NaN));
const furthest = (one: readonly number[], other: readonly number[]): number => Math.max(...one.map((value, i) => Math.abs(value - (other[i] ?? NaN))));

/** Hues that lie half a turn apart, as near as makes no difference. */
const areOpposite = ([, a1, b1]: Lab, [, a2, b2]: Lab): boolean =>
  a1 * a2 + b1 * b2 < 0 && Math.abs(a1 * b2 - a2 * b1) < 1e-6 * Math.hypot(a1, b1) * Math.hypot(a2, b2) + 1e-12;

const anyOpponent = fc.double({ min: -100, max: 100, noNaN: true });
const anyLab = fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), anyOpponent, anyOpponent);
const anyRgb8 = fc.tuple(fc.integer({ min: 0, max: 255 }), fc.integer({ min: 0, max: 255 }), fc.integer({ min: 0, max: 255 }));

/** Sharma, Wu and Dalal, "The CIEDE2000 Color-Difference Formula", Color Research and Application 30(1), 2005, table 1: 34 pairs. */
describe('the colour difference CIEDE2000', () => {
  it.each(published.ciede2000.pairs)('is as published for pair $pair', ({ lab1, lab2, dE00 }) => {
    expect(Math.abs(ciede2000(triple(lab1), triple(lab2)) - dE00)).toBeLessThanOrEqual(1e-4);
  });

  it('is the same both ways, nothing for equal colours, and always a number', () => {
    fc.assert(fc.property(anyLab, anyLab, (one, other) => {
      expect(ciede2000(one, other)).toBeCloseTo(ciede2000(other, one), 9);
      expect(ciede2000(one, one)).toBe(0);
      expect(ciede2000(one, [one[0], 0, 0])).not.toBeNaN();
    }));
  });

  it('agrees with an independent program (culori)', () => {
    const theirs = differenceCiede2000();
    const given = ([l, a, b]: Lab) => ({ mode: 'lab65' as const, l, a, b });
    fc.assert(fc.property(anyLab, anyLab, (one, other) => {
      fc.pre(!areOpposite(one, other)); // there the published formula jumps, and the last bit decides
      expect(ciede2000(one, other)).toBeCloseTo(theirs(given(one), given(other)), 4);
    }), { numRuns: 1000 });
  });
});

/** IEC 61966-2-1:1999 with amendment 1; CIE 15:2018 and ISO 11664-4 for CIELAB. */
describe('a screen colour', () => {
  it.each(published.srgb.samples)('$hex has its published light, XYZ and CIELAB', ({ rgb8, linear, xyzD65, labD65, labD50 }) => {
    const light = lightOf(rgb8);
    expect(furthest(light, linear)).toBeLessThan(1e-6);
    expect(furthest(xyzFromLinear(light), xyzD65)).toBeLessThan(1.1e-6);
    expect(furthest(labFromLinear(light), labD65)).toBeLessThan(1e-3);
    const toD50 = adaptation(D65, triple(published.srgb.whitesXYZ.D50));
    expect(furthest(labFromXyz(applied(toD50, xyzFromLinear(light)), triple(published.srgb.whitesXYZ.D50)), labD50)).toBeLessThan(1e-3);
  });

  it('comes back from light and from CIELAB as the same byte', () => {
    for (let byte = 0; byte < 256; byte += 1) expect(byteOf(LIGHT_OF_BYTE[byte] ?? NaN)).toBe(byte);
    fc.assert(fc.property(anyRgb8, (rgb8) => { expect(linearFromXyz(xyzFromLab(labFromLinear(lightOf(rgb8)))).map(byteOf)).toEqual(rgb8); }));
  });

  it('decodes and encodes as the two pieces of the standard meet: at 0.04045 and 0.0031308', () => {
    expect(decoded(0.04045)).toBeCloseTo(0.0031308, 7);
    expect(encoded(0.0031308)).toBeCloseTo(0.04045, 6);
  });

  it('has the CIELAB that an independent program gives it (culori)', () => {
    const lab65 = converter('lab65');
    fc.assert(fc.property(anyRgb8, (rgb8) => {
      const [r, g, b] = rgb8.map((byte) => byte / 255) as unknown as Triple;
      const theirs = lab65({ mode: 'rgb', r, g, b });
      expect(furthest(labFromLinear(lightOf(rgb8)), [theirs.l, theirs.a, theirs.b])).toBeLessThan(1e-3);
    }));
  });
});

/** Lam 1985; the matrices as in ICC.1 annex E and CSS Color 4. */
describe('adaptation after Bradford', () => {
  const { D65: toldD65, D50 } = published.srgb.whitesXYZ;
  const A = published.bradford.illuminantAXYZ;
  it.each([
    ['D65 to D50', toldD65, D50, published.bradford.D65toD50],
    ['D50 to D65', D50, toldD65, published.bradford.D50toD65],
    ['lamp light A to D65', A, toldD65, published.bradford.AtoD65],
  ])('has the published matrix from %s', (_, from, to, matrix) => {
    expect(furthest(adaptation(triple(from), triple(to)).flat(), matrix.flat())).toBeLessThan(2e-6);
  });

  it('turns the one white into the other', () => {
    expect(furthest(applied(adaptation(triple(A), triple(D50)), triple(A)), D50)).toBeLessThan(1e-9);
  });

  it('brings the published D50 values of a photographic target to its D65 values', () => {
    const toD65 = adaptation(triple(D50), triple(toldD65));
    for (const { labD50, labD65 } of published.target24.patches) {
      const [l, a, b] = triple(labD50);
      const fy = (l + 16) / 116;
      const light = (f: number): number => (f > 6 / 29 ? f ** 3 : (116 * f - 16) / (24389 / 27));
      const xyz = triple([light(fy + a / 500), light(fy), light(fy - b / 200)].map((t, i) => t * (D50[i] ?? NaN)));
      expect(furthest(labFromXyz(applied(toD65, xyz)), labD65)).toBeLessThan(2e-3);
    }
  });
});
