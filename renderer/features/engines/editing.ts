import { createContext, useContext } from 'react';
import type { Problem } from '../../../shared/formats/strict.ts';
import { checkedDraft, draftOf, emptyDraft, withEntry, type EngineDraft } from '../../state/engine-draft.ts';
import { useStore } from '../../state/store.ts';

export type Editing = {
  readonly draft: EngineDraft;
  readonly changed: boolean;
  readonly change: (next: EngineDraft) => void;
  readonly enter: (path: string, value: unknown, raw?: string) => void;
  /** What is wrong at this path or below it, once saving was tried. */
  readonly problemAt: (path: string) => string | undefined;
};

export const EditingContext = createContext<Editing | null>(null);

/** The engine that is being edited. @throws outside the editor, which is a bug. */
export function useEditing(): Editing {
  const editing = useContext(EditingContext);
  if (editing === null) throw new Error('no engine is being edited');
  return editing;
}

const at = (problem: Problem, path: string): boolean => problem.path === path || problem.path.startsWith(`${path}.`);

/** The draft of an engine in the store, made from the saved engine on the first change. */
export function useEngineDraft(id: string | null, tried: boolean): Editing {
  const key = id ?? 'new';
  const saved = useStore((state) => state.engines.find((record) => record.id === id)?.engine);
  const begun = useStore((state) => state.engineDrafts[key]);
  const setDraft = useStore((state) => state.setEngineDraft);
  const draft = begun ?? (saved === undefined ? emptyDraft : draftOf(saved));
  const checked = checkedDraft(draft);
  const change = (next: EngineDraft): void => setDraft(key, next);
  return {
    draft,
    changed: begun !== undefined,
    change,
    enter: (path, value, raw) => change(withEntry(draft, path, value, raw)),
    problemAt: (path) => (tried && !checked.ok ? checked.error.find((problem) => at(problem, path))?.message : undefined),
  };
}
