import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plugKey, plugPlaces } from '../../../../core/domain/plugs.ts';
import { sharingGroups, type SharingGroup } from '../../../../core/domain/sharing.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import { anyEngine } from '../../../fixtures/any-engine.ts';

const of = (engine: Engine, kind: SharingGroup['kind']): readonly SharingGroup[] => sharingGroups(engine).filter((group) => group.kind === kind);
const cylindersOf = (engine: Engine, kind: SharingGroup['kind']): readonly (readonly number[])[] => of(engine, kind).map((group) => group.cylinders);
const wasted = (firingOrder: number[], more: Partial<Engine> = {}): Engine =>
  ({ use: 'road', cylinders: firingOrder.length, ignition: { kind: 'wasted spark' }, firingOrder, ...more });

describe('coils', () => {
  // Cylinders that reach top dead centre together; engine handbooks, from memory.
  it.each([
    [[1, 3, 4, 2], [[1, 4], [2, 3]]],
    [[1, 2, 4, 3], [[1, 4], [2, 3]]],
    [[1, 5, 3, 6, 2, 4], [[1, 6], [2, 5], [3, 4]]],
    [[1, 4, 2, 6, 3, 5], [[1, 6], [2, 5], [3, 4]]],
    [[1, 4, 3, 2], [[1, 3], [2, 4]]], // a flat four numbered along one side and then the other
    [[1, 8, 4, 3, 6, 5, 7, 2], [[1, 6], [2, 3], [4, 7], [5, 8]]], // a vee eight with odd numbers on one side
  ])('fires with wasted spark and order %j the pairs %j', (order, pairs) => {
    expect(cylindersOf(wasted(order), 'coil')).toEqual(pairs);
  });

  it('knows the pairs of a straight four, a straight six and a twin without their firing order', () => {
    const straight = (cylinders: number): Engine => ({ use: 'road', cylinders, layout: 'inline', ignition: { kind: 'wasted spark' } });
    expect(cylindersOf(straight(4), 'coil')).toEqual([[1, 4], [2, 3]]);
    expect(cylindersOf(straight(6), 'coil')).toEqual([[1, 6], [2, 5], [3, 4]]);
    expect(cylindersOf(straight(2), 'coil')).toEqual([[1, 2]]);
    expect(of(straight(4), 'coil').every((group) => group.derived)).toBe(true);
  });

  it('does not guess the pairs of a flat four, whose numbering differs between makers', () => {
    expect(cylindersOf({ use: 'road', cylinders: 4, layout: 'flat', ignition: { kind: 'wasted spark' } }, 'coil')).toEqual([]);
  });

  it('has no half-cycle pairs in an odd number of cylinders', () => {
    expect(cylindersOf(wasted([1, 2, 4, 5, 3]), 'coil')).toEqual([]);
  });

  it('takes the recorded pairs before any rule', () => {
    const recorded = wasted([1, 3, 4, 2], { ignition: { kind: 'wasted spark', groups: [[1, 2], [3, 4]] } });
    expect(of(recorded, 'coil').map(({ cylinders, derived }) => ({ cylinders, derived }))).toEqual([
      { cylinders: [1, 2], derived: false }, { cylinders: [3, 4], derived: false },
    ]);
  });

  it('gives every cylinder its own coil, or all the one behind the distributor', () => {
    expect(cylindersOf({ use: 'road', cylinders: 3, ignition: { kind: 'coil per cylinder' } }, 'coil')).toEqual([[1], [2], [3]]);
    expect(cylindersOf({ use: 'road', cylinders: 4, ignition: { kind: 'breaker points' } }, 'coil')).toEqual([[1, 2, 3, 4]]);
  });
});

describe('ignition sets', () => {
  it('never supposes that one magneto fires all upper plugs', () => {
    expect(cylindersOf({ use: 'aircraft', cylinders: 4, plugsPerCylinder: 2, ignition: { kind: 'magneto' } }, 'ignition set')).toEqual([]);
  });

  it('follows the recorded wiring plug by plug', () => {
    const crossed: Engine = {
      use: 'aircraft', cylinders: 2, plugsPerCylinder: 2,
      ignition: { kind: 'magneto', sets: [
        { name: 'left magneto', plugs: [{ cylinder: 1, position: 'upper' }, { cylinder: 2, position: 'lower' }] },
        { name: 'right magneto', plugs: [{ cylinder: 1, position: 'lower' }, { cylinder: 2, position: 'upper' }] },
      ] },
    };
    expect(of(crossed, 'ignition set').map(({ name, plugs }) => ({ name, plugs }))).toEqual([
      { name: 'left magneto', plugs: ['1 upper', '2 lower'] }, { name: 'right magneto', plugs: ['1 lower', '2 upper'] },
    ]);
  });
});

