import type { Engine } from '../../shared/formats/engine.ts';
import type { EnginePlan } from './plan-shapes.ts';
import { positionsInCylinder } from './plugs.ts';
import { radialPlan } from './radial-plan.ts';
import { supposedLayout } from './rows.ts';
import { rowsPlan } from './rows-plan.ts';

export { LEAST_SPACING, type EnginePlan, type PlanPlace, type PlanShape } from './plan-shapes.ts';

/**
 * Where every plug of an engine lies in the plan, for 1 to 18 cylinders with one or two plugs each. Rows run from the front at the left; radials are seen from
 * the rear with cylinder 1 on top.
 */
export function enginePlan(engine: Engine): EnginePlan {
  const positions = positionsInCylinder(engine);
  return supposedLayout(engine) === 'radial' ? radialPlan(engine, positions) : rowsPlan(engine, positions);
}
