import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { groundedLines } from '../../../../core/knowledge/lint/grounded-lines.ts';
import { lintKnowledge } from '../../../../core/knowledge/lint/rule.ts';
import { KNOWLEDGE_RULES } from '../../../../core/knowledge/lint/rules.ts';
import { OWN_LINE } from '../../../../core/knowledge/types.ts';
import { lineKey } from '../../../../core/shop-lines/line-key.ts';
import { taught, type Teachable } from '../../../../core/shop-lines/teach.ts';
import { withShopLines } from '../../../../core/shop-lines/with-shop-lines.ts';
import { anyLines, line } from './any-lines.ts';

const likelierOnEthanol = line({ kind: 'moved', of: 'rings-worn', when: { fuel: 'E85' }, how: 'likelier' });

describe('the knowledge with lines of a workshop', () => {
  it('is the knowledge itself without any, or with none switched on', () => {
    expect(withShopLines(KNOWLEDGE, []).knowledge).toBe(KNOWLEDGE);
    expect(withShopLines(KNOWLEDGE, [{ ...likelierOnEthanol, on: false }])).toEqual({ knowledge: KNOWLEDGE, active: [], refused: [] });
  });

  it('holds each line after those that were there, with its reason, on its own word, under the name of who added it', () => {
    const { knowledge } = withShopLines(KNOWLEDGE, [likelierOnEthanol]);
    expect(knowledge.causes.find(({ id }) => id === 'rings-worn')?.moved.at(-1)).toEqual(
      { by: { fuel: ['E85'] }, how: 'likelier', because: 'It is so on every second one here.', source: OWN_LINE, addedBy: 'Ann' },
    );
  });

  it('leaves out a line that breaks a rule, says why, and takes the others', () => {
    const again = line({ kind: 'makes', of: 'rings-worn', condition: 'oil-wet', strength: 'often' }, { id: 'again' });
    const { active, refused } = withShopLines(KNOWLEDGE, [again, likelierOnEthanol]);
    expect(active).toEqual([likelierOnEthanol]);
    expect(refused).toEqual([{ line: again, complaints: [{ field: 'what', message: 'There is a line that says this already.' }] }]);
  });

  it('keeps every guard as it is, whatever the lines say, and breaks no rule', () => {
    fc.assert(fc.property(anyLines(6), (lines) => {
      const { knowledge, active } = withShopLines(KNOWLEDGE, lines);
      for (const part of ['stopRules', 'barsOnHotter', 'cautions', 'contradictions', 'checks', 'sources', 'version'] as const) expect(knowledge[part]).toBe(KNOWLEDGE[part]);
      for (const [i, cause] of KNOWLEDGE.causes.entries()) {
        const { makes, shows, gives, moved, ...itself } = knowledge.causes[i]!;
        const before = { makes: makes.slice(0, cause.makes.length), shows: shows.slice(0, cause.shows.length), gives: gives.slice(0, cause.gives.length) };
        expect({ ...itself, ...before, moved: moved.slice(0, cause.moved.length) }).toEqual(cause);
      }
      expect(lintKnowledge(knowledge, KNOWLEDGE_RULES).filter(({ problem }) => !problem.includes('no longer needed'))).toEqual([]);
      expect(groundedLines(knowledge)).toHaveLength(groundedLines(KNOWLEDGE).length + active.length);
    }), { numRuns: 60 });
  });

  it('gives a line no way to reach a guard: what lines are put into holds causes and conditions and nothing else', () => {
    expectTypeOf<keyof Teachable>().toEqualTypeOf<'causes' | 'conditions'>();
    expectTypeOf(taught).parameter(0).toEqualTypeOf<Teachable>();
    expectTypeOf(taught).returns.toEqualTypeOf<Teachable>();
    expect(Object.keys(taught(KNOWLEDGE, [likelierOnEthanol]))).toEqual(['causes', 'conditions']);
  });

  it('calls each line by a key of its own', () => {
    fc.assert(fc.property(anyLines(5), (lines) => {
      const { knowledge, active } = withShopLines(KNOWLEDGE, lines);
      const keys = groundedLines(knowledge).filter(({ sources }) => sources.includes(OWN_LINE)).map(({ place }) => place);
      expect([...active].map(lineKey).sort()).toEqual([...keys].sort());
      expect(new Set(keys).size).toBe(keys.length);
    }), { numRuns: 30 });
  });
});
