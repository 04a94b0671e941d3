import { z } from 'zod';
import { record, text } from './formats/strict.ts';

/** Most of what a person can write about an engine is a few kilobytes. */
const DRAFT_LIMIT = 100_000;

/**
 * An engine while it is being written down: what can be taken, and by its path the text of what cannot be taken yet. It may hold half a heat
 * value, so its fields are checked when the engine is saved, not here.
 */
const engineDraft = record({ fields: z.record(text(60), z.unknown()), raw: z.record(text(200), text(4000)) })
  .refine((draft) => JSON.stringify(draft).length <= DRAFT_LIMIT, { error: `too large; at most ${DRAFT_LIMIT} characters` });

/** The id of the engine it will change, or 'new'. */
const draftOf = z.union([z.uuid(), z.literal('new')]);

/** Calls about engines that are being written down and not saved yet. */
export const engineDraftChannels = {
  'engine-draft.list': { input: z.null(), output: z.record(draftOf, engineDraft) },
  /** Keeps a draft, or with null lets it go. */
  'engine-draft.keep': { input: record({ of: draftOf, draft: engineDraft.nullable() }), output: z.null() },
} as const;
export type KeptEngineDraft = z.output<typeof engineDraft>;
export type DraftOf = z.output<typeof draftOf>;
