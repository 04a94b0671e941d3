import { useEffect, useRef, useState, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import type { Circle, Point } from '../../../../core/photo/pixels.ts';
import type { PhotoParts } from '../../../../shared/formats/photo-measure.v1.ts';
import { useText } from '../../../text/index.ts';
import { toScreen, type View } from '../viewer/view.ts';
import { CIRCLES, moved, widened, type CircleName, type HandleName } from './parts.ts';
import styles from './parts.module.css';

/** After the last key, so that one walk with the arrows is one correction. Milliseconds. */
const KEYS_SETTLE = 700;
const STEP = { coarse: 8, fine: 1 };
const ARROWS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/** How circles look while they are only shown: thin, and dashed where they are doubtful. */
export function PartsShown({ parts, view, doubtful }: { parts: PhotoParts; view: View; doubtful: boolean }) {
  return (
    <svg className={styles.layer} aria-hidden="true" data-doubtful={doubtful ? '' : undefined}>
      {CIRCLES.map((name) => {
        const circle = parts[name];
        if (circle === undefined) return null;
        const { x, y } = toScreen(view, circle);
        const shape = { cx: x, cy: y, r: circle.r * view.scale };
        return <g key={name}><circle {...shape} className={styles.under} /><circle {...shape} className={styles.over} /></g>;
      })}
      {parts.groundElectrode !== undefined && <Bar bar={parts.groundElectrode} view={view} />}
    </svg>
  );
}

function Bar({ bar, view }: { bar: NonNullable<PhotoParts['groundElectrode']>; view: View }) {
  const [foot, end] = [toScreen(view, bar.foot), toScreen(view, bar.end)];
  const length = Math.hypot(end.x - foot.x, end.y - foot.y) || 1;
  const half = (bar.width * view.scale) / 2;
  const [nx, ny] = [(-(end.y - foot.y) / length) * half, ((end.x - foot.x) / length) * half];
  const corners = [[foot, 1], [end, 1], [end, -1], [foot, -1]] as const;
  const d = `M${corners.map(([at, side]) => `${at.x + side * nx} ${at.y + side * ny}`).join('L')}Z`;
  return <><path d={d} className={styles.under} /><path d={d} className={styles.over} /></>;
}

type HandleProps = {
  readonly at: Point;
  readonly label: string;
  /** Radius or width, picture pixels. */
  readonly size: number;
  readonly said: string;
  readonly onMove: (dx: number, dy: number) => void;
  readonly onWiden: (by: number) => void;
  readonly onKeys: () => void;
  readonly onDone: () => void;
};

/** Something to take hold of with the pointer or the arrow keys; + and - make it larger and smaller. Screen pixels. */
function Handle({ at, label, size, said, onMove, onWiden, onKeys, onDone }: HandleProps) {
  const last = useRef<Point | null>(null);
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = event.shiftKey ? STEP.fine : STEP.coarse;
    const arrow = ARROWS[event.key];
    if (arrow !== undefined) onMove(step * arrow[0], step * arrow[1]);
    else if (event.key === '+' || event.key === '=') onWiden(step / 2);
    else if (event.key === '-') onWiden(-step / 2);
    else if (event.key === 'Enter') return onDone();
    else return;
    event.preventDefault();
    event.stopPropagation();
    onKeys();
  };
  const onPointerDown = (event: PointerEvent<HTMLElement>): void => {
    event.preventDefault();
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    last.current = { x: event.clientX, y: event.clientY };
  };
  const onPointerMove = (event: PointerEvent): void => {
    if (last.current === null) return;
    event.stopPropagation();
    onMove(event.clientX - last.current.x, event.clientY - last.current.y);
    last.current = { x: event.clientX, y: event.clientY };
  };
  const onPointerUp = (): void => { if (last.current !== null) { last.current = null; onDone(); } };
  return (
    <div role="slider" tabIndex={0} aria-label={label} aria-valuenow={Math.round(size)} aria-valuetext={said} className={styles.handle} style={{ left: at.x, top: at.y }}
      onKeyDown={onKeyDown} onPointerDown={onPointerDown} onPointerMove={onPointerMove} onPointerUp={onPointerUp} onPointerCancel={onPointerUp} />
  );
}

