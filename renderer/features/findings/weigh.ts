import type { Fact } from '../../../shared/formats/findings.v1.ts';

/** One observation on the balance: how far its bar reaches, and by what factor it moves the odds. */
export type Weighed = { readonly fact: Fact; readonly side: 'for' | 'against'; /** 0 to 1 of half the balance. */ readonly reach: number; /** At least 1. */ readonly factor: number };

/** A bar of full length; a heavier fact stretches the scale for all. In bits. */
const FULL_BITS = 4;

/** Facts for and against in one list, heaviest first, on one scale. */
export function weigh(supports: readonly Fact[], speaksAgainst: readonly Fact[]): readonly Weighed[] {
  const facts = [...supports.map((fact) => ({ fact, side: 'for' as const })), ...speaksAgainst.map((fact) => ({ fact, side: 'against' as const }))];
  const full = Math.max(FULL_BITS, ...facts.map(({ fact }) => Math.abs(fact.bits)));
  return facts
    .map(({ fact, side }) => ({ fact, side, reach: Math.abs(fact.bits) / full, factor: 2 ** Math.abs(fact.bits) }))
    .sort((a, b) => b.reach - a.reach);
}
