import { useEffect, useRef } from 'react';

/** `Alt 1`, `Ctrl Shift Z`, `?`: modifiers first, then the key; on a Mac, Command counts as Ctrl. */
function keyName(event: KeyboardEvent): string {
  const letter = event.altKey && /^Digit\d$/.test(event.code) ? event.code.slice(-1) : event.key.length === 1 ? event.key.toUpperCase() : event.key;
  const shifted = event.shiftKey && /^[A-Z]$|^.{2,}$/.test(letter);
  return [event.ctrlKey || event.metaKey ? 'Ctrl' : '', event.altKey ? 'Alt' : '', shifted ? 'Shift' : '', letter].filter(Boolean).join(' ');
}

export const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.matches('input, textarea, select') || target.isContentEditable);

const isFreeWhileTyping = (name: string): boolean => name.startsWith('Alt ') || name === 'Ctrl Enter' || name === 'Ctrl K';

/** Keys that work all over a screen. While text is being typed, only those that no field has a use for, unlike Ctrl Z. */
export function useKeys(keys: Readonly<Record<string, () => void>>): void {
  const latest = useRef(keys);
  useEffect(() => { latest.current = keys; });
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const name = keyName(event);
      const act = latest.current[name];
      const dialogOpen = document.querySelector('[role="dialog"]') !== null;
      if (act === undefined || dialogOpen || event.defaultPrevented) return;
      if (isTyping(event.target) && !isFreeWhileTyping(name)) return;
      event.preventDefault();
      act();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
