import { useSyncExternalStore } from 'react';
import { hrefOf, routeOf, type Route } from './route.ts';

function onHash(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

export const useRoute = (): Route => routeOf(useSyncExternalStore(onHash, () => window.location.hash));

export function navigate(route: Route): void {
  window.location.hash = hrefOf(route);
}
