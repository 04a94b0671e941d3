import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { movedKey, ownerOf, showsKey } from '../../../../core/knowledge/line-keys.ts';
import { groundedLines } from '../../../../core/knowledge/lint/grounded-lines.ts';

describe('the key of a line', () => {
  it('says whose it is and what it says', () => {
    expect(showsKey('oil-wet', { finding: 'deposit', is: 'wet oil' })).toBe('oil-wet shows deposit wet oil');
    expect(ownerOf('oil-wet shows deposit wet oil')).toBe('oil-wet');
  });

  it('tells cold air from cold coolant', () => {
    expect(movedKey('engine-overcooled', { by: { ambient: 'cold' } })).not.toBe(movedKey('engine-overcooled', { by: { coolant: 'cold' } }));
  });

  it('is that of one line only, throughout the causes and conditions', () => {
    const owners = new Set([...KNOWLEDGE.causes, ...KNOWLEDGE.conditions].map(({ id }) => id));
    const keys = groundedLines(KNOWLEDGE).map(({ place }) => place).filter((key) => owners.has(ownerOf(key)));
    expect(keys.length).toBeGreaterThan(1000);
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
  });
});
