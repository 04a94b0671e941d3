import { useSyncExternalStore } from 'react';

/** Whether the program answers this page: 'gone' when nothing does, 'started anew' when one answers that was started after the page was opened. */
export type HostPresence = 'here' | 'gone' | 'started anew';

let presence: HostPresence = 'here';
const listeners = new Set<() => void>();

/** Notes what the last call met with. */
export function noteHost(next: HostPresence): void {
  if (next === presence) return;
  presence = next;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export const useHostPresence = (): HostPresence => useSyncExternalStore(subscribe, () => presence);
