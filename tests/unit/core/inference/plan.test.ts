import { describe, expect, it } from 'vitest';
import { planFor, type PlanGrounds } from '../../../../core/inference/plan.ts';
import type { Cause, Check, Contradiction } from '../../../../core/knowledge/types.ts';
import type { CauseFinding, Findings, NextCheck, PlugFindings } from '../../../../shared/formats/findings.v1.ts';
import type { Verdict } from '../../../../shared/vocabulary/verdicts.ts';
import { plainFindings } from '../../../fixtures/plain-findings.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition } from './small-knowledge.ts';

const plain = plainFindings(sheetOf());
const plug = (cylinder: number, verdict: Verdict, more: Partial<PlugFindings> = {}): PlugFindings => ({ ...plain.plugs[0]!, cylinder, verdict, ...more });
const finding = (id: string, belief: number, ...cylinders: number[]): CauseFinding => ({
  id, name: `Name of ${id}`, belief, scope: 'cylinder', cylinders, supports: [], speaksAgainst: [], sources: [],
});
/** A check of so many bits; with its five minutes overhead it is worth a tenth of them a minute. */
const check = (id: string, gainBits: number, cylinder?: number): NextCheck => ({
  id, name: `Check ${id}`, gainBits, effortMinutes: 5, why: `Why ${id}.`, ...(cylinder !== undefined && { cylinder }),
});

const oil = condition('oil', { verdict: 'oil fouling', cure: 'Clean the plug.', meaning: 'Oil wets it.' });
const worn = condition('worn', { verdict: 'worn', cure: 'Renew the plug.', meaning: 'It is worn.' });
const smell: Contradiction = { id: 'smell', first: { plug: 'deposit', is: ['wet of unknown kind'] }, words: 'Smell it.', because: 'Fuel smells.', source: 'common practice' };
const causes: Readonly<Record<string, Cause>> = {
  rings: cause('rings', { cure: 'Renew the rings.' }), guides: cause('guides', { cure: 'Renew the guides.' }), first: cause('first', { cure: 'Nothing.', harmless: true }),
};
const LOOK: Check = {
  id: 'look', name: 'Look', scope: 'engine', minutes: 5, tells: { looksFor: [], finds: 'usually', falselyFinds: 'rarely' }, how: 'By eye.', cautions: [],
  because: 'made up', source: 'common practice',
};
const planOf = (parts: Partial<PlanGrounds>): Findings['plan'] => planFor({
  stop: [], plugs: [], engineCauses: [], engineChecks: [], firstLooks: [], heat: plain.heat, secondLooks: () => [],
  cause: ({ id }) => causes[id.split(' @ ')[0]!] ?? (id.startsWith('cause') ? cause(id, { cure: `Mend ${id}.` }) : undefined),
  condition: ({ verdict }) => ({ 'oil fouling': oil, worn } as Partial<Record<Verdict, typeof oil>>)[verdict], ...parts,
});
const doOf = (plan: Findings['plan']): string[] => plan.map((step) => step.do);
const readAgain = 'Read the plugs again after the same kind of running and compare.';

