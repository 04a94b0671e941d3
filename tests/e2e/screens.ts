import type { Page } from 'playwright-core';
import { STATIONS, hrefOf, type Route } from '../../renderer/app/route.ts';
import type { Channel } from '../../shared/channel-names.ts';
import type { Input, Output } from '../../shared/channels.ts';
import { callFrom } from './library-steps.ts';

export const SIZES = [{ width: 1280, height: 800 }, { width: 1920, height: 1080 }] as const;
export const THEMES = ['light', 'dark'] as const;

async function answered<C extends Channel>(page: Page, channel: C, input: Input<C>): Promise<Output<C>> {
  const reply = await callFrom(page, channel, input);
  if (!reply.ok) throw new Error(`${channel}: ${JSON.stringify(reply.error)}`);
  return reply.value;
}

/** The screens worth a picture: the shelf, one engine's log and editor, and the stations of one reading of each engine. */
async function screens(page: Page): Promise<readonly (readonly [string, Route])[]> {
  const engines = await answered(page, 'engine.list', null);
  const readings = await Promise.all(engines.map(async ({ id, engine }) => {
    const [newest, before] = await answered(page, 'reading.list', { engineId: id });
    return { name: (engine.name ?? 'engine').split(' ', 1).join('').toLowerCase(), reading: before ?? newest };
  }));
  const first = engines.find(({ engine }) => engine.layout === 'inline') ?? engines[0];
  return [
    ['shelf', { page: 'shelf' }],
    ['settings', { page: 'settings' }],
    ...(first ? [['log', { page: 'engine', id: first.id }] as const, ['engine', { page: 'engine-edit', id: first.id }] as const, ['heat', { page: 'engine-heat', id: first.id }] as const] : []),
    ...readings.flatMap(({ name, reading }) => (reading ? STATIONS.map((station) => [`${name}-${station}`, { page: 'reading', id: reading.id, station }] as const) : [])),
  ];
}

/** Opens the program and goes through every screen, calling back when each has settled. */
export async function visitScreens(page: Page, address: string, each: (name: string) => Promise<void>): Promise<void> {
  await page.goto(address);
  await page.waitForURL((url) => url.pathname === '/');
  for (const [name, route] of await screens(page)) {
    await page.goto(`${new URL(address).origin}/${hrefOf(route)}`);
    await page.getByRole('main').waitFor();
    await page.waitForLoadState('networkidle');
    await page.waitForTimeout(300);
    await each(name);
  }
}
