import { z } from 'zod';
import { SYMPTOMS } from '../vocabulary/conditions.ts';
import { POSITIONS } from '../vocabulary/engine.ts';
import { CHANGES, CURE_OUTCOMES, SYMPTOM_CHANGES } from '../vocabulary/follow-up.ts';
import { RISKS, SCOPES, VERDICTS } from '../vocabulary/verdicts.ts';
import { cylinderNumber } from './engine.ts';
import { shopLine } from './shop-lines.v1.ts';
import { heatModel } from './heat-model.v1.ts';
import { amount, count, oneOf, record, text } from './strict.ts';

const line = text(2000);
const belief = amount('a belief', 0, 1);

/**
 * One observation that bears on a cause. `bits` is the change of the cause's log-odds (base 2) that the observation makes. `lines`: the lines of
 * the knowledge that lead from the cause to it. `addedBy`: who of the workshop added one of them; absent when all are the program's own.
 */
const fact = record({ about: line, text: line, bits: z.number(), because: line, lines: z.array(line).optional(), addedBy: line.optional() });

/** `cylinders`: those it reaches. Of a cause of one plug or cylinder that is told of the engine: the one where it is, or those of which it may be any. */
const cause = record({
  id: text(80),
  name: line,
  belief,
  scope: oneOf(SCOPES),
  cylinders: z.array(cylinderNumber),
  supports: z.array(fact),
  speaksAgainst: z.array(fact),
  sources: z.array(line),
});

const nextCheck = record({
  id: text(80), name: line, cylinder: cylinderNumber.optional(), gainBits: z.number().min(0), effortMinutes: z.number().positive(), why: line,
});

const plugFindings = record({
  cylinder: cylinderNumber,
  position: oneOf(POSITIONS),
  verdict: oneOf(VERDICTS),
  also: z.array(oneOf(VERDICTS)),
  belief,
  thermal: record({ tooCold: belief, inWindow: belief, tooHot: belief }),
  preIgnitionRisk: oneOf(RISKS),
  causes: z.array(cause),
  nextChecks: z.array(nextCheck),
  doubts: z.array(line),
});

const plugChange = record({
  cylinder: cylinderNumber, position: oneOf(POSITIONS), change: oneOf(CHANGES), before: oneOf(VERDICTS), now: oneOf(VERDICTS), why: line,
});

/** What became of a cure that the reading before called for, or that was carried out anyway. Beliefs are those in its cause, then and now. */
const cureFollowed = record({
  cause: text(80), name: line, cylinders: z.array(cylinderNumber), do: line, outcome: oneOf(CURE_OUTCOMES), beliefBefore: belief, beliefNow: belief, why: line,
});

/** This reading against the one before. `doubts`: what limits the comparison. */
const followUp = record({
  before: record({ date: text(40).optional(), title: text(200).optional() }),
  summary: line,
  plugs: z.array(plugChange),
  symptoms: z.array(record({ what: oneOf(SYMPTOMS), change: oneOf(SYMPTOM_CHANGES) })),
  cures: z.array(cureFollowed),
  heat: line.optional(),
  doubts: z.array(line),
});

export const findings = record({
  format: z.literal('corenose.findings'),
  version: z.literal(1),
  /** `shopLines`: the lines of the workshop that took part; absent when the program's own knowledge stood alone. */
  knowledge: record({ version: text(40), digest: text(80), shopLines: z.array(shopLine).optional() }),
  summary: line,
  followUp: followUp.optional(),
  plugs: z.array(plugFindings),
  /**
   * `causes`: shared ones, and those of single cylinders that no plug tells of. `doubts`: what makes every judgement less sure, said once; absent where
   * there is nothing.
   */
  engine: record({ pattern: line, causes: z.array(cause), nextChecks: z.array(nextCheck), doubts: z.array(line).optional() }),
  heat: record({
    step: z.union([z.literal(-1), z.literal(0), z.literal(1)]),
    when: z.enum(['now', 'after what comes first']),
    words: z.enum(['one step colder', 'stay', 'one step hotter']),
    belief,
    why: z.array(line),
    first: z.array(line),
    cautions: z.array(line),
    model: heatModel.optional(),
  }),
  stop: z.array(record({ rule: text(80), cylinder: cylinderNumber.optional(), why: line })),
  plan: z.array(record({ order: count('an order', 1, 99), do: line, because: line, cylinder: cylinderNumber.optional() })),
  cautions: z.array(line),
});

export type Findings = z.output<typeof findings>;
export type PlugFindings = z.output<typeof plugFindings>;
export type CauseFinding = z.output<typeof cause>;
export type Fact = z.output<typeof fact>;
export type FollowUp = z.output<typeof followUp>;
export type PlugChange = z.output<typeof plugChange>;
export type CureFollowed = z.output<typeof cureFollowed>;
export type NextCheck = z.output<typeof nextCheck>;
