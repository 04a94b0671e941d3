import type { Page } from 'playwright-core';
import { ENGINE_PAGES, HEAT_PARTS, hrefOf, PLACES, SHELVES, STATIONS, type Route } from '../../renderer/app/route.ts';
import type { Channel } from '../../shared/channel-names.ts';
import type { EngineRecord, Input, Output } from '../../shared/channels.ts';
import type { PhotoRecord } from '../../shared/channels-photo.ts';
import { radialReading } from '../fixtures/radial-eighteen.ts';
import { callFrom } from './library-steps.ts';

export const SIZES = [{ width: 1280, height: 800 }, { width: 1920, height: 1080 }] as const;
export const THEMES = ['light', 'dark'] as const;
/** What a visit to every screen may take: a minute or two, many times as long on a busy machine. */
export const ALL_SCREENS_MS = 900_000;

/** `keys`: pressed once the screen is there, to lay a sheet over it. */
type Screen = { readonly name: string; readonly route: Route; readonly keys?: string };

async function answered<C extends Channel>(page: Page, channel: C, input: Input<C>): Promise<Output<C>> {
  const reply = await callFrom(page, channel, input);
  if (!reply.ok) throw new Error(`${channel}: ${JSON.stringify(reply.error)}`);
  return reply.value;
}

const shortName = ({ engine }: EngineRecord): string => (engine.name ?? 'engine').split(' ', 1).join('').toLowerCase();
const onlyPlaces: readonly Screen[] = [
  ...PLACES.map((page): Screen => ({ name: page, route: { page } })),
  { name: 'settings', route: { page: 'settings' } },
  { name: 'engine-new', route: { page: 'engine-new' } },
  ...SHELVES.filter((shelf) => shelf !== 'here').map((shelf): Screen => ({ name: `knowledge-${shelf}`, route: { page: 'knowledge', shelf } })),
];
const ofEngine = (id: string): readonly Screen[] => [
  ...ENGINE_PAGES.map((page): Screen => ({ name: page === 'engine' ? 'engine-log' : page, route: { page, id } })),
  { name: 'engine-edit', route: { page: 'engine-edit', id } },
  ...HEAT_PARTS.map((part): Screen => ({ name: `engine-heat-${part}`, route: { page: 'engine-heat', id, part } })),
];
const ofReading = (name: string, id: string): readonly Screen[] =>
  STATIONS.map((station): Screen => ({ name: `${name}-${station}`, route: { page: 'reading', id, station } }));
const aroundReading = (name: string, id: string): readonly Screen[] => [
  { name: `${name}-here`, route: { page: 'knowledge', shelf: 'here', entry: id } },
  { name: `${name}-errands`, route: { page: 'reading', id, station: 'plugs' }, keys: 'Control+k' },
  { name: `${name}-keys`, route: { page: 'reading', id, station: 'plugs' }, keys: '?' },
];

const ofPhoto = (name: string, photo: PhotoRecord | undefined): readonly Screen[] =>
  (photo ? [{ name: `${name}-photo`, route: { page: 'reading', id: photo.readingId, station: 'photos', field: photo.id } }] : []);

/** The screens worth a picture: every place, all pages of one engine with the sheets over its reading, and the stations of one reading of each engine. */
async function screens(page: Page): Promise<readonly Screen[]> {
  const engines = await answered(page, 'engine.list', null);
  const readings = await Promise.all(engines.map(async (record) => {
    const [newest, before] = await answered(page, 'reading.list', { engineId: record.id });
    const reading = before ?? newest;
    const [photo] = reading ? await answered(page, 'photo.list', { readingId: reading.id }) : [];
    return { engineId: record.id, name: shortName(record), reading, photo };
  }));
  const typical = engines.find(({ engine }) => engine.cylinders === 4 && engine.layout === 'inline') ?? engines[0];
  const read = readings.flatMap(({ engineId, name, reading, photo }) => (reading === undefined ? [] : [
    ...ofReading(name, reading.id), ...ofPhoto(name, photo), ...(engineId === typical?.id ? aroundReading(name, reading.id) : []),
  ]));
  return [...onlyPlaces, ...(typical ? ofEngine(typical.id) : []), ...read];
}

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForURL((url) => url.pathname === '/');
}

/** Opens a screen and waits until it has settled. Far below the window the browser leaves a lazy picture until somebody scrolls there. */
export async function goTo(page: Page, address: string, route: Route): Promise<void> {
  await page.goto(`${new URL(address).origin}/${hrefOf(route)}`);
  await page.getByRole('main').waitFor();
  await page.waitForLoadState('networkidle');
  await page.waitForFunction(() => [...document.images].every((image) =>
    image.complete || (image.loading === 'lazy' && image.getBoundingClientRect().top > window.innerHeight)));
  await page.waitForTimeout(300);
}

type Visit = (name: string) => Promise<void>;

/** Opens the program and goes through every screen, or those that `which` admits, calling back when each has settled. */
export async function visitScreens(page: Page, address: string, each: Visit, which: (name: string) => boolean = () => true): Promise<void> {
  await open(page, address);
  for (const { name, route, keys } of (await screens(page)).filter((screen) => which(screen.name))) {
    await goTo(page, address, route);
    if (keys !== undefined) {
      await page.locator('#bench :focus').or(page.locator('#bench')).last().press(keys);
      await page.getByRole('dialog').waitFor();
    }
    await each(name);
    if (keys !== undefined) await page.keyboard.press('Escape');
  }
}

/** Opens the program and goes to one of the screens. @throws when none has this name */
export async function visitScreen(page: Page, address: string, name: string): Promise<void> {
  await open(page, address);
  const found = (await screens(page)).find((screen) => screen.name === name);
  if (found === undefined) throw new Error(`no screen is called ${name}`);
  await goTo(page, address, found.route);
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
