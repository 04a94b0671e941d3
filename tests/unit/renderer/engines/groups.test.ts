import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movedInto, withoutEmpty, type Group } from '../../../../renderer/features/engines/groups.ts';
import { pairOf, renamedSets, straightSets } from '../../../../renderer/features/engines/twin-names.ts';
import { engine } from '../../../../shared/formats/engine.ts';

describe('groups of cylinders', () => {
  it('never hold a cylinder twice, however often cylinders are moved about', () => {
    const moves = fc.array(fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 6 }).map(String)), { maxLength: 40 });
    fc.assert(fc.property(moves, (list) => {
      const groups = list.reduce<readonly Group[]>((so, [into, key]) => movedInto(so, into, key), [{ members: [] }, { members: [] }, { members: [] }]);
      const members = groups.flatMap((group) => group.members);
      expect(new Set(members).size).toBe(members.length);
      expect(engine.safeParse({ use: 'road', cylinders: 6, mixture: { kind: 'carburettor', groups: withoutEmpty(groups).map((group) => group.members.map(Number)) } }).success).toBe(true);
    }));
  });

  it('let a cylinder go when it is chosen again in its own group', () => {
    expect(movedInto([{ members: ['1', '2'] }, { members: ['3'] }], 0, '2')).toEqual([{ members: ['1'] }, { members: ['3'] }]);
  });
});

describe('two plugs in each cylinder', () => {
  const crossed = [
    { name: 'left', plugs: [{ cylinder: 1, position: 'upper' as const }, { cylinder: 2, position: 'lower' as const }] },
    { name: 'right', plugs: [{ cylinder: 1, position: 'lower' as const }, { cylinder: 2, position: 'upper' as const }] },
  ];

  it('keep their crossed wiring when they are called otherwise', () => {
    expect(renamedSets(crossed, ['upper', 'lower'], ['front', 'rear']).map((set) => set.plugs.map((plug) => plug.position))).toEqual([['front', 'rear'], ['rear', 'front']]);
  });

  it('get their names from the sets that fire them', () => {
    const sets = straightSets(2, ['intake', 'exhaust'], String);
    expect(pairOf({ use: 'road', cylinders: 2, plugsPerCylinder: 2, ignition: { kind: 'magneto', sets } })).toEqual(['intake', 'exhaust']);
    expect(pairOf({ use: 'aircraft', cylinders: 2, plugsPerCylinder: 2 })).toEqual(['upper', 'lower']);
  });
});
