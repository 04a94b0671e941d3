import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cylindersIn, percent, WIDTH, wrapped } from '../../../../electron/cli/lines.ts';

describe('lines for a terminal', () => {
  it('lose no word and stay within the width, unless one word is wider', () => {
    const words = fc.array(fc.stringMatching(/^[a-z%]{1,30}$/), { maxLength: 60 });
    fc.assert(fc.property(words, fc.stringMatching(/^ {0,8}[a-z]{0,10}:? ?$/), (list, lead) => {
      const lines = wrapped(list.join(' '), lead).split('\n');
      expect(lines.join(' ').slice(lead.length).split(/\s+/).filter((word) => word !== '')).toEqual(list);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(WIDTH);
    }));
  });

  it('keep a number with its percent sign', () => {
    for (let n = 0; n < 100; n++) expect(wrapped(`${'x'.repeat(n)} (62 %) and more words to fill the line up to its very end and a little beyond it`)).not.toMatch(/\d\n\s*%/);
  });
});

describe('a belief in words', () => {
  it.each([[0, '0 %'], [0.001, 'under 1 %'], [0.005, '1 %'], [0.62, '62 %'], [0.995, '100 %'], [0.999, 'over 99 %'], [1, '100 %']])('%s is %s', (p, words) => {
    expect(percent(p)).toBe(words);
  });
});

describe('cylinders in words', () => {
  it.each([[[3], 'cylinder 3'], [[1, 2], 'cylinders 1 and 2'], [[1, 2, 4], 'cylinders 1, 2 and 4']])('%j is %s', (cylinders, words) => {
    expect(cylindersIn(cylinders)).toBe(words);
  });
});
