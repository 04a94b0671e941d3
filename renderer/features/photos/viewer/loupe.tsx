import type { Point } from '../../../../core/photo/pixels.ts';
import type { Room } from '../../../ui/use-room.ts';
import { Layer, type Pictured } from './layer.tsx';
import { toScreen, type View } from './view.ts';
import styles from './viewer.module.css';

const SIZE = 240;
const LARGER = 3;
/** From the place that is looked at to the middle of the lens, so that the lens does not lie on it. */
const ASIDE = SIZE / 2 + 24;

type Props = { readonly photo: Pictured; readonly at: Point; readonly view: View; readonly room: Room; readonly filter?: string | undefined };

/** Three times what is seen, at least every pixel of the picture, in a lens beside the place. */
export function Loupe({ photo, at, view, room, filter }: Props) {
  const scale = Math.max(1, LARGER * view.scale);
  const place = toScreen(view, at);
  const middle = { x: place.x + (place.x + ASIDE + SIZE / 2 > room.width ? -ASIDE : ASIDE), y: Math.min(room.height - SIZE / 2, Math.max(SIZE / 2, place.y)) };
  return (
    <div className={styles.loupe} aria-hidden="true" style={{ left: middle.x - SIZE / 2, top: middle.y - SIZE / 2, width: SIZE, height: SIZE }}>
      <Layer photo={photo} filter={filter} at={{ scale, turn: 0, x: SIZE / 2 - at.x * scale, y: SIZE / 2 - at.y * scale }} />
    </div>
  );
}
