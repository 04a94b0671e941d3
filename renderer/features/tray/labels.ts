import type { EnginePlan, PlanPlace } from '../../../core/domain/engine-plan.ts';

export type CylinderLabel = { readonly cylinder: number; readonly x: number; readonly y: number };

/** From the middle of a plug to the middle of its cylinder's number. */
const AWAY = 0.74;
/** The same toward the crankcase, where the marks at the upper corners of a plug may lie between. */
const INWARD = 0.96;

/** Where the number of each cylinder stands, free of the plugs: over it in a row, between it and the crankcase in a radial. */
export function cylinderLabels({ places, front, width, height }: EnginePlan): readonly CylinderLabel[] {
  const cylinders = [...new Set(places.map((place) => place.cylinder))];
  const centre = { x: width / 2, y: height / 2 };
  return cylinders.map((cylinder) => {
    const plugs = places.filter((place) => place.cylinder === cylinder);
    return { cylinder, ...(front === 'away' ? inward(plugs, centre) : above(plugs)) };
  });
}

function above(plugs: readonly PlanPlace[]): { x: number; y: number } {
  return { x: plugs.reduce((sum, plug) => sum + plug.x, 0) / plugs.length, y: Math.min(...plugs.map((plug) => plug.y)) - AWAY };
}

function inward(plugs: readonly PlanPlace[], centre: { x: number; y: number }): { x: number; y: number } {
  const far = (plug: PlanPlace): number => Math.hypot(plug.x - centre.x, plug.y - centre.y);
  const inner = plugs.reduce((best, plug) => (far(plug) < far(best) ? plug : best));
  const share = (far(inner) - INWARD) / far(inner);
  return { x: centre.x + (inner.x - centre.x) * share, y: centre.y + (inner.y - centre.y) * share };
}
