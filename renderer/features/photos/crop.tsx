import type { CSSProperties } from 'react';
import type { PhotoRecord } from '../../../shared/channels-photo.ts';
import { photoAddress, type PhotoSize } from '../../app/photo-door.ts';
import { partsOf } from './parts/parts.ts';
import styles from './photos.module.css';

/** Around the shell, so that its edge is seen. */
const AIR = 1.12;
const LEAST_CONFIDENCE = 0.45;

/** Share of the picture's width and height that is left of and above the square around the plug, and that square's side as a share of the width. */
function squareAround(photo: PhotoRecord): { readonly left: number; readonly top: number; readonly side: number } {
  const { width, height, measure, geometry } = photo;
  const { shell } = partsOf(photo);
  const sure = geometry !== null || (measure?.geometry.confidence ?? 0) >= LEAST_CONFIDENCE;
  if (shell === undefined || !sure) {
    const side = Math.min(width, height);
    return { left: (width - side) / 2 / width, top: (height - side) / 2 / height, side: side / width };
  }
  const side = Math.min(2 * AIR * shell.r, width, height);
  const within = (middle: number, size: number): number => Math.min(size - side, Math.max(0, middle - side / 2)) / size;
  return { left: within(shell.x, width), top: within(shell.y, height), side: side / width };
}

/** A photo cut to its plug, as a square that fills its place; the middle of the picture where no plug was found. */
export function Crop({ photo, size, filter }: { photo: PhotoRecord; size: Extract<PhotoSize, 'small' | 'screen'>; filter?: string | undefined }) {
  const { left, top, side } = squareAround(photo);
  const style: CSSProperties = { width: `${100 / side}%`, transform: `translate(${-100 * left}%, ${-100 * top}%)`, aspectRatio: `${photo.width} / ${photo.height}`, filter };
  return <span className={styles.crop}><img src={photoAddress(photo.id, size)} alt="" loading="lazy" decoding="async" draggable={false} style={style} /></span>;
}
