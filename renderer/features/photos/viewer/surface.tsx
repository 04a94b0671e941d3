import { useRef, useState, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import type { Point } from '../../../../core/photo/pixels.ts';
import type { Viewing } from './use-view.ts';
import { toPicture, toScreen, ZOOM_STEP, type View } from './view.ts';
import styles from './viewer.module.css';

/** Something that is drawn on a picture, from one place to another; the same place twice is a click. Picture pixels. */
export type Tool = {
  readonly onDrawn: (from: Point, to: Point) => void;
  /** What is seen while it is being drawn. */
  readonly preview: (from: Point, to: Point, view: View) => ReactNode;
};

type Props = {
  readonly viewing: Viewing;
  readonly label: string;
  /** How to go about it by keyboard, for those who cannot see. */
  readonly description: string;
  readonly tool?: Tool | undefined;
  /** A cross that the arrow keys move, for tools and for the loupe. Picture pixels. */
  readonly cross: Point | null;
  readonly onCross: (at: Point) => void;
  readonly children: ReactNode;
};

const ARROWS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const PAN_STEP = 60;
const CROSS_STEP = { coarse: 12, fine: 1 };
const CLICK_WITHIN = 4;

type Drag = { readonly from: Point; readonly last: Point; readonly begun: Point };

/** Where in the surface something happened, in screen pixels. */
function within(event: PointerEvent<HTMLElement>): Point {
  const { left, top } = event.currentTarget.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

/** Dragging moves the picture, or draws with the tool at hand. */
function usePointer({ viewing, tool, onCross }: Pick<Props, 'viewing' | 'tool' | 'onCross'>, setFrom: (from: Point | null) => void) {
  const drag = useRef<Drag | null>(null);
  const { view, pan } = viewing;
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>): void => {
      if (event.button !== 0 || event.defaultPrevented) return;
      const at = within(event);
      event.currentTarget.setPointerCapture(event.pointerId);
      drag.current = { from: toPicture(view, at), last: at, begun: at };
      if (tool !== undefined) { setFrom(drag.current.from); onCross(drag.current.from); }
    },
    onPointerMove: (event: PointerEvent<HTMLElement>): void => {
      const at = within(event);
      onCross(toPicture(view, at));
      if (drag.current === null || tool !== undefined) return;
      pan(at.x - drag.current.last.x, at.y - drag.current.last.y);
      drag.current = { ...drag.current, last: at };
    },
    onPointerUp: (event: PointerEvent<HTMLElement>): void => {
      const { current } = drag;
      drag.current = null;
      setFrom(null);
      if (current === null || tool === undefined) return;
      const at = within(event);
      const clicked = Math.hypot(at.x - current.begun.x, at.y - current.begun.y) < CLICK_WITHIN;
      tool.onDrawn(current.from, clicked ? current.from : toPicture(view, at));
    },
    onPointerCancel: (): void => { drag.current = null; setFrom(null); },
  };
}

/**
 * The neutral ground on which pictures lie. By keyboard: + and - zoom, 0 shows all, 1 every pixel; arrows move the picture, or the cross where
 * there is one; with a tool, Enter begins and ends a stroke.
 */
export function Surface(props: Props) {
  const { viewing, label, description, tool, cross, onCross, children } = props;
  const { surface, view, room, zoom, pan, fit, toFull } = viewing;
  const [from, setFrom] = useState<Point | null>(null);
  const pointer = usePointer(props, setFrom);
  const middle = (): Point => cross ?? toPicture(view, { x: room.width / 2, y: room.height / 2 });

  const moveBy = ([dx, dy]: readonly [number, number], fine: boolean): void => {
    if (cross === null) return pan(-PAN_STEP * dx, -PAN_STEP * dy);
    const step = (fine ? CROSS_STEP.fine : CROSS_STEP.coarse) / view.scale;
    onCross({ x: cross.x + step * dx, y: cross.y + step * dy });
  };
  const draw = (): void => {
    const at = middle();
    if (from === null) return setFrom(at);
    setFrom(null);
    tool?.onDrawn(from, at);
  };
  const at = cross === null ? undefined : toScreen(view, cross);
  const keys: Readonly<Record<string, () => void>> = {
    '+': () => zoom(ZOOM_STEP, at), '=': () => zoom(ZOOM_STEP, at), '-': () => zoom(1 / ZOOM_STEP, at), 0: fit, 1: toFull,
    ...(tool !== undefined && { Enter: draw, ' ': draw }), ...(from !== null && { Escape: () => setFrom(null) }),
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.target !== event.currentTarget) return;
    const arrow = ARROWS[event.key];
    const act = arrow === undefined ? keys[event.key] : () => moveBy(arrow, event.shiftKey);
    if (act === undefined) return;
    act();
    event.preventDefault();
    event.stopPropagation();
  };
  const drawn = cross ?? from;
  return (
    <div ref={surface} role="application" aria-label={label} aria-description={description} tabIndex={0} className={styles.surface} data-tool={tool === undefined ? undefined : ''}
      onKeyDown={onKeyDown} {...pointer}>
      {children}
      {tool !== undefined && (
        <svg className={styles.overlay} aria-hidden="true">
          {from !== null && drawn !== null && tool.preview(from, drawn, view)}
          {cross !== null && <Cross at={toScreen(view, cross)} />}
        </svg>
      )}
    </div>
  );
}

const ARM = 14;

/** Dark on light, so that it is seen on any ground. */
const Cross = ({ at: { x, y } }: { at: Point }) => {
  const path = `M${x - ARM} ${y}h${2 * ARM}M${x} ${y - ARM}v${2 * ARM}`;
  return <><path d={path} className={styles.under} /><path d={path} className={styles.over} /></>;
};
