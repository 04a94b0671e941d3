import { useEffect } from 'react';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { ReadingFrame } from './reading-frame.tsx';
import { useRoute } from './use-route.ts';

export function App() {
  const route = useRoute();
  const text = useText();
  const start = useStore((state) => state.start);
  useEffect(() => { void start(); }, [start]);
  if (route.page === 'reading') return <ReadingFrame id={route.id} station={route.station} />;
  return <main><h1>{text.shell.name}</h1></main>;
}
