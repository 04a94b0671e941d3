import { describe, expect, it } from 'vitest';
import { darkness } from '../../../../core/photo/darkness.ts';
import { SURFACE } from '../../../../core/photo/design-colours.ts';
import { labFromLinear, linearFromLab, underLight, type Lab } from '../../../../core/photo/lab.ts';

/** So many pixels of each colour. */
function surface(parts: readonly (readonly [Lab, number])[]) {
  const all = parts.flatMap(([lab, count]) => Array.from({ length: count }, () => lab));
  const channel = (k: 0 | 1 | 2): Float32Array => Float32Array.from(all, (lab) => lab[k]);
  return { l: channel(0), a: channel(1), b: channel(2), clipped: new Uint8Array(all.length) };
}
const shaded = (lab: Lab, light: number): Lab => labFromLinear(underLight(linearFromLab(lab), light));

describe('the dark share of a surface', () => {
  it.each([['tan', SURFACE.tan], ['white', SURFACE.chalkWhite], ['brown', SURFACE.brown]] as const)('is what soot covers of a %s nose', (_, lab) => {
    expect(darkness(surface([[lab, 70], [SURFACE.soot, 30]])).coverage).toBeCloseTo(0.3, 9);
  });
  it.each([['tan', SURFACE.tan], ['grey', SURFACE.grey], ['rust', SURFACE.rust]] as const)('does not count shadow: a %s nose half in a third of the light', (_, lab) => {
    expect(darkness(surface([[lab, 50], [shaded(lab, 0.33), 50]])).coverage).toBe(0);
  });
  it('is all of a sooty nose and nothing of what was not seen', () => {
    expect(darkness(surface([[SURFACE.soot, 50], [shaded(SURFACE.soot, 0.6), 50]])).coverage).toBe(1);
    expect(darkness(surface([])).coverage).toBe(0);
  });
});
