import { useEffect, useRef, useState } from 'react';
import { EngineEditor, EngineShelf, OpenedSheets } from '../features/engines/index.ts';
import { Timeline } from '../features/followup/index.ts';
import { HeatScreen } from '../features/heat/index.ts';
import { KnowledgeScreen } from '../features/knowledge/index.ts';
import { EngineLog } from '../features/log/index.ts';
import { CompareScreen, PhotoLibraryScreen } from '../features/photos/index.ts';
import { SettingsScreen } from '../features/settings/index.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { Notice } from '../ui/notice.tsx';
import { useKeys } from '../ui/use-keys.ts';
import styles from './app.module.css';
import { Bar, type Sheets } from './bar.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { ErrandsSheet } from './errands-sheet.tsx';
import { focusOnBench, focusOnBenchIfFree } from './focus-on-bench.ts';
import { KeysSheet } from './keys-sheet.tsx';
import { Messages } from './messages.tsx';
import { ReadingFrame } from './reading-frame.tsx';
import { hrefOf, type Route } from './route.ts';
import { Troubles } from './troubles.tsx';
import { useAppearance } from './use-appearance.ts';
import { useRoute } from './use-route.ts';
import { useSafeLeaving } from './use-safe-leaving.ts';
import { useTitle } from './use-title.ts';

function Screen({ route }: { route: Route }) {
  const text = useText();
  switch (route.page) {
    case 'shelf': return <EngineShelf />;
    case 'engine-new': return <EngineEditor id={null} />;
    case 'engine': return <EngineLog id={route.id} />;
    case 'engine-edit': return <EngineEditor id={route.id} />;
    case 'engine-time': return <Timeline id={route.id} />;
    case 'engine-photos': return <CompareScreen key={route.id} id={route.id} />;
    case 'engine-heat': return <HeatScreen id={route.id} part={route.part ?? 'ladder'} />;
    case 'photos': return <PhotoLibraryScreen />;
    case 'knowledge': return <KnowledgeScreen shelf={route.shelf} entry={route.entry} line={route.line} />;
    case 'settings': return <SettingsScreen />;
    case 'reading': return null;
    case 'lost': return <Notice title={text.shell.notHere}><a href={hrefOf({ page: 'shelf' })}>{text.shell.allEngines}</a></Notice>;
  }
}

/** A screen that goes on from one address to the next keeps what is typed and where it is scrolled to. */
const screenOf = (route: Route): string => (route.page === 'knowledge' ? route.page : hrefOf(route));

/** Moves the focus to the bench when another screen is shown, so that the keyboard starts there. */
function useFocusOnBench(address: string): void {
  const shown = useRef(address);
  useEffect(() => {
    if (shown.current !== address) focusOnBenchIfFree();
    shown.current = address;
  }, [address]);
}

function Bench({ route, sheets }: { route: Route; sheets: Sheets }) {
  const ready = useStore((state) => state.info !== null);
  const startProblem = useStore((state) => state.startProblem);
  const text = useText();
  if (!ready) {
    return (
      <main id="bench" tabIndex={-1} className={styles.bench}>
        <Troubles />
        {startProblem === null
          ? <p role="status">{text.shell.loading}</p>
          : <Notice tone="problem" title={text.shell.library.start}>{text.shell.error(startProblem)}</Notice>}
      </main>
    );
  }
  if (route.page === 'reading') return <ReadingFrame id={route.id} station={route.station} sheets={sheets} />;
  return (
    <>
      <Bar page={route.page} {...sheets} />
      <Troubles />
      <main id="bench" tabIndex={-1} className={styles.bench}>
        <ErrorBoundary key={screenOf(route)} text={text}><Screen route={route} /></ErrorBoundary>
      </main>
    </>
  );
}

export function App() {
  const route = useRoute();
  const text = useText();
  const start = useStore((state) => state.start);
  const [keysOpen, setKeysOpen] = useState(false);
  const [errandsOpen, setErrandsOpen] = useState(false);
  useFocusOnBench(hrefOf(route));
  useAppearance();
  useTitle(route);
  useSafeLeaving();
  useKeys({ '?': () => setKeysOpen(true), 'Ctrl K': () => setErrandsOpen(true) });
  useEffect(() => { void start(); }, [start]);
  return (
    <ErrorBoundary text={text}>
      <button type="button" className={styles.skip} onClick={focusOnBench}>{text.shell.skip}</button>
      <Bench route={route} sheets={{ onKeys: () => setKeysOpen(true), onErrands: () => setErrandsOpen(true) }} />
      <OpenedSheets />
      <Messages />
      <ErrandsSheet open={errandsOpen} onOpenChange={setErrandsOpen} onKeys={() => setKeysOpen(true)} />
      <KeysSheet open={keysOpen} onOpenChange={setKeysOpen} />
    </ErrorBoundary>
  );
}
