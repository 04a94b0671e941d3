import { useEffect } from 'react';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { hrefOf, STATIONS, type Station } from './route.ts';

export function ReadingFrame({ id, station }: { id: string; station: Station }) {
  const text = useText();
  const open = useStore((state) => state.reading?.id === id);
  const openReading = useStore((state) => state.openReading);
  useEffect(() => { if (!open) void openReading(id); }, [open, openReading, id]);
  if (!open) return null;
  return (
    <>
      <nav>{STATIONS.map((name) => <a key={name} href={hrefOf({ page: 'reading', id, station: name })}>{text.shell.stations[name]}</a>)}</nav>
      <main><h1>{text.shell.stations[station]}</h1></main>
    </>
  );
}
