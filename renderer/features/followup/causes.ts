import { KNOWLEDGE } from '../../../core/knowledge/index.ts';
import type { Cause } from '../../../core/knowledge/types.ts';

const byId = new Map(KNOWLEDGE.causes.map((cause) => [cause.id, cause]));

export const causeOf = (id: string): Cause | undefined => byId.get(id);
/** The name of a cause, or its id where the knowledge has no such cause. */
export const causeName = (id: string): string => byId.get(id)?.name ?? id;
/** What can be put right, kind by kind. */
export const CURABLE: readonly Cause[] = KNOWLEDGE.causes
  .filter(({ harmless }) => harmless !== true)
  .sort((a, b) => (a.kind === b.kind ? (a.name < b.name ? -1 : 1) : a.kind < b.kind ? -1 : 1));
