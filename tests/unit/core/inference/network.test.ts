import { describe, expect, it } from 'vitest';
import { evidenceOf } from '../../../../core/inference/evidence.ts';
import { networkFor, standsAs, type Instance, type Network } from '../../../../core/inference/network.ts';
import type { Move, Prior } from '../../../../core/knowledge/strengths.ts';
import type { Cause, Circumstance } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, knowledge } from './small-knowledge.ts';

const lay = (causes: readonly Cause[], sheet: ReadingSheet): Network => networkFor(knowledge([], causes), evidenceOf(sheet));
const instancesOf = ({ shared, local }: Network): Instance[] => [...shared, ...[...local.values()].flat()];
const idsOf = (causes: readonly Cause[], sheet: ReadingSheet): string[] => instancesOf(lay(causes, sheet)).map(({ id }) => id);

const moved = (by: Circumstance, how: Move): Cause['moved'][number] => ({ by, how, because: 'made up for a test', source: 'S16' });
const choked = sheetOf({ conditions: { tags: ['choke sticking'], duty: 'town' } });
/** The prior after moves, from the odds by hand. Priors: common 0.04. */
const after = (...factors: number[]): number => {
  const odds = factors.reduce((o, f) => o * f, 0.04 / 0.96);
  return odds / (1 + odds);
};
const priorOf = (scope: Cause['scope'], moves: Cause['moved'], sheet: ReadingSheet, prior: Prior = 'common'): number[] =>
  instancesOf(lay([cause('rich', { scope, moved: moves, prior })], sheet)).map((instance) => instance.prior);

describe('the prior of a cause', () => {
  it('is that of its word where nothing was noted', () => {
    const [prior] = priorOf('engine', [moved({ tag: 'choke sticking' }, 'found')], sheetOf());
    expect(prior).toBeCloseTo(0.04, 12);
  });

  it('has its odds multiplied by each circumstance that holds', () => {
    // Factors: found 300, likelier 3, less likely 1/3.
    expect(priorOf('engine', [moved({ tag: 'choke sticking' }, 'likelier')], choked)[0]).toBeCloseTo(after(3), 12);
    expect(priorOf('engine', [moved({ tag: 'choke sticking' }, 'likelier'), moved({ duty: ['town'] }, 'less likely')], choked)[0]).toBeCloseTo(after(3, 1 / 3), 12);
    expect(priorOf('engine', [moved({ duty: ['full load'] }, 'likelier')], choked)[0]).toBeCloseTo(after(), 12);
  });

  it('shares a circumstance of the engine among its places, at most by its square root, and what speaks against it with none', () => {
    // Four cylinders: found 300 / 4; much likelier 8 / √8; less likely stays 1/3 for each.
    for (const prior of priorOf('cylinder', [moved({ tag: 'choke sticking' }, 'found')], choked)) expect(prior).toBeCloseTo(after(300 / 4), 12);
    for (const prior of priorOf('cylinder', [moved({ tag: 'choke sticking' }, 'much likelier')], choked)) expect(prior).toBeCloseTo(after(8 / Math.sqrt(8)), 12);
    for (const prior of priorOf('cylinder', [moved({ tag: 'choke sticking' }, 'less likely')], choked)) expect(prior).toBeCloseTo(after(1 / 3), 12);
  });

  it('moves whole at the very plug that a circumstance speaks of, and nowhere else', () => {
    const sheet = sheetOf({ plugs: [{ cylinder: 1 }, { cylinder: 2, fitted: { heatStepsFromSpecified: -1 } }] });
    const priors = priorOf('plug', [moved({ fitted: 'colder' }, 'likelier')], sheet);
    [after(), after(3), after(), after()].forEach((p, i) => expect(priors[i]).toBeCloseTo(p, 12));
  });

  it('is never certain either way', () => {
    const found = moved({ tag: 'choke sticking' }, 'found');
    expect(priorOf('engine', [found, found], choked)).toEqual([0.98]);
    const out = moved({ tag: 'choke sticking' }, 'ruled out');
    expect(priorOf('engine', [out, out], choked, 'very rare')).toEqual([1e-7]);
  });

  it('is less for a cause that was put right since the reading before', () => {
    // Trust in a cure of the mixture: usually 0.7, new plugs.
    const sheet = sheetOf({ conditions: { tags: ['plugs new'] }, since: { reading: { date: '2026-02-14', plugs: [{ cylinder: 1 }] }, done: [{ cause: 'rich' }] } });
    const [instance] = instancesOf(lay([cause('rich', {})], sheet));
    expect(instance?.prior).toBeCloseTo(after(0.3), 12);
    expect(instance?.moves).toEqual([expect.objectContaining({ words: 'put right since the reading of 2026-02-14', about: 'since.done' })]);
    expect(instance?.moves[0]).not.toHaveProperty('line');
  });
});

describe('a circumstance that moved a cause', () => {
  it('is told in words, with its line of the knowledge, reason and source', () => {
    const causes = [cause('rich', { moved: [moved({ tag: 'choke sticking' }, 'likelier'), { ...moved({ duty: ['idle', 'town'] }, 'likelier'), addedBy: 'Ann' }] })];
    const [instance] = instancesOf(lay(causes, choked));
    expect(instance?.moves).toEqual([
      expect.objectContaining({ words: 'choke sticking', factor: 3, line: 'rich moved by choke sticking', about: 'conditions', because: 'made up for a test', source: 'S16' }),
      expect.objectContaining({ words: 'duty: idle or town', line: 'rich moved by duty idle or town', addedBy: 'Ann' }),
    ]);
  });
});

