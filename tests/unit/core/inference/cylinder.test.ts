import { describe, expect, it } from 'vitest';
import { cylinderWeights, framing, ownCauses, quietInBase, stateWeights, switchedAt, type Frame, type Framing } from '../../../../core/inference/cylinder.ts';
import { evidenceOf, type Evidence } from '../../../../core/inference/evidence.ts';
import { networkFor, type Instance, type Network } from '../../../../core/inference/network.ts';
import { rosterOf } from '../../../../core/inference/roster.ts';
import { switchFor, type Switch } from '../../../../core/inference/states.ts';
import { dampingFor } from '../../../../core/inference/symptoms.ts';
import type { Cause } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition, knowledge, makes } from './small-knowledge.ts';

const grounds = { because: 'made up for a test', source: 'common practice' };
const low: Cause['shows'][number] = { finding: 'compression', is: 'low', strength: 'often', ...grounds };
const misfires: Cause['gives'][number] = { symptom: 'misfire', strength: 'usually', ...grounds };
const CONDITIONS = [condition('a', { leak: 0.01 }), condition('b', { leak: 0.02 })];

/** Two plugs a cylinder: a cause of the cylinder reaches both. */
const twin = (parts: Partial<ReadingSheet> = {}): ReadingSheet => sheetOf({
  engine: { use: 'aircraft', cylinders: 2, plugsPerCylinder: 2 },
  plugs: [1, 2].flatMap((cylinder) => (['upper', 'lower'] as const).map((position) => ({ cylinder, position }))), ...parts,
});
const compression = [{ cylinder: 1, compressionKPa: 1000 }, { cylinder: 2, compressionKPa: 1000 }];

type Laid = { readonly network: Network; readonly evidence: Evidence; readonly shared: readonly Switch[]; readonly framed: Framing };
function lay(causes: readonly Cause[], sheet: ReadingSheet): Laid {
  const evidence = evidenceOf(sheet);
  const network = networkFor(knowledge(CONDITIONS, causes), evidence);
  return { network, evidence, shared: network.shared.map((one) => switchFor(one, CONDITIONS)), framed: framing(CONDITIONS) };
}
const frameAt = ({ network, evidence, shared, framed }: Laid, c: number, also?: (one: Instance) => boolean): Frame => {
  const here = evidence.cylinders[c]!;
  return framed(shared.filter(({ instance }) => instance.cylinders.includes(here.cylinder)), here, network.local.get(here.cylinder) ?? [], also);
};
const ids = (list: readonly Instance[]): string[] => list.map(({ id }) => id);

describe('causes of one cylinder', () => {
  const causes = [
    cause('gap', { scope: 'plug', makes: [makes('b', 'often')] }), cause('oil', { scope: 'cylinder', makes: [makes('a', 'sometimes')] }),
    cause('valve', { scope: 'cylinder', shows: [low] }), cause('wire', { scope: 'cylinder', gives: [misfires] }),
  ];

  it('are switched one by one where they act on two plugs or mark what was found on the cylinder, else summed with their plug', () => {
    const { coupled, own } = frameAt(lay(causes, twin({ cylinderChecks: compression })), 0);
    expect(ids(coupled)).toEqual(['oil @ 1', 'valve @ 1']);
    // What makes nothing of any plug is summed with the first.
    expect(own.map(ids)).toEqual([['gap @ 1 upper', 'wire @ 1'], ['gap @ 1 lower']]);
  });

  it('are all summed with their plug where there is one plug and nothing was found', () => {
    const { coupled, own } = frameAt(lay(causes, sheetOf()), 1);
    expect(ids(coupled)).toEqual([]);
    expect(own.map(ids)).toEqual([['gap @ 2', 'oil @ 2', 'valve @ 2', 'wire @ 2']]);
  });

  it('are switched one by one too when somebody needs to see them apart', () => {
    const laid = lay(causes, sheetOf());
    const { coupled, own } = frameAt(laid, 0, ({ cause: { id } }) => id === 'gap');
    expect([ids(coupled), ...own.map(ids)]).toEqual([['gap @ 1'], ['oil @ 1', 'valve @ 1', 'wire @ 1']]);
    expect(frameAt(laid, 0).coupled).toEqual([]);
  });
});

