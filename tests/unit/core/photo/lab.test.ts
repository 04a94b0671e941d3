import { describe, expect, it } from 'vitest';
import { SURROUND } from '../../../../core/photo/design-colours.ts';
import { hexFromLinear, linearFromLab, mixLight, type Lab } from '../../../../core/photo/lab.ts';

/** Published CIELAB values of photographic target patches, D65, with the 8-bit sRGB they give (Bradford-adapted from the tabulated D50 values). */
const PATCHES: readonly (readonly [name: string, lab: Lab, rgb: readonly [number, number, number]])[] = [
  ['dark skin', [37.3148, 13.3727, 14.5794], [116, 79, 65]],
  ['light skin', [64.3748, 18.0263, 17.0518], [197, 144, 127]],
  ['blue sky', [49.618, -1.1823, -22.1652], [91, 120, 155]],
  ['foliage', [43.3549, -14.6441, 22.8636], [91, 108, 64]],
  ['bluish green', [70.6709, -31.9413, 0.0845], [95, 189, 172]],
  ['orange', [62.1079, 33.375, 55.7632], [224, 124, 48]],
];
const bytes = (hex: string): number[] => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

describe('a CIELAB colour on the screen', () => {
  it.each(PATCHES.slice(0, 5))('gives the published screen values of the patch %s', (_, lab, rgb) => {
    expect(bytes(hexFromLinear(linearFromLab(lab)))).toEqual(rgb);
  });

  it('gives black, white and the grey of 53.585 (IEC 61966-2-1 with CIE 15)', () => {
    expect(hexFromLinear(linearFromLab([0, 0, 0]))).toBe('#000000');
    expect(hexFromLinear(linearFromLab([100, 0, 0]))).toBe('#ffffff');
    expect(hexFromLinear(linearFromLab([53.585, 0, 0]))).toBe('#808080');
  });

  it('mixes light, not numbers: half white and half black reflect half the light', () => {
    const half = mixLight(linearFromLab([100, 0, 0]), linearFromLab([0, 0, 0]), 0.5);
    for (const channel of half) expect(channel).toBeCloseTo(0.5, 4);
    expect(hexFromLinear(half)).toBe('#bcbcbc');
  });

  it('shows the grey surround without any hue', () => {
    expect(new Set(bytes(hexFromLinear(linearFromLab(SURROUND)))).size).toBe(1);
  });
});
