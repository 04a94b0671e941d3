import type { MoveWord, StrengthWord } from '../../shared/vocabulary/knowledge.ts';

/**
 * The one table that turns words into probabilities. The words are graded expert knowledge, not counted failures:
 * no field statistics of plug faults were found, so the steps are chosen wide enough that neighbours can be told apart.
 */
export const STRENGTHS = {
  'almost always': 0.9,
  usually: 0.7,
  often: 0.45,
  sometimes: 0.2,
  rarely: 0.06,
  'hardly ever': 0.015,
} as const satisfies Readonly<Record<StrengthWord, number>>;
export type Strength = StrengthWord;

/** How likely a cause is on a pulled plug before anything is seen. */
export const PRIORS = { common: 0.04, occasional: 0.015, rare: 0.006, 'very rare': 0.002 } as const;
export type Prior = keyof typeof PRIORS;

/** Factors on the prior odds of a cause. `found` stands for a circumstance that is the cause itself, seen by somebody. */
export const MOVES = { found: 300, 'far likelier': 30, 'much likelier': 8, likelier: 3, 'less likely': 1 / 3, 'much less likely': 1 / 8, 'ruled out': 1 / 300 } as const satisfies Readonly<Record<MoveWord, number>>;
export type Move = MoveWord;
