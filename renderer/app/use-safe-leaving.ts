import { useEffect } from 'react';
import { useStore } from '../state/store.ts';

/** What is not saved yet of a reading when the window goes is sent once more, whatever screen is shown; if a save failed, the browser asks before it closes. */
export function useSafeLeaving(): void {
  const flush = useStore((state) => state.flushReading);
  const unsaved = useStore((state) => state.reading !== null && state.reading.version !== state.reading.savedVersion);
  useEffect(() => {
    const onHide = (): void => void flush();
    const onLeave = (event: BeforeUnloadEvent): void => { if (unsaved) event.preventDefault(); };
    window.addEventListener('pagehide', onHide);
    document.addEventListener('visibilitychange', onHide);
    window.addEventListener('beforeunload', onLeave);
    return () => {
      window.removeEventListener('pagehide', onHide);
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('beforeunload', onLeave);
    };
  }, [flush, unsaved]);
}
