import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { useText } from '../../text/index.ts';
import { describeTip, DrawnTip } from '../../ui/drawn-tip/index.ts';
import styles from './picture.module.css';
import { useRoom } from './use-room.ts';

const MOST = 480;
const LEAST = 160;

/** The plug at hand, drawn large from both sides, and the same in words. */
export function Picture({ tip, seed }: { tip: Tip; seed: string }) {
  const { tray } = useText();
  const [element, room] = useRoom<HTMLElement>({ width: 260, height: 260 });
  const size = Math.max(LEAST, Math.min(MOST, room.width));
  return (
    <figure ref={element} className={styles.picture} aria-label={tray.entry.picture}>
      <DrawnTip tip={tip} view="end" size={size} seed={seed} title={tray.tip.drawn.end} />
      <DrawnTip tip={tip} view="side" size={size} seed={seed} title={tray.tip.drawn.side} />
      <figcaption className={styles.words}>{describeTip(tip, tray.tip)}</figcaption>
    </figure>
  );
}