describe('the shape of a cylinder', () => {
  const causes = [
    cause('choke', { prior: 'common', makes: [makes('a', 'usually')], moved: [{ by: { tag: 'choke sticking' }, how: 'found', ...grounds }] }),
    cause('rich', { makes: [makes('a', 'sometimes'), makes('b', 'usually')] }),
    cause('oil', { scope: 'cylinder', makes: [makes('b', 'often')] }),
  ];
  const choked = lay(causes, twin({ conditions: { tags: ['choke sticking'] } }));

  it('has the states of the shared causes that reach it before those of its coupled ones', () => {
    const { shape, coupled } = frameAt(choked, 0);
    // choke 1 state, rich 2 by its trait, oil 1.
    expect(shape.roster.states).toHaveLength(4);
    expect(shape.sharedStates).toBe(3);
    expect(shape.shared).toEqual(choked.shared);
    expect(shape.coupled.map(({ instance }) => instance)).toEqual(coupled);
    expect(ids(switchedAt({ shape, coupled, own: [] }))).toEqual(['choke', 'rich', 'oil @ 1']);
  });

  it('has of each plug how often a condition is absent before anything is switched: its leak, and a cause that was expected', () => {
    const { shape: { plugs } } = frameAt(choked, 0);
    for (const { absent, touches } of plugs) {
      expect([...absent]).toEqual([0.99 * (1 - 0.7), 0.98]);
      // choke gone: 1 / 0.3; rich: b 0.3, then with its trait a 0.3 too; oil: b 0.55.
      [1 / 0.3, 0.3, 0.09, 0.55].forEach((p, v) => { expect(touches.products[v]).toBeCloseTo(p, 12); });
    }
  });

  it('counts what was expected only on the plugs that it reaches', () => {
    const found = cause('bottom', { scope: 'lower plugs', makes: [makes('a', 'usually')], moved: [{ by: { tag: 'choke sticking' }, how: 'found', ...grounds }] });
    const laid = lay([found], twin({ conditions: { tags: ['choke sticking'] } }));
    const { shape: { plugs } } = frameAt(laid, 0);
    const keys = laid.evidence.cylinders[0]!.plugs.map(({ key }) => key);
    plugs.forEach(({ absent }, p) => { expect(absent[0]).toBeCloseTo(keys[p]!.includes('lower') ? 0.99 * 0.3 : 0.99, 12); });
  });

  it('is the very same for cylinders at which the same causes can act alike', () => {
    const [one, other] = [frameAt(choked, 0), frameAt(choked, 1)];
    expect(other.shape).toBe(one.shape);
    expect([ids(one.coupled), ids(other.coupled)]).toEqual([['oil @ 1'], ['oil @ 2']]);
  });

  it.each<[string, readonly Cause[], ReadingSheet]>([
    ['a prior of one plug', [cause('gap', { scope: 'plug', makes: [makes('a', 'often')], moved: [{ by: { fitted: 'colder' }, how: 'likelier', ...grounds }] })],
      twin({ plugs: [{ cylinder: 1, position: 'upper', fitted: { heatStepsFromSpecified: -1 } }] })],
    ['a shared cause that reaches one of them', [cause('jet', { scope: 'mixture group', makes: [makes('a', 'often')] })],
      sheetOf({ engine: { use: 'road', cylinders: 3, mixture: { kind: 'carburettor', groups: [[1], [2, 3]] } } })],
    ['what a cause marks of what was found', [cause('valve', { scope: 'cylinder', shows: [low] })], sheetOf({ cylinderChecks: compression.slice(0, 1) })],
  ])('is another by %s', (_what, list, sheet) => {
    const laid = lay(list, sheet);
    expect(frameAt(laid, 1).shape).not.toBe(frameAt(laid, 0).shape);
  });

  it('is another where the same cause acts on the other plug', () => {
    const laid = lay([cause('gap', { scope: 'plug', makes: [makes('a', 'often')] })], twin());
    const [upper, lower] = ['upper', 'lower'].map((position) => frameAt(laid, 0, ({ plugs }) => plugs[0]!.includes(position)));
    expect(lower?.shape).not.toBe(upper?.shape);
    const shared = (keys: readonly string[]): Frame => {
      const one: Instance = { ...laid.network.local.get(1)![0]!, cylinders: [1, 2], plugs: keys };
      return laid.framed([{ ...switchFor(one, CONDITIONS) }], laid.evidence.cylinders[0]!, []);
    };
    expect(shared(['1 upper']).shape).not.toBe(shared(['1 lower']).shape);
  });
});

