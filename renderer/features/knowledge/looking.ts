import { createContext, useContext } from 'react';
import type { Knowledge } from '../../../core/knowledge/types.ts';

/** What is being looked up, for everything on the page of an entry. */
export type Looking = {
  readonly knowledge: Knowledge;
  /** The key of the line that the address names. */
  readonly line: string | undefined;
  /** Lines that spoke in the open reading, with the greatest weight each had there, in bits; negative speaks against. */
  readonly spoken: ReadonlyMap<string, number>;
};

const Context = createContext<Looking | null>(null);
export const LookingProvider = Context.Provider;

/** @throws outside the screen, which is a bug. */
export function useLooking(): Looking {
  const looking = useContext(Context);
  if (looking === null) throw new Error('nothing is being looked up');
  return looking;
}
