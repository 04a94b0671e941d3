import { describe, expect, it } from 'vitest';
import { SYMPTOM_GROUPS, TAG_GROUPS } from '../../../../renderer/features/run/groups.ts';
import { matches } from '../../../../renderer/features/run/matches.ts';
import { CONDITION_TAGS, SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';

describe('the lists of what was noticed', () => {
  it('hold every symptom and every circumstance of the vocabulary once', () => {
    expect(SYMPTOM_GROUPS.flatMap(({ symptoms }) => symptoms).toSorted()).toEqual(SYMPTOMS.toSorted());
    expect(TAG_GROUPS.flatMap(({ tags }) => tags).toSorted()).toEqual(CONDITION_TAGS.toSorted());
  });
});

describe('the search in them', () => {
  it.each([['mis lo', true], ['load mis', true], ['  ', true], ['MISFIRE', true], ['fire', false], ['mis hot', false]])('"%s" finds "Misfire under load": %s', (typed, found) => {
    expect(matches('Misfire under load', typed)).toBe(found);
  });
});