describe('the weights of states', () => {
  const gives: Cause['gives'] = [misfires];
  const moved: Cause['moved'] = [{ by: { tag: 'choke sticking' }, how: 'found', ...grounds }];
  const causes = [
    cause('choke', { makes: [makes('a', 'sometimes')], gives, moved }), cause('rich', { makes: [makes('a', 'sometimes')], gives, prior: 'occasional' }),
    cause('oil', { scope: 'cylinder', makes: [makes('b', 'often')], gives }), cause('rust', { scope: 'cylinder', makes: [makes('b', 'often')], gives, moved }),
  ];
  const laid = lay(causes, twin({ conditions: { tags: ['choke sticking'] } }));
  const { shape } = frameAt(laid, 0);
  const calm = dampingFor(laid.network.knowledge, []);
  const quiet = dampingFor(laid.network.knowledge, ['misfire']);
  const [t, choke, rust] = [0.2 / 0.7, laid.network.shared[0]!.prior, laid.network.local.get(1)![1]!.prior];

  it('are their chances against that of the base state, and the quieter ones are likelier where no symptom was felt', () => {
    expect(choke).toBeGreaterThan(0.5);
    // choke: there without its trait is its base; gone, it is quiet for sure; with its trait it is as loud as before. rich: loud in both.
    const byHand = (q: number): number[] => [
      (1 - choke) / (choke * (1 - t)) / q, t / (1 - t), (0.015 * (1 - t)) / 0.985 * q, (0.015 * t) / 0.985 * q, 0.04 / 0.96 * q, (1 - rust) / rust / q,
    ];
    [1, 0.3].forEach((q, i) => {
      const weights = stateWeights(shape.roster, [calm, quiet][i]!);
      expect(weights).toHaveLength(6);
      byHand(q).forEach((w, v) => { expect(weights[v]).toBeCloseTo(w, 12); });
    });
  });

  it('of shared causes are left to the engine, all but what was felt on the cylinder alone', () => {
    const felt = cylinderWeights(shape, quiet, quiet);
    // In the base states choke and rust are there, each quiet in three cases of ten.
    expect(felt.base).toBeCloseTo(0.3 * 0.3, 12);
    [1 / 0.3, 1, 0.3, 0.3, (0.04 / 0.96) * 0.3, (1 - rust) / rust / 0.3].forEach((w, v) => { expect(felt.states[v]).toBeCloseTo(w, 12); });
    const elsewhere = cylinderWeights(shape, quiet, calm);
    expect(elsewhere.base).toBeCloseTo(0.3, 12);
    [1, 1, 1, 1, (0.04 / 0.96) * 0.3, (1 - rust) / rust / 0.3].forEach((w, v) => { expect(elsewhere.states[v]).toBeCloseTo(w, 12); });
  });

  it('leave out a cause that the damping does not know', () => {
    expect(quietInBase(shape.roster.switches, { ...quiet, causes: new Map() })).toBe(1);
    expect(quietInBase(rosterOf([]).switches, quiet)).toBe(1);
  });

  it('of an own cause are its prior, how quiet it is, and what it lets through', () => {
    const [oil] = ownCauses(laid.network.local.get(1)!, quiet, CONDITIONS);
    expect(oil?.prior).toBeCloseTo(0.04, 12);
    expect(oil?.quiet).toBeCloseTo(0.3, 12);
    expect(oil?.passes).toEqual([{ k: 1, factor: 1 - 0.45 }]);
  });
});
