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
  readonly children?: ReactNode;
};

const Hole = ({ place, twin }: { place: PlanPlace; twin: boolean }) => (
  <>
    <circle className={styles.hole} cx={place.x} cy={place.y} r={twin ? 0.3 : 0.42} />
    {!twin && <text className={styles.number} x={place.x} y={place.y}>{place.cylinder}</text>}
  </>
);

/** The engine in plan with a numbered ring for every plug hole; with two plugs a cylinder the number stands between them. */
export function PlanDrawing({ plan, label, holes = true, children }: PlanProps) {
  const twin = plan.places.some((place) => place.position !== 'only');
  return (
    <svg className={styles.plan} viewBox={`0 0 ${plan.width} ${plan.height}`} {...(label === '' ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}>
      {plan.outline.map((shape, i) => <Outline key={i} shape={shape} />)}
      {holes && plan.places.map((place) => <Hole key={`${place.cylinder} ${place.position}`} place={place} twin={twin} />)}
      {holes && twin && cylinderSpots(plan).map(({ cylinder, x, y }) => <text key={cylinder} className={styles.between} x={x} y={y}>{cylinder}</text>)}
      {children}
    </svg>
  );
}

/** Says from where the drawing is seen. */
export function PlanCaption({ plan }: { plan: EnginePlan }) {
  const { page } = useText().engines;
  return <span className={styles.caption}>{plan.front === 'left' ? `◂ ${page.front}` : page.seenFromRear}</span>;
}
