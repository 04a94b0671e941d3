import { useEffect, useRef, useState } from 'react';

const PRESS = ['pointerdown', 'pointerup', 'pointercancel'] as const;
const RELEASE = ['pointerup', 'pointercancel'] as const;

/**
 * The text of a field while it is typed; null otherwise. What stands below a field changes when the typing ends and moves what comes after it,
 * so a press that takes the focus away ends first: else its target would slip from under it.
 */
export function useTyping(): readonly [typing: string | null, type: (text: string) => void, onBlur: () => void] {
  const [typing, setTyping] = useState<string | null>(null);
  const pressing = useRef(false);
  const active = typing !== null;
  useEffect(() => {
    if (!active) return;
    const follow = ({ type }: Event): void => { pressing.current = type === 'pointerdown'; };
    for (const name of PRESS) window.addEventListener(name, follow, true);
    return () => { for (const name of PRESS) window.removeEventListener(name, follow, true); };
  }, [active]);

  const onBlur = (): void => {
    if (!pressing.current) return setTyping(null);
    const released = new AbortController();
    const end = (): void => {
      released.abort();
      setTimeout(() => setTyping(null));
    };
    for (const name of RELEASE) window.addEventListener(name, end, { signal: released.signal });
  };
  return [typing, setTyping, onBlur];
}
