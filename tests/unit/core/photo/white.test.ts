import { describe, expect, it } from 'vitest';
import { labOfPixels } from '../../../../core/photo/lab-pixels.ts';
import { linearFromLab, type Lab } from '../../../../core/photo/lab.ts';
import { byteOf } from '../../../../core/photo/srgb.ts';
import { tintOf } from '../../../../core/photo/tint.ts';
import { balanceOnMetal, balanceOnPatch, type Balance } from '../../../../core/photo/white.ts';

type Bytes = readonly [number, number, number];
const flat = ([red, green, blue]: Bytes) => ({ width: 40, height: 40, rgb: Uint8Array.from({ length: 4800 }, (_, i) => [red, green, blue][i % 3] ?? 0) });
const bytesOf = (lab: Lab): Bytes => linearFromLab(lab).map(byteOf) as unknown as Bytes;
const ALL = { x: 0, y: 0, w: 40, h: 40 };

const seen = (balance: Balance, colour: Bytes): number[] => {
  const { l, a, b } = labOfPixels(flat(colour), Int32Array.of(0), balance);
  return [l[0] ?? NaN, a[0] ?? NaN, b[0] ?? NaN];
};
const balanceOn = (colour: Bytes): Balance => {
  const balance = balanceOnPatch(flat(colour), ALL);
  if (typeof balance === 'string') throw new Error(balance);
  return balance;
};

describe('the white of a picture', () => {
  it('makes a card grey whatever the lamp: L* 51 for a grey card, 93 for paper, no hue', () => {
    for (const lamp of [[150, 118, 70], [118, 120, 122], [90, 110, 160]] as const) {
      const [l = 0, a = 1, b = 1] = seen(balanceOn(lamp), lamp);
      expect(l).toBeCloseTo(51, 1);
      expect(Math.hypot(a, b)).toBeLessThan(0.05);
    }
    expect(balanceOn([118, 120, 122]).reference).toEqual({ kind: 'patch', taken: 'grey card' });
    expect(balanceOn([228, 230, 226]).reference).toEqual({ kind: 'patch', taken: 'white paper' });
    expect(seen(balanceOn([228, 230, 226]), [228, 230, 226])[0]).toBeCloseTo(93, 1);
  });

  it('leaves colours alone that were right already', () => {
    const balance = balanceOn(bytesOf([51, 0, 0]));
    const tan: Lab = [70, 6, 18];
    seen(balance, bytesOf(tan)).forEach((value, i) => { expect(Math.abs(value - (tan[i] ?? NaN))).toBeLessThan(0.6); });
  });

  it('takes bare metal for steel, L* 60, a* 0.6, b* 3 (estimate), and the camera at its word without any', () => {
    const steel = balanceOnMetal([linearFromLab([60, 0.6, 3])]);
    const { u, v } = tintOf(seen(steel, bytesOf([60, 0.6, 3])) as unknown as Lab);
    expect(steel.reference).toEqual({ kind: 'estimated', taken: 'bare metal' });
    expect(u).toBeCloseTo(0.6 / 76, 2);
    expect(v).toBeCloseTo(3 / 76, 2);
    expect(balanceOnMetal([[0.001, 0.001, 0.001]]).reference).toEqual({ kind: 'none' });
  });

  it.each([
    ['overexposed', [255, 254, 250], ALL, 'clipped'], ['nearly black', [12, 12, 12], ALL, 'too dark'], ['of a few pixels', [120, 120, 120], { x: 3, y: 3, w: 5, h: 5 }, 'too small'],
  ] as const)('does not stand on an area that is %s', (_, colour, box, fault) => { expect(balanceOnPatch(flat(colour), box)).toBe(fault); });
});
