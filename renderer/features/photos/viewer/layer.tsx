import { useEffect, useState, type CSSProperties } from 'react';
import { photoAddress } from '../../../app/photo-door.ts';
import { cssMatrix, type Placement } from './placement.ts';
import styles from './viewer.module.css';

/** Longest side of the picture that is fetched for a screen. */
const SCREEN_SIDE = 2048;
/** So that a flight through the zoom does not fetch every pixel on its way. Milliseconds. */
const SETTLED = 250;

export type Pictured = { readonly id: string; readonly width: number; readonly height: number };

/** Whether the screen now shows more pixels than the smaller picture has, for a while already. */
function useFullWanted({ width, height }: Pictured, scale: number): boolean {
  const wanted = scale * window.devicePixelRatio * Math.max(width, height) > 1.05 * SCREEN_SIDE && Math.max(width, height) > SCREEN_SIDE;
  const [settled, setSettled] = useState(false);
  useEffect(() => {
    if (!wanted) return;
    const timer = setTimeout(() => setSettled(true), SETTLED);
    return () => clearTimeout(timer);
  }, [wanted]);
  return settled;
}

type Props = {
  readonly photo: Pictured;
  readonly at: Placement;
  readonly filter?: string | undefined;
  readonly opacity?: number;
  /** `whole`: every pixel of the picture is there. */
  readonly onLoad?: (whole: boolean) => void;
};

/** A picture laid on a surface; every pixel of it is fetched once it is looked at that closely. */
export function Layer({ photo, at, filter, opacity = 1, onLoad }: Props) {
  const full = useFullWanted(photo, at.scale);
  const style: CSSProperties = { width: photo.width, height: photo.height, transform: cssMatrix(at), filter, opacity };
  return (
    <>
      <img className={styles.picture} src={photoAddress(photo.id, 'screen')} alt="" draggable={false} style={style} onLoad={() => onLoad?.(false)} />
      {full && <img className={styles.picture} src={photoAddress(photo.id, 'full')} alt="" draggable={false} style={style} decoding="async" onLoad={() => onLoad?.(true)} />}
    </>
  );
}
