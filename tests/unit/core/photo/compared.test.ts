import { describe, expect, it } from 'vitest';
import { compared, type Comparable } from '../../../../core/photo/compared.ts';
import { ciede2000 } from '../../../../core/photo/ciede2000.ts';
import type { Lab } from '../../../../core/photo/lab.ts';
import type { PhotoMeasure } from '../../../../shared/formats/photo-measure.v1.ts';
import { measureTip } from '../../../../core/photo/measure-tip.ts';
import { SURFACE } from '../../../../core/photo/design-colours.ts';
import { drawnScene } from '../../../fixtures/photo/drawn-plug.ts';
import { pictureOf } from '../../../fixtures/photo/picture-of.ts';
import { measure } from '../../renderer/photos/photo.ts';

const seen = (changed: Partial<PhotoMeasure> = {}, about: Partial<Comparable> = {}): Comparable => ({ measure: measure(changed), colour: 'yes', view: 'end-on', camera: null, ...about });
const nose = (lab: Lab) => ({ regions: { nose: { lab: [...lab], spread: [4, 1, 2], pixels: 9000 } } });
const metal: Pick<PhotoMeasure, 'whiteReference'> = { whiteReference: { kind: 'estimated', taken: 'bare metal', white: [0.8, 0.8, 0.8] } };
const difference = (before: Comparable, after: Comparable) => compared(before, after).parts.find(({ part }) => part === 'nose');

describe('two photos of one plug compared', () => {
  it('show no change where the nose is the same, also when it lies in deeper shadow', () => {
    const shadow = 0.5;
    const [l, a, b] = [70, 6, 18];
    const shaded: Lab = [(l + 16) * Math.cbrt(shadow) - 16, a * Math.cbrt(shadow), b * Math.cbrt(shadow)];
    expect(difference(seen(nose([l, a, b])), seen(nose(shaded)))).toMatchObject({ changed: false });
    expect(difference(seen(nose([l, a, b])), seen(nose(shaded)))?.difference).toBeCloseTo(0, 9);
  });

  it('give the difference of hue and chroma as CIEDE2000 at one lightness (ISO/CIE 11664-6)', () => {
    const [tan, rust]: readonly [Lab, Lab] = [[65, 6, 18], [65, 26, 31]];
    const found = difference(seen(nose(tan)), seen(nose(rust)));
    expect(found?.difference).toBeCloseTo(ciede2000(tan, rust), 9);
    expect(found?.changed).toBe(true);
  });

  it('are less sure without a card, and less again with another camera', () => {
    const card = difference(seen(), seen())!.uncertainty;
    const one = difference(seen(), seen(metal))!.uncertainty;
    const none = difference(seen(metal), seen(metal))!.uncertainty;
    const other = difference(seen({}, { camera: 'A 1' }), seen({}, { camera: 'B 2' }))!.uncertainty;
    expect([card < one, one < none, card < other]).toEqual([true, true, true]);
    expect(card).toBeCloseTo(3.7, 9);
  });

  it('tell of lightness only where both have a card', () => {
    expect(difference(seen(nose([70, 6, 18])), seen(nose([50, 4.6, 13.8])))?.lightness).toBeCloseTo(-20, 9);
    expect(difference(seen(), seen(metal))).not.toHaveProperty('lightness');
  });

  it.each<[string, Comparable]>([
    ['no white', seen({ whiteReference: { kind: 'none' } })], ['no colour', seen({}, { colour: 'greyscale' })], ['not measured', seen({}, { measure: null })],
    ['mixed light', seen({ light: { clipped: 0, dark: 0, mixed: 9 } })], ['overexposed', seen({ light: { clipped: 0.3, dark: 0 } })],
    ['no plug found', seen({ geometry: { confidence: 0.3 } })], ['other view', seen({}, { view: 'side' })],
  ])('are not comparable in colour: %s', (hindrance, photo) => {
    for (const found of [compared(seen(), photo), compared(photo, seen())]) expect([found.hindrances, found.parts]).toEqual([[hindrance], []]);
  });

  it('compare dark coverage without colour, and call it changed beyond the worst error of the measuring', () => {
    const grey = (darkCoverage: number): Comparable => seen({ darkCoverage }, { colour: 'greyscale' });
    expect(compared(grey(0.1), grey(0.25)).coverage).toEqual({ before: 0.1, after: 0.25, changed: false });
    expect(compared(grey(0.1), grey(0.8)).coverage).toMatchObject({ changed: true });
  });

  it('stay below what is told as uncertain for 9 of 10 plugs that did not change, drawn under two lamps with a card', () => {
    const colours = [SURFACE.tan, SURFACE.brown, SURFACE.grey, SURFACE.glaze, SURFACE.rust];
    const found = colours.flatMap((colour, i) => [100, 200].map((seed) => {
      const taken = (light: 'A' | 'D65', angle: number): Comparable => {
        const scene = drawnScene(seed + i, colour);
        const turned = { ...scene, strap: { ...scene.strap, angle: scene.strap.angle + angle } };
        const image = pictureOf(turned, { light, balance: 0.7, exposure: 0.8, noise: 0.006, vivid: false });
        const { tip } = measureTip(image, { white: { kind: 'patch', box: scene.card }, colour: true });
        return seen({ regions: { nose: { lab: [...tip!.regions.nose!.lab], spread: [0, 0, 0], pixels: 1 } } });
      };
      return difference(taken('D65', 0), taken('A', 0.4))!;
    }));
    const inside = found.filter((one) => one.difference < one.uncertainty).length;
    expect(inside).toBeGreaterThanOrEqual(9);
    expect(found.filter(({ changed }) => changed).length).toBeLessThanOrEqual(1);
  });
});
