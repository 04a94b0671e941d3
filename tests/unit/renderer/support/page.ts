import { configure } from '@testing-library/react';
import { vi } from 'vitest';
import type { AppInfo } from '../../../../shared/channels.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { fakeHost, type FakeHost } from './fake-host.ts';

/** A loaded machine draws slowly; no test waits this long when all is well. */
vi.setConfig({ testTimeout: 30_000 });
configure({ asyncUtilTimeout: 10_000 });

/** What jsdom lacks and the page uses. */
function standIns(): void {
  vi.stubGlobal('matchMedia', () => ({ matches: false, addEventListener: () => undefined, removeEventListener: () => undefined }));
  vi.stubGlobal('scrollTo', () => undefined);
  vi.stubGlobal('ResizeObserver', class { observe = (): void => undefined; unobserve = (): void => undefined; disconnect = (): void => undefined; });
  Element.prototype.scrollIntoView = () => undefined;
  Element.prototype.hasPointerCapture = () => false;
}

/** A fresh page on a fresh host in memory. */
export function freshPage(library: Partial<AppInfo['library']> = {}): FakeHost {
  standIns();
  const host = fakeHost(library);
  vi.stubGlobal('corenose', host.bridge);
  useStore.setState(useStore.getInitialState(), true);
  window.location.hash = '';
  return host;
}

/** Puts an engine on the shelf and a draft reading of it on the bench; gives back the id of the reading. */
export async function openReadingOf(engine: Engine): Promise<string> {
  const saved = await useStore.getState().saveEngine(null, engine);
  if (!saved.ok) throw new Error('the engine was not saved');
  const started = await useStore.getState().startReading(saved.value.id);
  if (!started.ok) throw new Error('the reading was not started');
  return started.value;
}
