import type { Point } from '../../../../core/photo/pixels.ts';
import type { Annotation } from '../../../../shared/channels-photo.ts';
import { toScreen, type View } from '../viewer/view.ts';
import styles from './marks.module.css';

const HEAD = { length: 16, spread: 0.42 };
/** From a mark to its words, screen pixels. */
const BESIDE = 10;

function arrowPath(from: Point, to: Point): string {
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  const barb = (turn: number): string => `${to.x - HEAD.length * Math.cos(angle + turn)} ${to.y - HEAD.length * Math.sin(angle + turn)}`;
  return `M${from.x} ${from.y}L${to.x} ${to.y}M${barb(HEAD.spread)}L${to.x} ${to.y}L${barb(-HEAD.spread)}`;
}

const circlePath = ({ x, y }: Point, r: number): string => `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

type Drawn = { readonly path: string; readonly words: Point };

function drawn(mark: Annotation, view: View): Drawn {
  switch (mark.kind) {
    case 'arrow': {
      const [from, to] = [toScreen(view, mark.from), toScreen(view, mark.to)];
      return { path: arrowPath(from, to), words: { x: from.x + (from.x >= to.x ? BESIDE : -BESIDE), y: from.y } };
    }
    case 'circle': {
      const at = toScreen(view, mark);
      const r = mark.r * view.scale;
      return { path: circlePath(at, r), words: { x: at.x + r * Math.SQRT1_2 + BESIDE, y: at.y - r * Math.SQRT1_2 } };
    }
    case 'text': return { path: '', words: toScreen(view, mark) };
  }
}

/** A mark in white with a dark edge, seen on any ground. `chosen`: it is being worked on. */
export function MarkShape({ mark, view, chosen = false }: { mark: Annotation; view: View; chosen?: boolean }) {
  const { path, words } = drawn(mark, view);
  const toTheLeft = mark.kind === 'arrow' && mark.from.x < mark.to.x;
  const place = { x: words.x, y: words.y, textAnchor: toTheLeft ? ('end' as const) : ('start' as const) };
  return (
    <g data-chosen={chosen ? '' : undefined}>
      {path !== '' && <><path d={path} className={styles.under} /><path d={path} className={styles.over} /></>}
      {mark.words !== '' && <><text {...place} className={styles.wordsUnder}>{mark.words}</text><text {...place} className={styles.words}>{mark.words}</text></>}
    </g>
  );
}
