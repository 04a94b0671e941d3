import { useLayoutEffect, useRef, useState, type RefObject } from 'react';
/** CSS pixels. */
export type Room = { readonly width: number; readonly height: number };

/** The room an element has, kept up to date. @param supposed before the first measurement, and where nothing can be measured */
export function useRoom<E extends HTMLElement>(supposed: Room): readonly [RefObject<E | null>, Room] {
  const element = useRef<E>(null);
  const [room, setRoom] = useState(supposed);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() => setRoom({ width: current.clientWidth, height: current.clientHeight }));
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return [element, room];
}
