import { z } from 'zod';
import type { Result } from '../result.ts';
import { CONDITION_TAGS, DUTIES, FUELS, STOPS, SYMPTOMS } from '../vocabulary/conditions.ts';
import { ASPIRATIONS, COOLINGS, CYCLES, IGNITION_KINDS, MIXTURE_KINDS, USES } from '../vocabulary/engine.ts';
import { MOVE_WORDS, STRENGTH_WORDS } from '../vocabulary/knowledge.ts';
import { oneOf, parseStrictly, record, text, type Problem } from './strict.ts';

/*
 * What the people of one workshop add to the knowledge on their own word. A line can only add: it names a cause or a condition that is there and
 * says one more thing of it. There are no words for stop rules, for bars on a hotter plug or for any other guard.
 */

const plainId = text(80).regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, { error: (issue) => `${JSON.stringify(issue.input)} is no id; an id is in lower case with hyphens` });

/** One thing known of the engine or of how it ran. */
const circumstance = record({
  tag: oneOf(CONDITION_TAGS).optional(), fuel: oneOf(FUELS).optional(), duty: oneOf(DUTIES).optional(), stop: oneOf(STOPS).optional(),
  use: oneOf(USES).optional(), cycle: oneOf(CYCLES).optional(), aspiration: oneOf(ASPIRATIONS).optional(), cooling: oneOf(COOLINGS).optional(),
  mixture: oneOf(MIXTURE_KINDS).optional(), ignition: oneOf(IGNITION_KINDS).optional(),
}).refine((given) => Object.values(given).filter((value) => value !== undefined).length === 1, { error: 'give exactly one circumstance' });

const strength = oneOf(STRENGTH_WORDS);

/** `of`: the id of the cause, or for `shows` and `gives` also of the condition, that the line adds to. */
const says = z.discriminatedUnion('kind', [
  record({ kind: z.literal('makes'), of: plainId, condition: plainId, strength }),
  record({ kind: z.literal('shows'), of: plainId, finding: text(40), is: text(60), strength }),
  record({ kind: z.literal('gives'), of: plainId, symptom: oneOf(SYMPTOMS), strength }),
  record({ kind: z.literal('moved'), of: plainId, when: circumstance, how: oneOf(MOVE_WORDS) }),
], { error: 'a line says one of: makes, shows, gives, moved; name it as its kind' });

export const MOST_REASON = 300;
export const MOST_NAME = 60;

/** `on`: whether it counts. `by`: who says so. `because`: why, in a sentence. */
export const shopLine = record({ id: plainId, on: z.boolean({ error: 'give true or false' }), by: text(MOST_NAME), because: text(MOST_REASON), says });

/** More lines than this are no longer read by anybody. */
const MOST_LINES = 200;

export const shopLines = record({
  format: z.literal('corenose.shop-lines', { error: 'not a file of shop lines; its format is "corenose.shop-lines"' }),
  version: z.literal(1, { error: 'only version 1 can be read' }),
  lines: z.array(shopLine, { error: 'missing; give a list of lines' }).max(MOST_LINES, { error: `too many; at most ${MOST_LINES} lines` }),
}).superRefine(({ lines }, ctx) => {
  const seen = new Set<string>();
  lines.forEach(({ id }, i) => {
    if (seen.has(id)) ctx.addIssue({ code: 'custom', path: ['lines', i, 'id'], message: `"${id}" stands here twice; give every line an id of its own` });
    seen.add(id);
  });
});

export type ShopLine = z.output<typeof shopLine>;
export type ShopSays = ShopLine['says'];
export type ShopCircumstance = z.output<typeof circumstance>;
export type ShopLines = z.output<typeof shopLines>;

/** The one way in for lines of unknown origin. Whether they fit the knowledge is asked afterwards. */
export const parseShopLines = (input: unknown): Result<ShopLines, Problem[]> => parseStrictly(shopLines, input);
