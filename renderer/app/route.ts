export const STATIONS = ['run', 'plugs', 'cylinders', 'findings'] as const;
export type Station = (typeof STATIONS)[number];

/** The pages of one engine, in the order of their tabs. */
export const ENGINE_PAGES = ['engine', 'engine-heat'] as const;
export type EnginePage = (typeof ENGINE_PAGES)[number];

/** The places that the bar leads to from everywhere. */
export type Place = 'shelf';
export const PLACES: readonly Place[] = ['shelf'];

export type Route =
  | { readonly page: 'shelf' }
  | { readonly page: 'engine-new' }
  | { readonly page: 'engine'; readonly id: string }
  | { readonly page: 'engine-edit'; readonly id: string }
  | { readonly page: 'engine-heat'; readonly id: string }
  /** `field`: the field of the station that gets the focus. */
  | { readonly page: 'reading'; readonly id: string; readonly station: Station; readonly field?: string }
  | { readonly page: 'settings' }
  | { readonly page: 'lost' };

const isStation = (word: string | undefined): word is Station => (STATIONS as readonly (string | undefined)[]).includes(word);

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** The screen that a hash names; 'lost' when it names none. */
export function routeOf(hash: string): Route {
  const [first, second, third, fourth] = hash.replace(/^#\/?/, '').split('/').filter((part) => part !== '').map(decoded);
  if (first === undefined) return { page: 'shelf' };
  if (first === 'settings') return { page: 'settings' };
  if (first === 'engine' && second === 'new') return { page: 'engine-new' };
  if (first === 'engine' && second !== undefined) return { page: third === 'edit' ? 'engine-edit' : third === 'heat' ? 'engine-heat' : 'engine', id: second };
  if (first === 'reading' && second !== undefined && (third === undefined || isStation(third))) {
    return { page: 'reading', id: second, station: third ?? 'plugs', ...(fourth !== undefined && { field: fourth }) };
  }
  return { page: 'lost' };
}

export function hrefOf(route: Route): string {
  switch (route.page) {
    case 'shelf': case 'lost': return '#/';
    case 'settings': return '#/settings';
    case 'engine-new': return '#/engine/new';
    case 'engine': return `#/engine/${encodeURIComponent(route.id)}`;
    case 'engine-edit': return `#/engine/${encodeURIComponent(route.id)}/edit`;
    case 'engine-heat': return `#/engine/${encodeURIComponent(route.id)}/heat`;
    case 'reading': return ['#/reading', encodeURIComponent(route.id), route.station, ...(route.field === undefined ? [] : [encodeURIComponent(route.field)])].join('/');
  }
}
