export const STATIONS = ['run', 'plugs', 'photos', 'cylinders', 'findings'] as const;
export type Station = (typeof STATIONS)[number];

/** The pages of one engine, in the order of their tabs. */
export const ENGINE_PAGES = ['engine', 'engine-time', 'engine-photos', 'engine-heat'] as const;
export type EnginePage = (typeof ENGINE_PAGES)[number];

/** The parts of an engine's heat page, in the order of their rail. */
export const HEAT_PARTS = ['ladder', 'what-if', 'drive', 'spark', 'wear', 'air', 'torque', 'told'] as const;
export type HeatPart = (typeof HEAT_PARTS)[number];

/** The lists of what the program judges by. `here`: what of it spoke in one reading. */
export const SHELVES = ['looks', 'causes', 'checks', 'stops', 'bars', 'contradictions', 'cautions', 'words', 'sources', 'yours', 'here'] as const;
export type Shelf = (typeof SHELVES)[number];

/** The places that the bar leads to from everywhere. */
export type Place = 'shelf' | 'photos' | 'knowledge';
export const PLACES: readonly Place[] = ['shelf', 'photos', 'knowledge'];

export type Route =
  | { readonly page: 'shelf' }
  | { readonly page: 'engine-new' }
  | { readonly page: 'engine'; readonly id: string }
  | { readonly page: 'engine-edit'; readonly id: string }
  | { readonly page: 'engine-time'; readonly id: string }
  | { readonly page: 'engine-photos'; readonly id: string }
  | { readonly page: 'engine-heat'; readonly id: string; readonly part?: HeatPart }
  /** `field`: the field of the station that gets the focus. */
  | { readonly page: 'reading'; readonly id: string; readonly station: Station; readonly field?: string }
  /** `entry`: the id of what is looked up, on the shelf `here` that of a reading. `line`: the key of one line of it. */
  | { readonly page: 'knowledge'; readonly shelf?: Shelf; readonly entry?: string; readonly line?: string }
  | { readonly page: 'photos' }
  | { readonly page: 'settings' }
  | { readonly page: 'lost' };

const isStation = (word: string | undefined): word is Station => (STATIONS as readonly (string | undefined)[]).includes(word);

const isShelf = (word: string | undefined): word is Shelf => (SHELVES as readonly (string | undefined)[]).includes(word);

const isHeatPart = (word: string | undefined): word is HeatPart => (HEAT_PARTS as readonly (string | undefined)[]).includes(word);

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

type Parts = readonly (string | undefined)[];
const LOST: Route = { page: 'lost' };

function engineRoute([id, page, part]: Parts): Route {
  if (id === undefined) return LOST;
  switch (page) {
    case 'heat': return { page: 'engine-heat', id, ...(isHeatPart(part) && { part }) };
    case 'edit': return { page: 'engine-edit', id };
    case 'time': return { page: 'engine-time', id };
    case 'photos': return { page: 'engine-photos', id };
    default: return id === 'new' ? { page: 'engine-new' } : { page: 'engine', id };
  }
}

function readingRoute([id, station, field]: Parts): Route {
  if (id === undefined || (station !== undefined && !isStation(station))) return LOST;
  return { page: 'reading', id, station: station ?? 'plugs', ...(field !== undefined && { field }) };
}

function knowledgeRoute([shelf, entry, line]: Parts): Route {
  if (shelf !== undefined && !isShelf(shelf)) return LOST;
  return { page: 'knowledge', ...(shelf !== undefined && { shelf }), ...(entry !== undefined && { entry }), ...(line !== undefined && { line }) };
}

/** The screen that a hash names; 'lost' when it names none. */
export function routeOf(hash: string): Route {
  const [first, ...rest] = hash.replace(/^#\/?/, '').split('/').filter((part) => part !== '').map(decoded);
  switch (first) {
    case undefined: return { page: 'shelf' };
    case 'settings': return { page: 'settings' };
    case 'photos': return { page: 'photos' };
    case 'engine': return engineRoute(rest);
    case 'reading': return readingRoute(rest);
    case 'knowledge': return knowledgeRoute(rest);
    default: return LOST;
  }
}

export function hrefOf(route: Route): string {
  switch (route.page) {
    case 'shelf': case 'lost': return '#/';
    case 'settings': return '#/settings';
    case 'photos': return '#/photos';
    case 'knowledge': return ['#/knowledge', ...[route.shelf, route.entry, route.line].flatMap((part) => (part === undefined ? [] : [encodeURIComponent(part)]))].join('/');
    case 'engine-new': return '#/engine/new';
    case 'engine': return `#/engine/${encodeURIComponent(route.id)}`;
    case 'engine-edit': return `#/engine/${encodeURIComponent(route.id)}/edit`;
    case 'engine-time': return `#/engine/${encodeURIComponent(route.id)}/time`;
    case 'engine-photos': return `#/engine/${encodeURIComponent(route.id)}/photos`;
    case 'engine-heat': return ['#/engine', encodeURIComponent(route.id), 'heat', ...(route.part === undefined ? [] : [route.part])].join('/');
    case 'reading': return ['#/reading', encodeURIComponent(route.id), route.station, ...(route.field === undefined ? [] : [encodeURIComponent(route.field)])].join('/');
  }
}
