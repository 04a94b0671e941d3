import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { lintKnowledge } from '../../core/knowledge/lint/rule.ts';
import { KNOWLEDGE_RULES } from '../../core/knowledge/lint/rules.ts';

describe('the knowledge of plugs', () => {
  it.each(KNOWLEDGE_RULES.map((rule) => [rule.name.replaceAll('-', ' '), rule] as const))('holds that %s', (_name, rule) => {
    expect(lintKnowledge(KNOWLEDGE, [rule])).toEqual([]);
  });
});