/** Takes hold of the rim of a circle, to make it larger or smaller; the handle that moves it does the same by keyboard. */
function Rim({ at, angle, onWiden, onDone }: { at: Point; angle: number; onWiden: (by: number) => void; onDone: () => void }) {
  const last = useRef<Point | null>(null);
  const outward = ({ x, y }: Point): number => x * Math.cos(angle) + y * Math.sin(angle);
  return (
    <div className={styles.rim} style={{ left: at.x, top: at.y, rotate: `${angle}rad` }} aria-hidden="true"
      onPointerDown={(event) => {
        event.preventDefault();
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        last.current = { x: event.clientX, y: event.clientY };
      }}
      onPointerMove={(event) => {
        if (last.current === null) return;
        onWiden(outward({ x: event.clientX - last.current.x, y: event.clientY - last.current.y }));
        last.current = { x: event.clientX, y: event.clientY };
      }}
      onPointerUp={() => { last.current = null; onDone(); }} />
  );
}

/**
 * Where the handles of the circles sit on their rims: so many radians to both sides of the way that the ground electrode points, so that none hides
 * another, nor those of the electrode.
 */
const ASIDE: Readonly<Record<CircleName, number>> = { shell: 1.75, bore: 1.2, nose: 0.7, centreElectrode: 1.75 };
const onRim = ({ x, y, r }: Circle, angle: number): Point => ({ x: x + r * Math.cos(angle), y: y + r * Math.sin(angle) });
const pointing = ({ groundElectrode: bar }: PhotoParts): number => (bar === undefined ? 0 : Math.atan2(bar.end.y - bar.foot.y, bar.end.x - bar.foot.x));

type Props = { readonly parts: PhotoParts; readonly view: View; readonly onDone: (parts: PhotoParts) => void };

/** The parts with handles. What is moved is seen at once and handed on when it comes to rest; other parts than before begin anew. */
export function PartsHandles({ parts, view, onDone }: Props) {
  const { parts: words } = useText().photos;
  const [{ from, draft }, setState] = useState({ from: parts, draft: parts });
  if (from !== parts) setState({ from: parts, draft: parts });
  const setDraft = (change: (before: PhotoParts) => PhotoParts): void => setState((before) => ({ ...before, draft: change(before.draft) }));
  const latest = useRef({ draft, onDone });
  useEffect(() => { latest.current = { draft, onDone }; });
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const done = (): void => { clearTimeout(timer.current); if (latest.current.draft !== parts) latest.current.onDone(latest.current.draft); };
  const settle = (): void => { clearTimeout(timer.current); timer.current = setTimeout(done, KEYS_SETTLE); };
  useEffect(() => () => clearTimeout(timer.current), []);
  const handle = (name: HandleName, at: Point, seat: Point, size: number): ReactNode => (
    <Handle key={name} at={toScreen(view, seat)} label={words.handles[name]} size={size} onKeys={settle} onDone={done}
      said={words.said(Math.round(at.x), Math.round(at.y), Math.round(size))}
      onMove={(dx, dy) => setDraft((before) => moved(before, name, dx / view.scale, dy / view.scale))}
      onWiden={(by) => setDraft((before) => widened(before, name, by / view.scale))} />
  );
  const { groundElectrode: bar } = draft;
  return (
    <>
      <PartsShown parts={draft} view={view} doubtful={false} />
      {CIRCLES.map((name) => {
        const circle = draft[name];
        if (circle === undefined) return null;
        const [move, widen] = [pointing(draft) + ASIDE[name], pointing(draft) - ASIDE[name]];
        return (
          <div key={name}>
            {handle(name, circle, onRim(circle, move), circle.r)}
            <Rim at={toScreen(view, onRim(circle, widen))} angle={widen} onDone={done}
              onWiden={(by) => setDraft((before) => widened(before, name, by / view.scale))} />
          </div>
        );
      })}
      {bar !== undefined && [handle('foot', bar.foot, bar.foot, bar.width), handle('end', bar.end, bar.end, bar.width)]}
    </>
  );
}
