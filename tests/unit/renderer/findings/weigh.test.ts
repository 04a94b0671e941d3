import { describe, expect, it } from 'vitest';
import { weigh } from '../../../../renderer/features/findings/weigh.ts';

const fact = (text: string, bits: number) => ({ about: 'tip', text, bits, because: '' });

describe('the balance of a cause', () => {
  it('lays the heaviest observation first, whatever side it is on', () => {
    expect(weigh([fact('a', 1), fact('b', 3)], [fact('c', -2)]).map(({ fact: { text }, side }) => [text, side])).toEqual([['b', 'for'], ['c', 'against'], ['a', 'for']]);
  });
  it('one bit doubles the odds or halves them (definition of the bit)', () => {
    expect(weigh([fact('a', 1)], [fact('c', -1)]).map(({ factor }) => factor)).toEqual([2, 2]);
  });
  it('keeps all bars on one scale and inside the balance', () => {
    const reaches = weigh([fact('a', 9)], [fact('c', -4.5)]).map(({ reach }) => reach);
    expect(reaches).toEqual([1, 0.5]);
  });
});
