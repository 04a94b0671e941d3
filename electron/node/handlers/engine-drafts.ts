import type { Handlers } from '../../../shared/channels.ts';
import { ok } from '../../../shared/result.ts';
import { keepEngineDraft, listEngineDrafts } from '../storage/engine-drafts.ts';
import { reads, writes, type Given } from './given.ts';

type Group = Pick<Handlers, 'engine-draft.list' | 'engine-draft.keep'>;

/** Engines that are being written down: kept with the library, so that they outlive the page, its browser and its address. */
export const engineDraftHandlers = (given: Given): Group => ({
  'engine-draft.list': reads(given, async (db) => ok(await listEngineDrafts(db))),
  'engine-draft.keep': writes(given, async (db, { of, draft }) => {
    await keepEngineDraft(db, of, draft);
    return ok(null);
  }),
});
