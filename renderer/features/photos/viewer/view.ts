import type { Point } from '../../../../core/photo/pixels.ts';
import type { Room } from '../../../ui/use-room.ts';

/** How a picture lies on the screen: screen pixels = `scale` times picture pixels, plus `x`, `y`. */
export type View = { readonly scale: number; readonly x: number; readonly y: number };

/** Screen pixels to one picture pixel at most. */
const CLOSEST = 8;
/** A step of the zoom keys and of one notch of the wheel. */
export const ZOOM_STEP = 1.25;

export const toScreen = ({ scale, x, y }: View, at: Point): Point => ({ x: at.x * scale + x, y: at.y * scale + y });
export const toPicture = ({ scale, x, y }: View, at: Point): Point => ({ x: (at.x - x) / scale, y: (at.y - y) / scale });

const fittedScale = (picture: Room, room: Room): number => Math.min(room.width / picture.width, room.height / picture.height);

/** The whole picture in the middle of the room. */
export function fitted(picture: Room, room: Room): View {
  const scale = fittedScale(picture, room);
  return { scale, x: (room.width - picture.width * scale) / 2, y: (room.height - picture.height * scale) / 2 };
}

/** A picture smaller than the room stays in its middle; a larger one always covers it. */
function held(offset: number, size: number, room: number): number {
  return size <= room ? (room - size) / 2 : Math.min(0, Math.max(room - size, offset));
}

function inRoom(view: View, picture: Room, room: Room): View {
  return { ...view, x: held(view.x, picture.width * view.scale, room.width), y: held(view.y, picture.height * view.scale, room.height) };
}

/** Nearer or farther by `factor`; what lies under `at` (screen pixels) stays there. Never farther than the whole picture. */
export function zoomed(view: View, factor: number, at: Point, picture: Room, room: Room): View {
  const least = fittedScale(picture, room);
  const scale = Math.min(Math.max(CLOSEST, least), Math.max(least, view.scale * factor));
  const still = toPicture(view, at);
  return inRoom({ scale, x: at.x - still.x * scale, y: at.y - still.y * scale }, picture, room);
}

export function panned(view: View, dx: number, dy: number, picture: Room, room: Room): View {
  return inRoom({ ...view, x: view.x + dx, y: view.y + dy }, picture, room);
}

/** The view with a place of the picture in the middle of the room, filled by `reach` picture pixels around it. */
export function centredOn(at: Point, reach: number, picture: Room, room: Room): View {
  const scale = Math.min(CLOSEST, Math.max(fittedScale(picture, room), Math.min(room.width, room.height) / (2 * reach)));
  return inRoom({ scale, x: room.width / 2 - at.x * scale, y: room.height / 2 - at.y * scale }, picture, room);
}
