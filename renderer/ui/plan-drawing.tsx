import type { ReactNode } from 'react';
import type { EnginePlan, PlanPlace, PlanShape } from '../../core/domain/engine-plan.ts';
import { useText } from '../text/index.ts';
import styles from './plan-drawing.module.css';

const Outline = ({ shape }: { shape: PlanShape }) => {
  switch (shape.shape) {
    case 'box': return <rect className={styles.bank} x={shape.x} y={shape.y} width={shape.width} height={shape.height} rx={0.45} />;
    case 'circle': return <circle className={styles.bank} cx={shape.x} cy={shape.y} r={shape.radius} />;
    case 'line': return <line className={styles[shape.part]} x1={shape.x1} y1={shape.y1} x2={shape.x2} y2={shape.y2} />;
  }
};

/** A cylinder is drawn once: between its plugs when it has two. */
export function cylinderSpots(plan: EnginePlan): readonly { readonly cylinder: number; readonly x: number; readonly y: number }[] {
  const numbers = [...new Set(plan.places.map((place) => place.cylinder))].sort((a, b) => a - b);
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  return numbers.map((cylinder) => {
    const plugs = plan.places.filter((place) => place.cylinder === cylinder);
    return { cylinder, x: mean(plugs.map((plug) => plug.x)), y: mean(plugs.map((plug) => plug.y)) };
  });
}

type PlanProps = {
  readonly plan: EnginePlan;
  /** '' where words beside the drawing say the same. */
  readonly label: string;
  /** Whether the plug holes and their numbers are drawn; without them something else is laid over the plan. */
  readonly holes?: boolean;
  /** Without numbers a small drawing stays readable. */
  readonly numbers?: boolean;
  readonly children?: ReactNode;
};

/** @param rank among the plugs of its cylinder; the first carries the number */
const Hole = ({ place: { x, y, cylinder }, rank, numbers }: { place: PlanPlace; rank: number; numbers: boolean }) => (
  <>
    <circle className={styles.hole} cx={x} cy={y} r={!numbers ? 0.34 : rank === 0 ? 0.42 : 0.24} />
    {numbers && rank === 0 && <text className={styles.number} x={x} y={y}>{cylinder}</text>}
  </>
);

/** The engine in plan with a numbered ring for every plug hole; with two plugs a cylinder the second is a small ring without number. */
export function PlanDrawing({ plan, label, holes = true, numbers = true, children }: PlanProps) {
  const rankOf = (place: PlanPlace): number => plan.places.filter(({ cylinder }) => cylinder === place.cylinder).indexOf(place);
  return (
    <svg className={styles.plan} viewBox={`0 0 ${plan.width} ${plan.height}`} {...(label === '' ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}>
      {plan.outline.map((shape, i) => <Outline key={i} shape={shape} />)}
      {holes && plan.places.map((place) => <Hole key={`${place.cylinder} ${place.position}`} place={place} rank={rankOf(place)} numbers={numbers} />)}
      {children}
    </svg>
  );
}

/** Says from where the drawing is seen, and which end is which. */
export function PlanCaption({ plan: { front, rear } }: { plan: EnginePlan }) {
  const { page } = useText().engines;
  if (front === 'away') return <span className={styles.caption}>{page.seenFromRear}</span>;
  return <span className={styles.caption}><span>◂ {page.front}</span>{rear === 'flywheel' && <span>{page.flywheel} ▸</span>}</span>;
}
