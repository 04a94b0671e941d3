import { useEffect, useState } from 'react';
import type { AppError } from '../../shared/channels.ts';
import { DropPhotos } from '../features/photos/index.ts';
import { useStore } from '../state/store.ts';
import { useText } from '../text/index.ts';
import { Button } from '../ui/button.tsx';
import { Dialog } from '../ui/dialog.tsx';
import { Notice } from '../ui/notice.tsx';
import { Said } from '../ui/said.tsx';
import { useKeys } from '../ui/use-keys.ts';
import appStyles from './app.module.css';
import { Bar, type Sheets } from './bar.tsx';
import { ErrorBoundary } from './error-boundary.tsx';
import { focusOnBenchIfFree } from './focus-on-bench.ts';
import styles from './reading-frame.module.css';
import { ReadingHead } from './reading-head.tsx';
import { hrefOf, type Station } from './route.ts';
import { StationScreen } from './station-screen.tsx';
import { StationsRail } from './stations-rail.tsx';
import { Troubles } from './troubles.tsx';
import { navigate } from './use-route.ts';
import { useSteps } from './use-steps.ts';

/** Opens the reading that the address names, unless it is open already. */
function useOpened(id: string): { open: boolean; problem: AppError | null } {
  const open = useStore((state) => state.reading?.id === id);
  const openReading = useStore((state) => state.openReading);
  const [problem, setProblem] = useState<AppError | null>(null);
  useEffect(() => {
    if (open) return;
    let left = false;
    void openReading(id).then((error) => { if (!left) setProblem(error); });
    return () => { left = true; };
  }, [open, openReading, id]);
  return { open, problem: open ? null : problem };
}

function ClosedQuestion() {
  const { reading: words, cancel, error: errorText } = useText().shell;
  const refused = useStore((state) => state.reading?.refused === true);
  const dismiss = useStore((state) => state.dismissRefusal);
  const reopen = useStore((state) => state.reopenReading);
  const tell = useStore((state) => state.tell);
  const openAgain = async (): Promise<void> => {
    const error = await reopen();
    if (error !== null) tell({ text: errorText(error), tone: 'problem' });
  };
  return (
    <Dialog title={words.closedTitle} about={words.closedAbout} open={refused} onOpenChange={dismiss}>
      <div className={styles.choices}>
        <Button look="main" onClick={() => void openAgain()}>{words.reopen}</Button>
        <Button onClick={dismiss}>{cancel}</Button>
      </div>
    </Dialog>
  );
}

function useReadingKeys(id: string): void {
  const { undo, redo } = useSteps();
  const go = (station: Station) => () => navigate({ page: 'reading', id, station });
  useKeys({
    'Ctrl Z': undo, 'Ctrl Shift Z': redo, 'Ctrl Y': redo,
    'Alt 1': go('run'), 'Alt 2': go('plugs'), 'Alt 3': go('photos'), 'Alt 4': go('cylinders'), 'Alt 5': go('findings'),
  });
}

/** A reading on the bench: its head, the stations, and the station at work, which has the rest of the window to itself. */
export function ReadingFrame({ id, station, sheets }: { id: string; station: Station; sheets: Sheets }) {
  const text = useText();
  const { open, problem } = useOpened(id);
  useReadingKeys(id);
  useEffect(() => { if (open) focusOnBenchIfFree(); }, [open]);
  if (!open) {
    return (
      <>
        <Bar page="reading" {...sheets} />
        <Troubles />
        <main id="bench" tabIndex={-1} className={appStyles.bench}>
          {problem === null ? <p role="status">{text.shell.loading}</p> : (
            <Notice tone="problem" title={text.shell.reading.missing}><p>{text.shell.error(problem)}</p><a href={hrefOf({ page: 'shelf' })}>{text.shell.allEngines}</a></Notice>
          )}
        </main>
      </>
    );
  }
  return (
    <div className={styles.frame}>
      <Bar page="reading" {...sheets}><ReadingHead /></Bar>
      <StationsRail id={id} station={station} />
      <div className={styles.notices}><Troubles /></div>
      <main id="bench" tabIndex={-1} className={styles.bench}>
        <h1><Said>{text.shell.stations[station]}</Said></h1>
        <ErrorBoundary key={station} text={text}><StationScreen station={station} /></ErrorBoundary>
      </main>
      <ClosedQuestion />
      <DropPhotos readingId={id} onGiven={() => navigate({ page: 'reading', id, station: 'photos' })} />
    </div>
  );
}
