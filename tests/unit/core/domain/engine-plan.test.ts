import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { enginePlan, LEAST_SPACING, type PlanPlace } from '../../../../core/domain/engine-plan.ts';
import { plugKey, plugPlaces } from '../../../../core/domain/plugs.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import { LAYOUTS } from '../../../../shared/vocabulary/engine.ts';
import { anyEngine } from '../../../fixtures/any-engine.ts';

const distance = (a: PlanPlace, b: PlanPlace): number => Math.hypot(a.x - b.x, a.y - b.y);
const numbersFromLeft = (engine: Engine, bank: number): readonly number[] =>
  enginePlan(engine).places.filter((place) => place.bank === bank).sort((a, b) => a.x - b.x).map((place) => place.cylinder);
const place = (engine: Engine, cylinder: number, position: PlanPlace['position'] = 'only'): PlanPlace => {
  const found = enginePlan(engine).places.find((p) => p.cylinder === cylinder && p.position === position);
  if (!found) throw new Error(`no place for ${cylinder} ${position}`);
  return found;
};

const everyLayout = LAYOUTS.flatMap((layout) => Array.from({ length: layout === 'single' ? 1 : 18 }, (_, i) => i + 1).flatMap((cylinders) =>
  ([1, 2] as const).map((plugsPerCylinder): Engine => ({ use: 'aircraft', layout, cylinders, plugsPerCylinder }))));

describe('the ends of a row', () => {
  it('are the front at the left and the flywheel at the other end, where the engine has one there (common practice, no source)', () => {
    const rear = (engine: Partial<Engine>): string => enginePlan({ use: 'road', cylinders: 4, layout: 'inline', ...engine }).rear;
    expect(rear({})).toBe('flywheel');
    expect([rear({ use: 'aircraft', layout: 'flat' }), rear({ cycle: 'two-stroke', cylinders: 2 }), rear({ cylinders: 1, layout: 'single' })])
      .toEqual(['not known', 'not known', 'not known']);
  });
});

describe('the plan of any engine', () => {
  it('has a place for every plug exactly once', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      const keys = (places: readonly { cylinder: number; position: PlanPlace['position'] }[]): string[] => places.map((p) => plugKey(p.cylinder, p.position)).sort();
      expect(keys(enginePlan(engine).places)).toEqual(keys(plugPlaces(engine)));
    }));
  });

  it('never lets two plugs touch', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      const { places } = enginePlan(engine);
      places.forEach((a, i) => places.slice(i + 1).forEach((b) => expect(distance(a, b)).toBeGreaterThanOrEqual(LEAST_SPACING - 0.005)));
    }));
  });

  it('keeps every plug, whole, inside the frame', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      const { width, height, places } = enginePlan(engine);
      for (const { x, y } of places) {
        expect(Math.min(x, y, width - x, height - y)).toBeGreaterThanOrEqual(0.5);
      }
    }));
  });

  it('is the same every time and leaves the record as it was', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      const before = structuredClone(engine);
      expect(enginePlan(engine)).toEqual(enginePlan(before));
      expect(engine).toEqual(before);
    }));
  });
});

// 44 px is the target size of WCAG 2.1, success criterion 2.5.5.
it('leaves 44 pixels a plug on a 960 x 600 tray, whatever the layout, 1 to 18 cylinders with one or two plugs', () => {
  const tooSmall = everyLayout.filter((engine) => {
    const { width, height } = enginePlan(engine);
    return Math.min(960 / width, 600 / height) < 44;
  });
  expect(tooSmall).toEqual([]);
});

describe('numbering', () => {
  it('runs from the front along a straight engine', () => {
    expect(numbersFromLeft({ use: 'road', layout: 'inline', cylinders: 6 }, 0)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it('has odd cylinders on one side and even ones on the other in vee and flat engines', () => {
    const flat: Engine = { use: 'aircraft', layout: 'flat', cylinders: 6 };
    expect([numbersFromLeft(flat, 0), numbersFromLeft(flat, 1)]).toEqual([[1, 3, 5], [2, 4, 6]]);
    expect(place(flat, 1).y).toBeLessThan(place(flat, 2).y);
  });

  it('follows the banks of the record', () => {
    const vee: Engine = { use: 'road', layout: 'vee', cylinders: 8, banks: [[5, 6, 7, 8], [1, 2, 3, 4]] };
    expect([numbersFromLeft(vee, 0), numbersFromLeft(vee, 1)]).toEqual([[5, 6, 7, 8], [1, 2, 3, 4]]);
  });

  it('goes clockwise from the top of a radial', () => {
    const radial: Engine = { use: 'aircraft', layout: 'radial', cylinders: 9 };
    const { width } = enginePlan(radial);
    expect(place(radial, 1).x).toBeCloseTo(width / 2, 2);
    expect(Math.min(...enginePlan(radial).places.map((p) => p.y))).toBe(place(radial, 1).y);
    expect(place(radial, 2).x).toBeGreaterThan(width / 2);
    expect(place(radial, 9).x).toBeLessThan(width / 2);
  });

  it('puts odd cylinders of a double-row radial in the rear row and even ones in the front row', () => {
    // FAA-H-8083-32, Aviation Maintenance Technician Handbook - Powerplant, chapter 1, cylinder numbering: from memory.
    const doubleRow: Engine = { use: 'aircraft', layout: 'radial', cylinders: 14 };
    const banks = enginePlan(doubleRow).places.map((p) => [p.cylinder % 2, p.bank]);
    expect(banks.every(([odd, bank]) => (odd === 1) === (bank === 0))).toBe(true);
  });

  it('breaks a long engine of unknown layout into two lines in number order', () => {
    const unknown: Engine = { use: 'road', cylinders: 8 };
    expect([numbersFromLeft(unknown, 0), numbersFromLeft(unknown, 1)]).toEqual([[1, 2, 3, 4], [5, 6, 7, 8]]);
  });
});

describe('two plugs a cylinder', () => {
  it('lie upper plug inward and lower plug outward on both sides of a flat engine', () => {
    const flat: Engine = { use: 'aircraft', layout: 'flat', cylinders: 4, plugsPerCylinder: 2 };
    const middle = enginePlan(flat).height / 2;
    for (const n of [1, 2, 3, 4]) expect(Math.abs(place(flat, n, 'upper').y - middle)).toBeLessThan(Math.abs(place(flat, n, 'lower').y - middle));
  });

  it('lie one behind the other when they are called front and rear', () => {
    const sets = ['front', 'rear'].map((name) => ({ name, plugs: [1, 2, 3, 4].map((cylinder) => ({ cylinder, position: name as 'front' | 'rear' })) }));
    const inline: Engine = { use: 'road', layout: 'inline', cylinders: 4, plugsPerCylinder: 2, ignition: { kind: 'electronic distributor', sets } };
    expect(place(inline, 2, 'front').y).toBe(place(inline, 2, 'rear').y);
    expect(place(inline, 2, 'front').x).toBeLessThan(place(inline, 2, 'rear').x);
  });
});
