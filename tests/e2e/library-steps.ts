import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { addEngine } from '../../electron/node/storage/engines.ts';
import { openLibrary } from '../../electron/node/storage/library.ts';
import type { Channel } from '../../shared/channel-names.ts';
import type { Bridge, Input, Reply } from '../../shared/channels.ts';
import type { Engine } from '../../shared/formats/engine.ts';

declare global {
  interface Window { readonly corenose: Bridge; planted?: boolean }
}

/** Makes a call as the page does, on whichever host it was opened. */
export const callFrom = <C extends Channel>(page: Page, channel: C, input: Input<C>): Promise<Reply<C>> =>
  page.evaluate(async ({ name, payload }) => {
    const bridge = window.corenose as unknown as Partial<Record<string, (input: unknown) => Promise<unknown>>> | undefined;
    if (bridge !== undefined) return bridge[name]?.(payload);
    const answer = await fetch(`/call/${name}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(payload) });
    return (await answer.json()) as unknown;
  }, { name: channel, payload: input }) as Promise<Reply<C>>;

/** Leaves a library with one engine, a backup of it, and a file whose inside was overwritten. @returns the name of the backup. */
export async function damageLibrary(folder: string, engine: Engine): Promise<string> {
  const first = await openLibrary({ folder, kind: 'own', now: new Date('2026-03-20T09:00:00Z') });
  if (first.db === null) throw new Error('the library did not open');
  await addEngine(first.db, '00000000-0000-4000-8000-000000000001', engine, '2026-03-20T09:00:00.000Z');
  first.close();
  (await openLibrary({ folder, kind: 'own', now: new Date('2026-03-21T09:00:00Z') })).close();
  const file = join(folder, 'library.sqlite');
  writeFileSync(file, readFileSync(file).fill(0x5a, 4096, 12_288));
  return '2026-03-21T090000Z.sqlite';
}
