import { useEffect, useRef, useState, type RefObject } from 'react';
import type { Point } from '../../../../core/photo/pixels.ts';
import { useRoom, type Room } from '../../../ui/use-room.ts';
import { centredOn, fitted, panned, zoomed, ZOOM_STEP, type View } from './view.ts';

export type Viewing = {
  readonly surface: RefObject<HTMLDivElement | null>;
  readonly room: Room;
  readonly view: View;
  /** @param at screen pixels within the surface; its middle where absent */
  readonly zoom: (factor: number, at?: Point) => void;
  readonly pan: (dx: number, dy: number) => void;
  readonly fit: () => void;
  /** One pixel of the picture to one of the screen. */
  readonly toFull: () => void;
};

const SUPPOSED: Room = { width: 800, height: 600 };
const WHEEL_NOTCH = 100;

/** A place of a picture, and how far around it is seen. */
export type Spot = { readonly at: Point; readonly reach: number };

/** How a picture is looked at, at first whole or around a spot. The wheel makes it larger where the pointer is. */
export function useView(picture: Room, spot?: Spot): Viewing {
  const [surface, room] = useRoom<HTMLDivElement>(SUPPOSED);
  const [moved, setMoved] = useState<View | 'whole' | null>(null);
  const first = (): View => (spot === undefined ? fitted(picture, room) : centredOn(spot.at, spot.reach, picture, room));
  const seen = (state: typeof moved): View => (state === null ? first() : state === 'whole' ? fitted(picture, room) : panned(state, 0, 0, picture, room));
  const view = seen(moved);
  const change = (next: (from: View) => View): void => setMoved((before) => next(seen(before)));
  const middle = { x: room.width / 2, y: room.height / 2 };
  const zoom = (factor: number, at: Point = middle): void => change((from) => zoomed(from, factor, at, picture, room));
  const latest = useRef(zoom);
  useEffect(() => { latest.current = zoom; });
  useEffect(() => {
    const { current } = surface;
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      const { left, top } = (event.currentTarget as HTMLElement).getBoundingClientRect();
      latest.current(ZOOM_STEP ** (-event.deltaY / WHEEL_NOTCH), { x: event.clientX - left, y: event.clientY - top });
    };
    current?.addEventListener('wheel', onWheel, { passive: false });
    return () => current?.removeEventListener('wheel', onWheel);
  }, [surface]);
  return {
    surface, room, view, zoom,
    pan: (dx, dy) => change((from) => panned(from, dx, dy, picture, room)),
    fit: () => setMoved('whole'),
    toFull: () => zoom(1 / view.scale),
  };
}