describe('the plan', () => {
  it('is empty where there is nothing to do', () => {
    expect(planOf({ plugs: [plug(1, 'normal'), plug(2, 'undetermined')] })).toEqual([]);
  });

  it('goes from what stops the engine over looking again, checks, cures, the plugs and the heat value to the next reading', () => {
    const plan = planOf({
      stop: [{ rule: 'a', why: 'It melts.' }], engineChecks: [check('fuel', 1)], engineCauses: [finding('rings', 0.9, 1)], plugs: [plug(1, 'oil fouling')], secondLooks: () => [smell],
      heat: { ...plain.heat, step: -1, words: 'one step colder', why: ['Too hot.', 'It is so.'] },
    });
    expect(doOf(plan)).toEqual([
      'Do not run the engine until this is cleared.', 'The plug of cylinder 1: smell it.', 'Check fuel', 'Renew the rings.', 'The plug of cylinder 1: clean the plug.',
      'Then fit plugs one step colder, no more.', readAgain,
    ]);
    expect(plan.map(({ order }) => order)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(plan[5]?.because).toBe('Too hot. It is so.');
    expect(plan[6]?.because).toMatch(/next reading shows/);
  });

  it('ends with the twentieth step', () => {
    const wide = Array.from({ length: 25 }, (_, i) => plug(i + 1, 'worn', { nextChecks: [check(`check-${i}`, 1, i + 1)] }));
    expect(planOf({ plugs: wide })).toHaveLength(20);
  });
});

describe('a stop in the plan', () => {
  const stopped = (stop: Findings['stop']): Findings['plan'][number] | undefined => planOf({ stop })[0];

  it('gives all reasons, and the cylinder where all speak of one', () => {
    expect(stopped([{ rule: 'a', cylinder: 2, why: 'It melts.' }, { rule: 'b', cylinder: 2, why: 'It knocks.' }])).toEqual(
      { order: 1, do: 'Do not run the engine until this is cleared.', because: 'It melts. It knocks.', cylinder: 2 },
    );
    expect(stopped([{ rule: 'a', cylinder: 2, why: 'It melts.' }, { rule: 'b', why: 'It knocks.' }])).not.toHaveProperty('cylinder');
    expect(stopped([{ rule: 'a', cylinder: 2, why: 'It melts.' }, { rule: 'b', cylinder: 3, why: 'It melts.' }])).not.toHaveProperty('cylinder');
    expect(stopped([{ rule: 'a', why: 'It melts.' }])).not.toHaveProperty('cylinder');
    expect(stopped([2, 2, 3].map((cylinder) => ({ rule: 'a', cylinder, why: 'It melts.' })))).not.toHaveProperty('cylinder');
  });
});

describe('the checks in the plan', () => {
  it('are the first of every plug and of the engine, the one worth most a minute first, then by id', () => {
    const plan = planOf({
      plugs: [plug(1, 'worn', { nextChecks: [check('b', 0.3, 1), check('left-out', 0.2, 1)] }), plug(2, 'worn', { nextChecks: [check('c', 0.5, 2)] })],
      engineChecks: [check('a', 0.3), check('left-out-too', 0.2)],
    });
    expect(plan.slice(0, 3)).toStrictEqual([
      { order: 1, do: 'Check c', because: 'Why c.', cylinder: 2 }, { order: 2, do: 'Check a', because: 'Why a.' }, { order: 3, do: 'Check b', because: 'Why b.', cylinder: 1 },
    ]);
    expect(doOf(plan).join()).not.toContain('left-out');
  });

  it('stand by id where they are worth the same', () => {
    for (const ids of [['a', 'b'], ['b', 'a']]) expect(doOf(planOf({ plugs: ids.map((id, i) => plug(i + 1, 'worn', { nextChecks: [check(id, 0.3, i + 1)] })) })).slice(0, 2)).toEqual(['Check a', 'Check b']);
  });

  it('name one check once, though several plugs ask for it', () => {
    const plan = planOf({ plugs: [plug(1, 'worn', { nextChecks: [check('a', 0.3, 1)] }), plug(2, 'worn', { nextChecks: [check('a', 0.5, 2)] })] });
    expect(plan.filter((step) => step.do === 'Check a')).toEqual([{ order: 1, do: 'Check a', because: 'Why a.', cylinder: 1 }]);
  });

  it('are the three most telling of the engine, where nothing else is to be done', () => {
    const engineChecks = [check('a', 0.5), check('b', 0.4), check('c', 0.3), check('d', 0.2)];
    const looked = (parts: Partial<PlanGrounds>): string[] => doOf(planOf({ engineChecks, ...parts })).filter((words) => words.startsWith('Check'));
    expect(looked({ plugs: [plug(1, 'normal')] })).toEqual(['Check a', 'Check b', 'Check c']);
    expect(looked({ plugs: [plug(1, 'worn')] })).toEqual(['Check a']);
    expect(looked({ engineCauses: [finding('rings', 0.5, 1)] })).toEqual(['Check a']);
    expect(looked({ engineCauses: [finding('rings', 0.2, 1)] })).toEqual(['Check a', 'Check b', 'Check c']);
  });

  it('are beside that of the engine the first of each cylinder that no plug tells of', () => {
    const engineChecks = [check('a', 0.5), check('b', 0.4, 2), check('c', 0.3, 2), check('d', 0.2)];
    expect(doOf(planOf({ engineChecks, plugs: [plug(1, 'worn')] })).filter((words) => words.startsWith('Check'))).toEqual(['Check a', 'Check b']);
  });
});

describe('a plug to be looked at again', () => {
  const looks = (...plugs: readonly PlugFindings[]): Findings['plan'] =>
    planOf({ plugs, secondLooks: ({ cylinder }) => (cylinder === 3 ? [] : [smell]), condition: () => undefined }).filter((step) => step.do !== readAgain);

  it('is one step for all plugs with the same doubt, with its reason', () => {
    expect(looks(plug(1, 'undetermined'), plug(2, 'normal'), plug(3, 'normal'))).toEqual([{ order: 1, do: 'The plugs of cylinders 1 and 2: smell it.', because: 'Fuel smells.' }]);
  });

  it('is not one at fault that is sure', () => {
    const beliefs = (belief: number): number => looks(plug(1, 'worn', { belief })).length;
    expect([beliefs(0.79), beliefs(0.8)]).toEqual([1, 0]);
    expect(looks(plug(1, 'normal', { belief: 0.95 }))).toHaveLength(1);
  });
});

describe('the cures in the plan', () => {
  const cures = (engineCauses: readonly CauseFinding[], plugs: readonly PlugFindings[] = []): Findings['plan'] => planOf({ engineCauses, plugs }).filter((step) => step.do !== readAgain);

  it('are told as they are where the belief is 0.8, and else as what the checks must bear out', () => {
    expect(cures([finding('rings', 0.8, 3)])).toEqual([{ order: 1, do: 'Renew the rings.', because: 'Name of rings: belief 80 %.', cylinder: 3 }]);
    expect(cures([finding('rings', 0.794, 3)])[0]).toMatchObject({ do: 'If the checks bear it out: renew the rings.', because: 'Name of rings: belief 79 %.' });
  });

  it('name the cylinder of a cause that reaches only one', () => {
    expect(cures([finding('rings', 0.9, 3, 4)])[0]).not.toHaveProperty('cylinder');
  });

  it('are of causes believed at least a quarter, five at most, the strongest first, then by id, each once', () => {
    expect(cures([finding('guides', 0.25, 1), finding('rings', 0.24, 1)]).map((step) => step.do)).toEqual(['If the checks bear it out: renew the guides.']);
    expect(cures([finding('guides', 0.3, 1)], [plug(1, 'normal', { causes: [finding('guides', 0.3, 1), finding('rings', 0.6, 1)] })]).map((step) => step.because)).toEqual(
      ['Name of rings: belief 60 %.', 'Name of guides: belief 30 %.'],
    );
    const six = ['cause-f', 'cause-e', 'cause-d', 'cause-c', 'cause-b', 'cause-a'].map((id) => finding(id, 0.3, 1));
    for (const all of [six, six.toReversed()]) expect(cures(all).map((step) => step.because.slice(8, 15))).toEqual(['cause-a', 'cause-b', 'cause-c', 'cause-d', 'cause-e']);
  });

  it('are none of what is harmless, nor of what the knowledge does not have', () => {
    expect(cures([finding('first', 0.9, 1), finding('unheard-of', 0.9, 1)])).toEqual([]);
  });
});

describe('what to do with the plugs', () => {
  const steps = (...plugs: readonly PlugFindings[]): Findings['plan'] => planOf({ plugs }).filter((step) => step.do !== readAgain);

  it('is one step for all that are in the same condition, with what it means', () => {
    expect(steps(plug(1, 'worn'), plug(2, 'oil fouling'), plug(3, 'worn'), plug(4, 'normal'))).toEqual([
      { order: 1, do: 'The plugs of cylinders 1 and 3: renew the plug.', because: 'It is worn.' }, { order: 2, do: 'The plug of cylinder 2: clean the plug.', because: 'Oil wets it.' },
    ]);
  });

  it('is a step for all plugs where all are in it, if there are several', () => {
    expect(steps(plug(1, 'worn'), plug(2, 'worn')).map((step) => step.do)).toEqual(['All plugs: renew the plug.']);
    expect(steps(plug(1, 'worn')).map((step) => step.do)).toEqual(['The plug of cylinder 1: renew the plug.']);
  });

  it('names which of two plugs of a cylinder it is', () => {
    expect(steps(plug(1, 'worn', { position: 'lower' }), plug(2, 'normal')).map((step) => step.do)).toEqual(['The plug of cylinder 1 lower: renew the plug.']);
  });

  it('is nothing for one that cannot be judged, that looks normal, or whose condition is not known', () => {
    expect(planOf({ plugs: [plug(1, 'undetermined'), plug(2, 'normal'), plug(3, 'glazing')], condition: ({ verdict }) => (verdict === 'glazing' ? undefined : worn) })).toEqual([]);
  });

  describe('where the likeliest causes of a complaint say where to look', () => {
    const looks = ['one', 'two', 'three', 'four'].map((id) => ({ cause: cause(id, { name: `Fault ${id}` }), check: { ...LOOK, id, name: `Look at ${id}` } }));

    it('is that, three at most, each with what it looks for', () => {
      const plan = planOf({ firstLooks: looks });
      expect(doOf(plan)).toEqual(['Look at one', 'Look at two', 'Look at three', readAgain]);
      expect(plan[0]?.because).toBe('By eye. It looks for: fault one.');
    });

    it('is left to a check that decides something, a cause worth its cure, or a plug at fault', () => {
      expect(doOf(planOf({ firstLooks: looks, engineChecks: [check('fuel', 1)] }))).toEqual(['Check fuel', readAgain]);
      expect(doOf(planOf({ firstLooks: looks, engineCauses: [finding('rings', 0.9, 1)] }))).toEqual(['Renew the rings.', readAgain]);
      expect(doOf(planOf({ firstLooks: looks, plugs: [plug(1, 'worn')] }))).not.toContain('Look at one');
    });
  });
});
