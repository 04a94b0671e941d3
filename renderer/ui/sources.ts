import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import type { Source } from '../../core/knowledge/types.ts';

/** The source an id stands for; undefined when the register has none of that name. */
export const sourceOf = (id: string): Source | undefined => KNOWLEDGE.sources.find((source) => source.id === id);
