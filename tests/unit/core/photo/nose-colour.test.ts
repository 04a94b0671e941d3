import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SURFACE } from '../../../../core/photo/design-colours.ts';
import { labFromLinear, linearFromLab, underLight, type Lab } from '../../../../core/photo/lab.ts';
import { noseColourName } from '../../../../core/photo/nose-colour.ts';
import { atLightness, hueAngleOf, strengthOf, tintDifference, tintOf } from '../../../../core/photo/tint.ts';

describe('the tint of a colour', () => {
  it('does not change when the same surface stands in shadow, as long as CIELAB is a cube root there', () => {
    const surfaces = fc.constantFrom<Lab>(SURFACE.tan, SURFACE.brown, SURFACE.rust, SURFACE.glaze, SURFACE.grey);
    fc.assert(fc.property(surfaces, fc.double({ min: 0.3, max: 1.2, noNaN: true }), (surface, light) => {
      const shaded = tintOf(labFromLinear(underLight(linearFromLab(surface), light)));
      expect(shaded.u).toBeCloseTo(tintOf(surface).u, 9);
      expect(shaded.v).toBeCloseTo(tintOf(surface).v, 9);
    }));
  });

  it('has no strength in grey, and the hue angle of CIELAB (CIE 15:2018) otherwise', () => {
    expect(strengthOf(tintOf([50, 0, 0]))).toBe(0);
    expect(hueAngleOf(tintOf([70, 10, 10]))).toBeCloseTo(45, 9);
    expect(hueAngleOf(tintOf([70, 10, -10]))).toBeCloseTo(315, 9);
  });

  it('is the whole difference between colours of one lightness and none between lighter and darker grey', () => {
    expect(tintDifference(tintOf([90, 0, 0]), tintOf([30, 0, 0]))).toBe(0);
    expect(atLightness(tintOf(SURFACE.tan), 70)).toEqual([70, expect.closeTo(6, 9), expect.closeTo(18, 9)]);
    expect(tintDifference(tintOf(SURFACE.tan), tintOf(SURFACE.rust))).toBeGreaterThan(10);
  });
});

/** Trade wording of nose colours is common practice, no source; the colours are this program's design estimates. */
describe('the name of a nose colour', () => {
  const nameOf = (lab: Lab, dark = 0): string => noseColourName({ tint: tintOf(lab), lightest: lab[0], dark });
  it.each([
    ['white', SURFACE.cleanCeramic], ['white', SURFACE.chalkWhite], ['light grey', SURFACE.grey], ['light tan', SURFACE.tan], ['brown', SURFACE.brown],
    ['black', SURFACE.soot], ['black', SURFACE.wetOil], ['yellow', SURFACE.glaze], ['reddish', SURFACE.rust], ['greenish', SURFACE.greenish],
    ['dark brown', SURFACE.darkBrown], ['dark grey', SURFACE.darkGrey],
  ] as const)('is %s for the design colour', (name, lab) => { expect(nameOf(lab)).toBe(name); });

  it('is light tan for the tan that screens agree on (CSS Color 4: tan is #d2b48c, CIELAB 75, 5, 24)', () => { expect(nameOf([74.98, 5.02, 24.43])).toBe('light tan'); });

  it('is black when most of the nose is dark, whatever colour shows beside it', () => { expect(nameOf(SURFACE.tan, 0.7)).toBe('black'); });
});
