import { z } from 'zod';
import type { EngineDraft } from './engine-draft.ts';

type Drafts = Readonly<Record<string, EngineDraft>>;

/** A draft may hold half a heat value, so its fields are checked when it is saved, not here. */
const format = z.record(z.string(), z.strictObject({ fields: z.record(z.string(), z.unknown()), raw: z.record(z.string(), z.string()) }));
const placeOf = (folder: string): string => `engine drafts of ${folder}`;

/** Engines that were being written down in this library when the page went away; none when what is found there cannot be read. */
export function keptDrafts(folder: string): Drafts {
  try {
    const parsed = format.safeParse(JSON.parse(localStorage.getItem(placeOf(folder)) ?? '{}'));
    return parsed.success ? parsed.data : {};
  } catch {
    return {};
  }
}

/** Keeps them beside the page until they are saved. A browser that refuses leaves them on the screen only. */
export function keepDrafts(folder: string, drafts: Drafts): void {
  try {
    if (Object.keys(drafts).length === 0) localStorage.removeItem(placeOf(folder));
    else localStorage.setItem(placeOf(folder), JSON.stringify(drafts));
  } catch {
    // The draft is on the screen; saving the engine still works.
  }
}