describe('neighbours', () => {
  it('stand side by side along a straight engine', () => {
    expect(cylindersOf({ use: 'road', cylinders: 4, layout: 'inline' }, 'neighbours')).toEqual([[1, 2], [2, 3], [3, 4]]);
  });

  it('stay within a bank of a vee', () => {
    expect(cylindersOf({ use: 'road', cylinders: 6, layout: 'vee' }, 'neighbours')).toEqual([[1, 3], [3, 5], [2, 4], [4, 6]]);
    expect(cylindersOf({ use: 'road', cylinders: 6, layout: 'vee', banks: [[1, 2, 3], [4, 5, 6]] }, 'neighbours')).toEqual([[1, 2], [2, 3], [4, 5], [5, 6]]);
  });

  it('share no gasket edge in a radial or an air-cooled aircraft engine', () => {
    expect(cylindersOf({ use: 'aircraft', cylinders: 7, layout: 'radial' }, 'neighbours')).toEqual([]);
    expect(cylindersOf({ use: 'aircraft', cylinders: 4, layout: 'flat', cooling: 'air' }, 'neighbours')).toEqual([]);
  });

  it('are the recorded pairs, each once whichever way round it was given', () => {
    expect(cylindersOf({ use: 'road', cylinders: 4, layout: 'inline', adjacent: [[3, 2], [2, 3], [1, 4]] }, 'neighbours')).toEqual([[2, 3], [1, 4]]);
  });
});

describe('banks', () => {
  it('part odd from even numbers in a vee and a flat engine', () => {
    expect(cylindersOf({ use: 'road', cylinders: 8, layout: 'vee' }, 'bank')).toEqual([[1, 3, 5, 7], [2, 4, 6, 8]]);
    expect(of({ use: 'road', cylinders: 8, layout: 'vee' }, 'bank').every((bank) => bank.derived)).toBe(true);
  });

  it('are not named where a single row is the whole engine', () => {
    expect(cylindersOf({ use: 'road', cylinders: 6, layout: 'inline' }, 'bank')).toEqual([]);
  });
});

describe('mixture groups', () => {
  it('come from the record and are never supposed', () => {
    expect(cylindersOf({ use: 'road', cylinders: 4, layout: 'inline', mixture: { kind: 'carburettor' } }, 'mixture group')).toEqual([]);
    const pair: Engine = { use: 'road', cylinders: 4, mixture: { kind: 'carburettor', groups: [[1, 2], [3, 4]] } };
    expect(of(pair, 'mixture group').map((group) => group.name)).toEqual(['carburettor of cylinders 1 and 2', 'carburettor of cylinders 3 and 4']);
  });
});

describe('any engine', () => {
  it('has groups of plugs that exist, none of them empty and none twice in a group', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      const keys = plugPlaces(engine).map((place) => plugKey(place.cylinder, place.position));
      for (const group of sharingGroups(engine)) {
        expect(group.cylinders.length).toBeGreaterThan(0);
        expect(new Set(group.plugs).size).toBe(group.plugs.length);
        expect(keys).toEqual(expect.arrayContaining([...group.plugs]));
        expect([...new Set(group.plugs.map((key) => Number.parseInt(key, 10)))].sort()).toEqual([...group.cylinders].sort());
      }
    }));
  });

  it('has every cylinder in exactly one bank, if it has banks, and in at most one group of the other kinds', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      const all = Array.from({ length: engine.cylinders }, (_, i) => i + 1);
      const banks = cylindersOf(engine, 'bank').flat();
      if (banks.length > 0) expect([...banks].sort((a, b) => a - b)).toEqual(all);
      for (const kind of ['mixture group', 'coil'] as const) {
        const members = cylindersOf(engine, kind).flat();
        expect(new Set(members).size).toBe(members.length);
      }
    }));
  });

  it('keeps what was recorded and marks the rest as derived', () => {
    fc.assert(fc.property(anyEngine, (engine) => {
      if (engine.ignition?.groups) expect(of(engine, 'coil').map((g) => [g.cylinders, g.derived])).toEqual(engine.ignition.groups.map((g) => [g, false]));
      else expect(of(engine, 'coil').every((group) => group.derived)).toBe(true);
      if (!engine.adjacent) expect(of(engine, 'neighbours').every((group) => group.derived)).toBe(true);
    }));
  });
});
