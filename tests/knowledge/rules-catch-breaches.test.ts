import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { lintKnowledge, type KnowledgeRule } from '../../core/knowledge/lint/rule.ts';
import { KNOWLEDGE_RULES } from '../../core/knowledge/lint/rules.ts';
import type { Caution, Cause, Check, Condition, Knowledge } from '../../core/knowledge/types.ts';

/** The list with one entry changed. */
const edited = <T extends { readonly id: string }>(list: readonly T[], id: string, change: (old: T) => Partial<T>): T[] =>
  list.map((entry) => (entry.id === id ? { ...entry, ...change(entry) } : entry));

const condition = (id: string, change: Partial<Condition>): Knowledge => ({ ...KNOWLEDGE, conditions: edited(KNOWLEDGE.conditions, id, () => change) });
const cause = (id: string, change: (old: Cause) => Partial<Cause>): Knowledge => ({ ...KNOWLEDGE, causes: edited(KNOWLEDGE.causes, id, change) });
const check = (id: string, change: Partial<Check>): Knowledge => ({ ...KNOWLEDGE, checks: edited(KNOWLEDGE.checks, id, () => change) });
const cautions = (change: (old: readonly Caution[]) => Caution[]): Knowledge => ({ ...KNOWLEDGE, cautions: change(KNOWLEDGE.cautions) });
const causesWithout = (drop: (cause: Cause) => Partial<Cause>): Knowledge => ({ ...KNOWLEDGE, causes: KNOWLEDGE.causes.map((c) => ({ ...c, ...drop(c) })) });
const conditionsWithout = (drop: (condition: Condition) => Partial<Condition>): Knowledge => ({
  ...KNOWLEDGE, conditions: KNOWLEDGE.conditions.map((c) => ({ ...c, ...drop(c) })),
});

const soot = { because: 'Planted to see the rule at work.', source: 'S16' } as const;

/** One planted breach a rule: what is done to the knowledge, and the place the rule must name. */
const BREACHES: readonly (readonly [rule: string, what: string, kb: Knowledge, place: string])[] = [
  ['every-source-exists', 'a line rests on a document nobody registered', cause('choke-stuck', (c) => ({ gives: [...c.gives, { symptom: 'surging', strength: 'rarely', ...soot, source: 'S99' }] })), 'choke-stuck gives surging'],
  ['every-source-is-cited', 'a document is registered and nothing rests on it', { ...KNOWLEDGE, sources: [...KNOWLEDGE.sources, { id: 'S99', title: 'unread', read: 'title' }] }, 'S99'],
  ['every-reason-is-a-sentence', 'a reason is a mere word', check('borescope', { because: 'obvious' }), 'borescope'],
  ['ids-are-plain-and-single', 'two causes share an id', { ...KNOWLEDGE, causes: [...KNOWLEDGE.causes, ...KNOWLEDGE.causes.slice(0, 1)] }, KNOWLEDGE.causes[0]?.id ?? ''],
  ['no-line-twice', 'a condition shows the same value twice', condition('runs-hot', { shows: [...(KNOWLEDGE.conditions.find((c) => c.id === 'runs-hot')?.shows ?? []), { finding: 'noseColour', is: 'white', strength: 'rarely', ...soot }] }), 'runs-hot'],
  ['every-verdict-has-a-condition', 'nothing is called glazing any more', conditionsWithout((c) => (c.verdict === 'glazing' ? { verdict: 'normal' } : {})), 'glazing'],
  ['every-condition-is-usable', 'oil on the plug would allow a hotter plug', condition('oil-wet', { heatRule: 'hotter for a whole set once causes are cleared' }), 'oil-wet'],
  ['every-condition-has-a-cause', 'nothing reverses the polarity any more', causesWithout((c) => ({ makes: c.makes.filter((m) => m.condition !== 'strap-hollowed') })), 'strap-hollowed'],
  ['every-cause-is-complete', 'a cause names no check', cause('inlet-leak', () => ({ checks: [] })), 'inlet-leak'],
  ['harmless-causes-do-no-harm', 'a harmless cause makes soot', cause('corona', (c) => ({ makes: [...c.makes, { condition: 'dry-soot', strength: 'rarely', ...soot }] })), 'corona'],
  ['every-finding-is-explained', 'nothing explains a bridged gap any more', conditionsWithout((c) => ({ shows: c.shows.filter((s) => s.is !== 'gap bridged') })), 'bridge gap bridged'],
  ['every-symptom-is-explained', 'nothing gives blue smoke any more', causesWithout((c) => ({ gives: c.gives.filter((g) => g.symptom !== 'blue smoke') })), 'blue smoke'],
  ['every-circumstance-counts', 'a sticking choke moves nothing any more', causesWithout((c) => ({ moved: c.moved.filter((m) => !('tag' in m.by && m.by.tag === 'choke sticking')) })), 'choke sticking'],
  ['marks-leave-room', 'soot is certain to be black', condition('dry-soot', { shows: [{ finding: 'noseColour', is: 'black', strength: 'almost always', ...soot }, { finding: 'noseColour', is: 'dark grey', strength: 'sometimes', ...soot }] }), 'dry-soot noseColour'],
  ['checks-can-tell', 'a cause sends to a check that cannot see it', cause('corona', () => ({ checks: ['compression-test'] })), 'corona'],
  ['checks-have-a-use', 'a check goes with a caution that is gone', cautions((all) => all.filter((c) => c.id !== 'leak-down-air')), 'leak-down-test'],
  ['strengths-are-used-alike', 'a lean mixture melts more readily than it heats', cause('mixture-lean', (c) => ({ makes: c.makes.map((m) => (m.condition === 'melted' ? { ...m, strength: 'almost always' } : m)) })), 'mixture-lean'],
  ['strengths-are-used-alike', 'a duty is taken for the fault itself', cause('short-trips', (c) => ({ moved: c.moved.map((m) => ({ ...m, how: 'found' })) })), 'short-trips'],
  ['terms-name-real-values', 'a caution asks for a value that does not exist', cautions((all) => all.map((c) => (c.id === 'catalyst' ? { ...c, when: [{ plug: 'deposit', is: ['wet petrol'] }] } : c))), 'catalyst'],
];

const ruleNamed = (name: string): KnowledgeRule => KNOWLEDGE_RULES.find((rule) => rule.name === name) as KnowledgeRule;

describe('the rules over the knowledge', () => {
  it.each(BREACHES)('%s speaks up when %s', (name, _what, kb, place) => {
    const found = lintKnowledge(kb, [ruleNamed(name)]);
    expect(found.map((breach) => breach.place)).toContain(place);
    expect(found.every((breach) => breach.rule === name)).toBe(true);
  });

  it('are each tried on a planted breach', () => {
    expect([...new Set(BREACHES.map(([name]) => name))].sort()).toEqual(KNOWLEDGE_RULES.map((rule) => rule.name).sort());
  });

  const always: KnowledgeRule = { name: 'always', check: (_kb, report) => { report('here', 'always wrong'); }, exceptions: [] };

  it('let an exception pass while it is needed', () => {
    expect(lintKnowledge(KNOWLEDGE, [{ ...always, exceptions: ['here'] }])).toEqual([]);
  });

  it('complain of an exception that is no longer needed', () => {
    expect(lintKnowledge(KNOWLEDGE, [{ ...always, exceptions: ['here', 'there'] }])).toEqual([
      { rule: 'always', place: 'there', problem: 'this exception is no longer needed; delete it' },
    ]);
  });
});
