import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cssMatrix, placed, seenThrough, type Placement } from '../../../../renderer/features/photos/viewer/placement.ts';
import { centredOn, fitted, panned, toPicture, toScreen, zoomed, type View } from '../../../../renderer/features/photos/viewer/view.ts';

const length = fc.integer({ min: 200, max: 12_000 });
const picture = fc.record({ width: length, height: length });
const room = fc.record({ width: fc.integer({ min: 200, max: 2500 }), height: fc.integer({ min: 200, max: 1500 }) });
const near = (value: number, other: number): void => expect(Math.abs(value - other)).toBeLessThan(1e-6 * Math.max(1, Math.abs(other)));

describe('a picture on the screen', () => {
  it('is seen whole at first, as large as the room allows', () => {
    fc.assert(fc.property(picture, room, (one, space) => {
      const view = fitted(one, space);
      const [from, to] = [toScreen(view, { x: 0, y: 0 }), toScreen(view, { x: one.width, y: one.height })];
      expect(Math.min(from.x, from.y)).toBeGreaterThanOrEqual(-1e-6);
      expect(to.x).toBeLessThanOrEqual(space.width + 1e-6);
      expect(to.y).toBeLessThanOrEqual(space.height + 1e-6);
      near(Math.max((to.x - from.x) / space.width, (to.y - from.y) / space.height), 1);
    }));
  });

  it('keeps what lies under the pointer while the wheel brings it nearer, once it fills the room', () => {
    const [one, space] = [{ width: 4000, height: 3000 }, { width: 800, height: 600 }];
    fc.assert(fc.property(fc.double({ min: 1.01, max: 4, noNaN: true }), fc.integer({ min: 0, max: 800 }), fc.integer({ min: 0, max: 600 }), (factor, x, y) => {
      const near2 = zoomed(fitted(one, space), 2, { x: 400, y: 300 }, one, space);
      const under = toPicture(near2, { x, y });
      const after = toScreen(zoomed(near2, factor, { x, y }, one, space), under);
      near(after.x, x);
      near(after.y, y);
    }));
  });

  it('cannot be pushed out of the room, nor made smaller than the room', () => {
    const far = fc.integer({ min: -5000, max: 5000 });
    const moves = fc.array(fc.tuple(fc.double({ min: 0.1, max: 10, noNaN: true }), far, far), { maxLength: 12 });
    const outside = (low: number, high: number, most: number): boolean =>
      (high - low > most ? low > 1e-6 || high < most - 1e-6 : low < -1e-6 || high > most + 1e-6);
    fc.assert(fc.property(picture, room, moves, (one, space, steps) => {
      const step = (at: View, [factor, dx, dy]: (typeof steps)[number]): View => panned(zoomed(at, factor, { x: 10, y: 10 }, one, space), dx, dy, one, space);
      const view = steps.reduce(step, fitted(one, space));
      const [from, to] = [toScreen(view, { x: 0, y: 0 }), toScreen(view, { x: one.width, y: one.height })];
      expect(outside(from.x, to.x, space.width)).toBe(false);
      expect(outside(from.y, to.y, space.height)).toBe(false);
      expect(view.scale).toBeGreaterThanOrEqual(fitted(one, space).scale - 1e-9);
    }));
  });

  it('can be brought to a place of it', () => {
    const [one, space] = [{ width: 4000, height: 3000 }, { width: 800, height: 600 }];
    const view = centredOn({ x: 2000, y: 1500 }, 300, one, space);
    expect(toScreen(view, { x: 2000, y: 1500 })).toEqual({ x: 400, y: 300 });
    expect(view.scale).toBe(1);
  });
});

describe('a picture laid on another', () => {
  const placement = fc.record({
    scale: fc.double({ min: 0.2, max: 5, noNaN: true }), turn: fc.double({ min: -3, max: 3, noNaN: true }),
    x: fc.integer({ min: -900, max: 900 }), y: fc.integer({ min: -900, max: 900 }),
  });

  it('is seen where the view shows the place it is laid on', () => {
    fc.assert(fc.property(placement, fc.integer({ min: 0, max: 999 }), fc.integer({ min: 0, max: 999 }), (inner: Placement, x, y) => {
      const view: View = { scale: 0.4, x: 31, y: -12 };
      const [once, twice] = [placed(seenThrough(view, inner), { x, y }), toScreen(view, placed(inner, { x, y }))];
      near(once.x, twice.x);
      near(once.y, twice.y);
    }));
  });

  it('is given to CSS as its matrix: columns of a quarter turn clockwise, from the CSS Transforms standard', () => {
    const numbers = cssMatrix({ scale: 2, turn: Math.PI / 2, x: 5, y: 6 }).match(/-?[\d.e-]+/g)?.map(Number) ?? [];
    [0, 2, -2, 0, 5, 6].forEach((wanted, i) => expect(numbers[i]).toBeCloseTo(wanted, 12));
  });
});
