import { CURE_TRUST } from '../../../core/knowledge/cures.ts';
import { givesKey, makesKey, movedKey, showsKey } from '../../../core/knowledge/line-keys.ts';
import { MOVES, PRIORS, STRENGTHS, type Move, type Prior, type Strength } from '../../../core/knowledge/strengths.ts';
import type { Cause, Knowledge } from '../../../core/knowledge/types.ts';

/** Two pages beside those of the words: the trust in cures, and what is met with nothing wrong. */
export const CURES_KEY = 'cures';
export const WELL_KEY = 'well';

export const isStrength = (id: string): id is Strength => id in STRENGTHS;
export const isPrior = (id: string): id is Prior => id in PRIORS;
export const isMove = (id: string): id is Move => id in MOVES;

export type CuredKind = keyof typeof CURE_TRUST;
export const CURED_KINDS = Object.keys(CURE_TRUST) as CuredKind[];

/** Where a word stands in the knowledge: lines by their keys, causes and checks by their ids, and kinds of causes whose cures are trusted so. */
export type Uses = {
  readonly makes: readonly string[];
  readonly shows: readonly string[];
  readonly found: readonly string[];
  readonly gives: readonly string[];
  readonly moved: readonly string[];
  readonly common: readonly Cause[];
  readonly checks: Knowledge['checks'];
  readonly cures: readonly CuredKind[];
};

/** Every place where the knowledge says this word. */
export function usesOf(word: string, { causes, conditions, checks }: Knowledge): Uses {
  const said = ({ strength }: { readonly strength: Strength }): boolean => strength === word;
  return {
    makes: causes.flatMap(({ id, makes }) => makes.filter(said).map((link) => makesKey(id, link))),
    shows: conditions.flatMap(({ id, shows }) => shows.filter(said).map((link) => showsKey(id, link))),
    found: causes.flatMap(({ id, shows }) => shows.filter(said).map((link) => showsKey(id, link))),
    gives: [...causes, ...conditions].flatMap(({ id, gives }) => gives.filter(said).map((link) => givesKey(id, link))),
    moved: causes.flatMap(({ id, moved }) => moved.filter(({ how }) => how === word).map((link) => movedKey(id, link))),
    common: causes.filter(({ prior }) => prior === word),
    checks: checks.filter(({ tells }) => 'finds' in tells && (tells.finds === word || tells.falselyFinds === word)),
    cures: CURED_KINDS.filter((kind) => CURE_TRUST[kind].holds === word),
  };
}
