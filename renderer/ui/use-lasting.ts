import { useEffect, useState } from 'react';

/** Whether something holds and has held for so many milliseconds: what passes sooner would only flicker. */
export function useLasting(holds: boolean, ms: number): boolean {
  const [lasts, setLasts] = useState(false);
  useEffect(() => {
    if (!holds) return;
    const timer = setTimeout(() => setLasts(true), ms);
    return () => {
      clearTimeout(timer);
      setLasts(false);
    };
  }, [holds, ms]);
  return holds && lasts;
}
