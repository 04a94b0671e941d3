import { useEffect } from 'react';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import type { Route } from './route.ts';

/** Names the window after the screen, so that windows and history entries can be told apart. */
export function useTitle(route: Route): void {
  const { shell, engines, followUp, heat, knowledge, photos, settings } = useText();
  const id = 'id' in route ? route.id : undefined;
  const ofReading = useStore((state) => (state.reading?.id === id ? state.reading?.history.now.sheet.engine.name : undefined));
  const ofEngine = useStore((state) => state.engines.find((record) => record.id === id)?.engine.name);
  const name = ofReading ?? ofEngine ?? engines.unnamed;
  const screens: Record<Route['page'], string> = {
    shelf: engines.shelf, 'engine-new': engines.edit.newTitle, engine: name, 'engine-edit': engines.edit.title(name), 'engine-heat': heat.titleOf(name),
    'engine-time': followUp.titleOf(name),
    settings: settings.title, photos: photos.library.title, 'engine-photos': photos.titleOf(name),
    knowledge: route.page === 'knowledge' && route.shelf !== undefined ? knowledge.title(knowledge.shelves[route.shelf]) : knowledge.place,
    reading: route.page === 'reading' ? `${shell.stations[route.station]} · ${name}` : '', lost: shell.notHere,
  };
  const title = `${screens[route.page]} · ${shell.name}`;
  useEffect(() => { document.title = title; }, [title]);
}
