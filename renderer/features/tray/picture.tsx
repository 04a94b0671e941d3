import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { useText } from '../../text/index.ts';
import { describeTip, DrawnTip } from '../../ui/drawn-tip/index.ts';
import { arrange } from './arrangement.ts';
import styles from './picture.module.css';
import { useRoom } from '../../ui/use-room.ts';

const SUPPOSED = { width: 260, height: 520 };

/** The plug at hand, drawn large from both sides, and the same in words. */
export function Picture({ tip, seed }: { tip: Tip; seed: string }) {
  const { tray } = useText();
  const [element, room] = useRoom<HTMLElement>(SUPPOSED);
  const { lie, end, side } = arrange(room);
  return (
    <figure ref={element} className={styles.picture} data-lie={lie} aria-label={tray.entry.picture}>
      <DrawnTip tip={tip} view="end" size={end} seed={seed} title={tray.tip.drawn.end} />
      <DrawnTip tip={tip} view="side" size={side} seed={seed} title={tray.tip.drawn.side} />
      <figcaption className={styles.words}>{describeTip(tip, tray.tip)}</figcaption>
    </figure>
  );
}
