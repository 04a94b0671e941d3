import { describe, expect, it } from 'vitest';
import { sharingGroups } from '../../../../core/domain/sharing.ts';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { sitesFor, type Site } from '../../../../core/inference/sites.ts';
import type { CauseScope } from '../../../../core/knowledge/types.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';

const four: Engine = { use: 'road', cylinders: 4, layout: 'inline' };
const twin: Engine = { use: 'aircraft', cylinders: 2, layout: 'flat', plugsPerCylinder: 2 };

const sites = (scope: CauseScope, engine: Engine, plugs: ReadingSheet['plugs'] = [{ cylinder: 1, position: engine.plugsPerCylinder === 2 ? 'upper' : 'only' }]): Site[] =>
  sitesFor(scope, sharingGroups(engine), evidenceOf(sheetOf({ engine, plugs })));
const cylindersOf = (all: readonly Site[]): (readonly number[])[] => all.map(({ cylinders }) => cylinders);

describe('where a cause can act', () => {
  it('is the engine once, every cylinder, every plug', () => {
    expect(sites('engine', twin)).toEqual([{ group: '', cylinders: [1, 2], plugs: ['1 upper', '1 lower', '2 upper', '2 lower'] }]);
    expect(sites('cylinder', twin)).toEqual([{ group: '', cylinders: [1], plugs: ['1 upper', '1 lower'] }, { group: '', cylinders: [2], plugs: ['2 upper', '2 lower'] }]);
    expect(sites('plug', twin)).toEqual([[1, '1 upper'], [1, '1 lower'], [2, '2 upper'], [2, '2 lower']].map(([n, key]) => ({ group: '', cylinders: [n], plugs: [key] })));
  });

  it('is every group of its kind that the record names, in the order of the cylinders', () => {
    const engine: Engine = { ...four, mixture: { kind: 'carburettor', groups: [[4, 1], [2, 3]] } };
    expect(sites('mixture group', engine)).toEqual([
      { group: 'carburettor of cylinders 4 and 1', cylinders: [1, 4], plugs: ['1', '4'] }, { group: 'carburettor of cylinders 2 and 3', cylinders: [2, 3], plugs: ['2', '3'] },
    ]);
    expect(cylindersOf(sites('neighbours', four))).toEqual([[1, 2], [2, 3], [3, 4]]);
    expect(sites('bank', four)).toEqual([]);
  });

  it('is no group that is the whole engine: its own causes say that already', () => {
    expect(sites('coil', { ...four, ignition: { kind: 'breaker points' } })).toEqual([]);
    expect(cylindersOf(sites('coil', { ...four, ignition: { kind: 'wasted spark' } }))).toEqual([[1, 4], [2, 3]]);
  });

  it('is the only group of a single cylinder', () => {
    expect(sites('mixture group', { use: 'road', cylinders: 1, mixture: { kind: 'carburettor', groups: [[1]] } })).toEqual(
      [{ group: 'carburettor of cylinder 1', cylinders: [1], plugs: ['1'] }],
    );
  });

  it('is an ignition set with just its own plugs, though it reaches every cylinder', () => {
    const left = { name: 'left magneto', plugs: [{ cylinder: 1, position: 'upper' as const }, { cylinder: 2, position: 'lower' as const }] };
    const all = { name: 'both', plugs: [1, 2].flatMap((cylinder) => [{ cylinder, position: 'upper' as const }, { cylinder, position: 'lower' as const }]) };
    const engine: Engine = { ...twin, ignition: { kind: 'magneto', sets: [left, all] } };
    expect(sites('ignition set', engine)).toEqual([{ group: 'left magneto', cylinders: [1, 2], plugs: ['1 upper', '2 lower'] }]);
  });

  it('reaches a plug whose place of two was not noted, wherever its cylinder belongs', () => {
    const engine: Engine = { ...twin, cylinders: 4, mixture: { kind: 'carburettor', groups: [[1, 2], [3, 4]] } };
    const [first] = sites('mixture group', engine, [{ cylinder: 1, position: 'unknown' }]);
    expect(first?.plugs).toContain('1 unknown');
  });

  it('is each cylinder’s own coil where the ignition of a road or racing engine is not recorded; others mostly share one', () => {
    // Common practice, no source.
    for (const use of ['road', 'competition'] as const) expect(cylindersOf(sites('coil', { ...four, use }))).toEqual([[1], [2], [3], [4]]);
    expect(sites('coil', { ...four, use: 'farm' })).toEqual([]);
    expect(cylindersOf(sites('mixture group', four))).toEqual([]);
  });
});

describe('places in a row', () => {
  it('are its ends and its middle, where several cylinders stand there', () => {
    expect(sites('ends', four)).toEqual([{ group: 'end cylinders 1 and 4', cylinders: [1, 4], plugs: ['1', '4'] }]);
    expect(sites('middle', four)).toEqual([{ group: 'middle cylinders 2 and 3', cylinders: [2, 3], plugs: ['2', '3'] }]);
    expect(sites('middle', { ...four, cylinders: 3 })).toEqual([]);
    expect(sites('ends', { ...four, cylinders: 2 })).toEqual([]);
  });

  it('are counted through all rows, by number', () => {
    expect(cylindersOf(sites('ends', { use: 'road', cylinders: 6, layout: 'vee' }))).toEqual([[1, 2, 5, 6]]);
    expect(cylindersOf(sites('ends', { use: 'road', cylinders: 12, layout: 'vee', banks: [[12, 3, 4, 5, 6, 10], [1, 2, 7, 8, 9, 11]] }))).toEqual([[1, 10, 11, 12]]);
  });
});

describe('the lower plugs', () => {
  it('are those at the bottom of their cylinders, as one place', () => {
    expect(sites('lower plugs', twin)).toEqual([{ group: 'lower plugs', cylinders: [1, 2], plugs: ['1 lower', '2 lower'] }]);
    expect(sites('lower plugs', twin, [{ cylinder: 1, position: 'front' }, { cylinder: 1, position: 'rear' }])).toEqual(
      [{ group: 'lower plugs', cylinders: [2], plugs: ['2 lower'] }],
    );
  });

  it('are nowhere where no plug stands below', () => {
    expect(sites('lower plugs', four)).toEqual([]);
  });
});
