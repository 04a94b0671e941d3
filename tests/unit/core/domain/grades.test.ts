import { describe, expect, it } from 'vitest';
import { beliefGrade, evidenceGrade } from '../../../../core/domain/grades.ts';

describe('the word for a belief', () => {
  // IPCC, Fourth Assessment Report, Working Group II, front matter F: description of likelihood.
  it.each([
    [0.995, 'virtually certain'], [0.95, 'very likely'], [0.7, 'likely'], [0.5, 'about as likely as not'], [0.2, 'unlikely'], [0.05, 'very unlikely'],
    [0.005, 'exceptionally unlikely'],
  ])('%f is %s (table of the panel)', (belief, word) => expect(beliefGrade(belief)).toBe(word));
});

describe('the word for the weight of an observation', () => {
  // Kass and Raftery 1995, as tabled in the documentation of the R package pcal: factors 1 to 3, 3 to 20, 20 to 150, over 150.
  it.each([[2, 'weak'], [4, 'positive'], [19, 'positive'], [21, 'strong'], [149, 'strong'], [151, 'very strong']])(
    'a factor of %d on the odds is %s, for and against alike', (factor, word) => {
      expect(evidenceGrade(Math.log2(factor))).toBe(word);
      expect(evidenceGrade(-Math.log2(factor))).toBe(word);
    });
});
