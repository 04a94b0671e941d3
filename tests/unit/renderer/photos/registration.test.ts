import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { registration } from '../../../../renderer/features/photos/compare/registration.ts';
import { placed } from '../../../../renderer/features/photos/viewer/placement.ts';

type Point = { readonly x: number; readonly y: number };
type Plug = { readonly bore: Point & { readonly r: number }; readonly groundElectrode: { readonly foot: Point; readonly end: Point; readonly width: number } };

/** A plug of any size, place and turn in a picture. */
const plug = fc.record({
  x: fc.integer({ min: 500, max: 3500 }), y: fc.integer({ min: 500, max: 2500 }), r: fc.integer({ min: 100, max: 900 }),
  angle: fc.double({ min: -3, max: 3, noNaN: true }),
}).map(({ x, y, r, angle }): Plug => {
  const along = (radii: number): Point => ({ x: x + radii * r * Math.cos(angle), y: y + radii * r * Math.sin(angle) });
  return { bore: { x, y, r }, groundElectrode: { foot: along(1.2), end: along(-0.2), width: r / 2 } };
});

const expectNear = (one: Point, other: Point): void => expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeLessThan(1e-6);

describe('two photos of one plug', () => {
  it('lie on each other with bore on bore and ground electrode on ground electrode, however each was taken', () => {
    fc.assert(fc.property(plug, plug, (earlier, later) => {
      const onto = registration(earlier, later)!;
      expectNear(placed(onto, later.bore), earlier.bore);
      expectNear(placed(onto, later.groundElectrode.foot), earlier.groundElectrode.foot);
      expectNear(placed(onto, later.groundElectrode.end), earlier.groundElectrode.end);
      expect(Math.abs(onto.turn)).toBeLessThanOrEqual(Math.PI + 1e-9);
    }));
  });

  it('are turned by hand around the middle of the plug', () => {
    fc.assert(fc.property(plug, plug, fc.double({ min: -0.8, max: 0.8, noNaN: true }), (earlier, later, nudge) => {
      const [found, nudged] = [registration(earlier, later)!, registration(earlier, later, nudge)!];
      expectNear(placed(nudged, later.bore), earlier.bore);
      expect(nudged.turn - found.turn).toBeCloseTo(nudge, 9);
    }));
  });

  it('are not turned where one shows no ground electrode, and are laid by the shell where one shows no bore', () => {
    const shell = { x: 100, y: 100, r: 50 };
    expect(registration({ shell, bore: { x: 100, y: 100, r: 30 } }, { shell: { x: 300, y: 400, r: 100 } })).toEqual({ scale: 0.5, turn: 0, x: -50, y: -100 });
  });

  it('cannot be laid on each other where they share no ring', () => {
    expect(registration({ shell: { x: 1, y: 1, r: 1 } }, { nose: { x: 1, y: 1, r: 1 } })).toBeUndefined();
  });
});
