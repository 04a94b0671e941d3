import { STRENGTHS, type Strength } from '../strengths.ts';
import type { Cause } from '../types.ts';
import type { KnowledgeRule } from './rule.ts';

/** Grades of one state, milder first: what leads to the graver has passed through the milder. */
const GRADES: readonly (readonly string[])[] = [['runs-hot', 'blistered', 'melted'], ['knock-early', 'knock-broken']];
/** A circumstance of these kinds can be the cause itself, seen by somebody. */
const CAN_BE_SEEN: readonly string[] = ['tag', 'fuel', 'fitted'];

const strengthIn = ({ makes }: Cause, condition: string): number => {
  const link = makes.find((made) => made.condition === condition);
  return link === undefined ? 0 : STRENGTHS[link.strength];
};

const atLeast = (strength: Strength, least: Strength): boolean => STRENGTHS[strength] >= STRENGTHS[least];

export const strengthsAreUsedAlike: KnowledgeRule = {
  name: 'strengths-are-used-alike',
  check: (kb, report) => {
    for (const cause of kb.causes) {
      for (const grades of GRADES) {
        grades.slice(1).forEach((graver, i) => {
          if (strengthIn(cause, graver) > strengthIn(cause, grades[i] as string)) report(cause.id, `makes ${graver} more readily than the milder ${grades[i] as string}`);
        });
      }
      for (const { by, how } of cause.moved) {
        const kind = Object.keys(by)[0] as string;
        if (how === 'found' && !CAN_BE_SEEN.includes(kind)) report(cause.id, `is taken as found by ${kind}, which only makes it likelier`);
      }
    }
    for (const { id, shows } of kb.conditions) if (!shows.some(({ strength }) => atLeast(strength, 'often'))) report(id, 'has no sign that is often seen');
  },
  // A hot spot lights the charge outright, and a piston gives way after the plug has melted or broken.
  exceptions: ['hot-spot', 'piston-holed'],
};
