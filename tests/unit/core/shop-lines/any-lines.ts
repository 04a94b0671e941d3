import fc from 'fast-check';
import { CYLINDER_FINDINGS, PLUG_FINDINGS } from '../../../../core/knowledge/findings.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import type { ShopLine, ShopSays } from '../../../../shared/formats/shop-lines.v1.ts';
import { CONDITION_TAGS, FUELS, SYMPTOMS } from '../../../../shared/vocabulary/conditions.ts';
import { USES } from '../../../../shared/vocabulary/engine.ts';
import { MOVE_WORDS, STRENGTH_WORDS } from '../../../../shared/vocabulary/knowledge.ts';

/** The line of Ann, who has seen it. */
export const line = (says: ShopSays, more: Partial<ShopLine> = {}): ShopLine =>
  ({ id: 'ann-says', on: true, by: 'Ann', because: 'It is so on every second one here.', says, ...more });

const valueOf = (findings: Readonly<Record<string, readonly string[]>>) =>
  fc.constantFrom(...Object.entries(findings).flatMap(([finding, values]) => values.map((is) => ({ finding, is }))));

const causes = KNOWLEDGE.causes.map(({ id }) => id);
/** Causes that would lead to a step of heat value, and those that bar one: where a line could do most harm. */
const TOUCHY: readonly string[] = ['oil', 'detonation', 'pre-ignition', 'mechanical', 'mixture', 'heat value'];
const touchy = KNOWLEDGE.causes.filter(({ kind }) => TOUCHY.includes(kind)).map(({ id }) => id);
const conditions = KNOWLEDGE.conditions.map(({ id }) => id);
const strength = fc.constantFrom(...STRENGTH_WORDS);
const cause = fc.oneof(fc.constantFrom(...causes), fc.constantFrom(...touchy));
const when = fc.oneof(
  fc.constantFrom(...USES).map((use) => ({ use })), fc.constantFrom(...FUELS).map((fuel) => ({ fuel })),
  fc.constantFrom(...CONDITION_TAGS).map((tag) => ({ tag })),
);

const says: fc.Arbitrary<ShopSays> = fc.oneof(
  fc.record({ kind: fc.constant('makes' as const), of: cause, condition: fc.constantFrom(...conditions), strength }),
  fc.tuple(cause, valueOf(CYLINDER_FINDINGS), strength).map(([of, value, word]) => ({ kind: 'shows' as const, of, ...value, strength: word })),
  fc.tuple(fc.constantFrom(...conditions), valueOf(PLUG_FINDINGS), strength)
    .map(([of, value, word]) => ({ kind: 'shows' as const, of, ...value, strength: word })),
  fc.record({ kind: fc.constant('gives' as const), of: fc.constantFrom(...causes, ...conditions), symptom: fc.constantFrom(...SYMPTOMS), strength }),
  fc.record({ kind: fc.constant('moved' as const), of: cause, when, how: fc.constantFrom(...MOVE_WORDS) }),
);

/** Up to so many lines about anything, as wild as the format allows. Some break a rule of the knowledge and are then left out. */
export const anyLines = (most: number): fc.Arbitrary<ShopLine[]> =>
  fc.array(says, { minLength: 1, maxLength: most }).map((all) => all.map((said, i) => line(said, { id: `line-${i}` })));
