import { describe, expect, it } from 'vitest';
import { hrefOf, routeOf, STATIONS, type Route } from '../../../../renderer/app/route.ts';

const routes: readonly Route[] = [
  { page: 'shelf' }, { page: 'engine-new' }, { page: 'engine', id: 'a-1' }, { page: 'engine-edit', id: 'a-1' }, { page: 'settings' },
  ...STATIONS.map((station) => ({ page: 'reading' as const, id: 'r/2', station })),
];

describe('the address of a screen', () => {
  it.each(routes)('leads back to it: %o', (route) => {
    expect(routeOf(hrefOf(route))).toEqual(route);
  });

  it('of a reading opens the tray when no station is named', () => {
    expect(routeOf('#/reading/7')).toEqual({ page: 'reading', id: '7', station: 'plugs' });
  });

  it.each(['#/nowhere', '#/reading/7/attic', '#/engine', '#/%'])('%s is said to be unknown', (hash) => {
    expect(routeOf(hash)).toEqual({ page: 'lost' });
  });
});