describe('a cause laid over an engine', () => {
  const twin = sheetOf({
    engine: { use: 'aircraft', cylinders: 2, plugsPerCylinder: 2, mixture: { kind: 'carburettor' }, ignition: { kind: 'magneto' } }, plugs: [{ cylinder: 1, position: 'upper' }],
  });
  const grouped = sheetOf({ engine: { use: 'road', cylinders: 4, mixture: { kind: 'carburettor', groups: [[1, 2], [3], [4]] } } });

  it('is called by its place: nothing for the engine, the group, the cylinder or the plug', () => {
    expect(idsOf([cause('rich', {})], twin)).toEqual(['rich']);
    expect(idsOf([cause('rings', { scope: 'cylinder' })], twin)).toEqual(['rings @ 1', 'rings @ 2']);
    expect(idsOf([cause('gap', { scope: 'plug' })], twin)).toEqual(['gap @ 1 lower', 'gap @ 1 upper', 'gap @ 2 lower', 'gap @ 2 upper']);
    expect(idsOf([cause('jet', { scope: 'mixture group' })], grouped)).toEqual(
      ['jet @ carburettor of cylinders 1 and 2', 'jet @ carburettor of cylinder 3', 'jet @ carburettor of cylinder 4'],
    );
    expect(idsOf([cause('rich', {})], sheetOf({ engine: { use: 'road', cylinders: 1 } }))).toEqual(['rich @ 1']);
  });

  it('is shared where it reaches more than one cylinder, else it belongs to its own; both in order of their ids', () => {
    const { shared, local } = lay([cause('b', {}), cause('a', {}), cause('d', { scope: 'cylinder' }), cause('c', { scope: 'plug' }), cause('jet', { scope: 'mixture group' })], grouped);
    expect(shared.map(({ id }) => id)).toEqual(['a', 'b', 'jet @ carburettor of cylinders 1 and 2']);
    expect([...local].map(([n, all]) => [n, all.map(({ id }) => id)])).toEqual([
      [1, ['c @ 1', 'd @ 1']], [2, ['c @ 2', 'd @ 2']],
      [3, ['c @ 3', 'd @ 3', 'jet @ carburettor of cylinder 3']], [4, ['c @ 4', 'd @ 4', 'jet @ carburettor of cylinder 4']],
    ]);
    expect(shared[2]).toMatchObject({ group: 'carburettor of cylinders 1 and 2', cylinders: [1, 2], plugs: ['1', '2'] });
  });

  it('is not there where its part is not', () => {
    expect(idsOf([cause('magneto', { needs: { ignition: ['magneto'] } }), cause('coil', { needs: { ignition: ['breaker points'] } })], twin)).toEqual(['magneto']);
  });
});

describe('two readings of an engine', () => {
  const kb = knowledge([], [
    cause('rich', { moved: [moved({ tag: 'choke sticking' }, 'likelier')] }), cause('gap', { scope: 'plug', moved: [moved({ fitted: 'colder' }, 'likelier')] }),
  ]);
  const read = (parts: Partial<ReadingSheet> = {}): Network => networkFor(kb, evidenceOf(sheetOf(parts)));
  const spark = (value: 'weak' | 'strong', cylinder = 1): Partial<ReadingSheet> => ({ cylinderChecks: [{ cylinder, spark: value }] });

  it('stand alike whatever was seen on the plugs, and whatever the same checks found', () => {
    expect(standsAs(read({ plugs: [{ cylinder: 1, tip: { deposit: 'dry soot' } }] }), read())).toBe(true);
    expect(standsAs(read(spark('weak')), read(spark('strong')))).toBe(true);
  });

  it('do not where other checks were made, or on other cylinders', () => {
    expect(standsAs(read(spark('weak')), read())).toBe(false);
    expect(standsAs(read(spark('weak')), read(spark('weak', 2)))).toBe(false);
    expect(standsAs(read(spark('weak')), read({ cylinderChecks: [{ cylinder: 1, borescope: 'clean' }] }))).toBe(false);
  });

  it('do not where a cause is likelier in one of them, in the engine or on one plug', () => {
    expect(standsAs(read(), read({ conditions: { tags: ['choke sticking'] } }))).toBe(false);
    expect(standsAs(read(), read({ plugs: [{ cylinder: 3, fitted: { heatStepsFromSpecified: -1 } }] }))).toBe(false);
  });

  it('do not on another engine, or by other knowledge', () => {
    expect(standsAs(read(), read({ engine: { use: 'road', cylinders: 3 } }))).toBe(false);
    const twin = { use: 'road', cylinders: 4, plugsPerCylinder: 2 } as const;
    expect(standsAs(read({ engine: twin, plugs: [{ cylinder: 1, position: 'unknown' }] }), read({ engine: twin, plugs: [{ cylinder: 1, position: 'upper' }] }))).toBe(false);
    expect(standsAs(read(), lay([cause('rich', {}), cause('gap', { scope: 'plug' })], sheetOf()))).toBe(false);
    expect(standsAs(lay([], sheetOf()), lay([cause('rich', {})], sheetOf()))).toBe(false);
  });
});
