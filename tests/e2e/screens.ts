import type { Page } from 'playwright-core';
import { STATIONS, hrefOf, type Route } from '../../renderer/app/route.ts';
import type { Channel } from '../../shared/channel-names.ts';
import type { EngineRecord, Input, Output } from '../../shared/channels.ts';
import { radialReading } from '../fixtures/radial-eighteen.ts';
import { callFrom } from './library-steps.ts';

export const SIZES = [{ width: 1280, height: 800 }, { width: 1920, height: 1080 }] as const;
export const THEMES = ['light', 'dark'] as const;

type Named = readonly [name: string, route: Route];

async function answered<C extends Channel>(page: Page, channel: C, input: Input<C>): Promise<Output<C>> {
  const reply = await callFrom(page, channel, input);
  if (!reply.ok) throw new Error(`${channel}: ${JSON.stringify(reply.error)}`);
  return reply.value;
}

const shortName = ({ engine }: EngineRecord): string => (engine.name ?? 'engine').split(' ', 1).join('').toLowerCase();
const ofEngine = (id: string): readonly Named[] => [['log', { page: 'engine', id }], ['engine', { page: 'engine-edit', id }], ['heat', { page: 'engine-heat', id }]];
const ofReading = (name: string, id: string): readonly Named[] => STATIONS.map((station) => [`${name}-${station}`, { page: 'reading', id, station }]);

/** The screens worth a picture: the shelf, one engine's log and editor, and the stations of one reading of each engine. */
async function screens(page: Page): Promise<readonly Named[]> {
  const engines = await answered(page, 'engine.list', null);
  const readings = await Promise.all(engines.map(async (record) => {
    const [newest, before] = await answered(page, 'reading.list', { engineId: record.id });
    return { name: shortName(record), reading: before ?? newest };
  }));
  const first = engines.find(({ engine }) => engine.layout === 'inline') ?? engines[0];
  return [
    ['shelf', { page: 'shelf' }],
    ['settings', { page: 'settings' }],
    ['engine-new', { page: 'engine-new' }],
    ...(first ? ofEngine(first.id) : []),
    ...readings.flatMap(({ name, reading }) => (reading ? ofReading(name, reading.id) : [])),
  ];
}

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForURL((url) => url.pathname === '/');
}

export async function goTo(page: Page, address: string, route: Route): Promise<void> {
  await page.goto(`${new URL(address).origin}/${hrefOf(route)}`);
  await page.getByRole('main').waitFor();
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(300);
}

/** Opens the program and goes through every screen, calling back when each has settled. */
export async function visitScreens(page: Page, address: string, each: (name: string) => Promise<void>): Promise<void> {
  await open(page, address);
  for (const [name, route] of await screens(page)) {
    await goTo(page, address, route);
    await each(name);
  }
}

/** An engine whose reading has just been started, so that every station is empty. Gives back its reading. */
export async function addEmptyReading(page: Page, address: string): Promise<string> {
  await open(page, address);
  const { id } = await answered(page, 'engine.save', { id: null, engine: { name: 'Empty four', use: 'road', cylinders: 4 } });
  return (await answered(page, 'reading.start', { engineId: id })).id;
}

/** The radial with two plugs in each of its 18 cylinders, read. Gives back its reading. */
export async function addRadialReading(page: Page, address: string): Promise<string> {
  await open(page, address);
  return (await answered(page, 'reading.import', { text: JSON.stringify(radialReading) })).readingId;
}
