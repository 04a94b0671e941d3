import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labFromLinear } from '../../../../core/photo/lab.ts';
import { applied } from '../../../../core/photo/matrix.ts';
import { linearFromXyz, xyzFromLinear } from '../../../../core/photo/srgb.ts';
import { toCommonWhite } from '../../../../renderer/features/photos/light/common-white.tsx';
import checks from '../../../fixtures/colour-check-values.json' with { type: 'json' };
import { measure } from './photo.ts';

const on = (white: readonly number[]) => toCommonWhite({ measure: measure({ whiteReference: { kind: 'patch', taken: 'other photo', white: [...white] } }) });
const light = fc.double({ min: 0.1, max: 1, noNaN: true });

describe('a photo on the common white', () => {
  it('shows what is white in it as the white of the screen, whatever the lamp', () => {
    fc.assert(fc.property(fc.tuple(light, light, light), (white) => {
      applied(on(white)!, white).forEach((part) => expect(part).toBeCloseTo(1, 9));
    }));
  });

  it('shows every grey under that lamp without a hue', () => {
    fc.assert(fc.property(fc.tuple(light, light, light), light, ([red, green, blue], share) => {
      const [, a, b] = labFromLinear(applied(on([red, green, blue])!, [red * share, green * share, blue * share]));
      expect(Math.hypot(a, b)).toBeLessThan(1e-6);
    }));
  });

  it.each([
    ['D50', checks.srgb.whitesXYZ.D50, checks.bradford.D50toD65], ['illuminant A', checks.bradford.illuminantAXYZ, checks.bradford.AtoD65],
  ])(`adapts from %s to D65 by the published Bradford matrix [${checks.bradford.source}]`, (_, [x = 0, y = 0, z = 0], published) => {
    const matrix = on(linearFromXyz([x, y, z]))!;
    for (const rgb of [[0.2, 0.1, 0.05], [0.5, 0.4, 0.3], [0.05, 0.2, 0.1]] as const) {
      const wanted = published.map((row) => row.reduce((sum, weight, i) => sum + weight * xyzFromLinear(rgb)[i]!, 0));
      xyzFromLinear(applied(matrix, rgb)).forEach((part, i) => expect(part).toBeCloseTo(wanted[i]!, 5));
    }
  });

  it('is not claimed where no white is known', () => {
    expect(toCommonWhite({ measure: measure({ whiteReference: { kind: 'none' } }) })).toBeUndefined();
    expect(toCommonWhite({ measure: null })).toBeUndefined();
  });
});
