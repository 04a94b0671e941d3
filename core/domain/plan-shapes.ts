import type { Position } from '../../shared/vocabulary/engine.ts';

/** One plug in the plan. `x` to the right, `y` down, both to its centre; `bank` counts rows from 0. A round mark of diameter 1 never touches another. */
export type PlanPlace = { readonly cylinder: number; readonly position: Position; readonly x: number; readonly y: number; readonly bank: number };

/** What is drawn behind the plugs. A barrel joins the two plugs of one cylinder, or a radial's cylinder to its crankcase. */
export type PlanShape =
  | { readonly part: 'bank'; readonly shape: 'box'; readonly x: number; readonly y: number; readonly width: number; readonly height: number }
  | { readonly part: 'crankcase' | 'barrel'; readonly shape: 'line'; readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }
  | { readonly part: 'crankcase'; readonly shape: 'circle'; readonly x: number; readonly y: number; readonly radius: number };

/**
 * The engine as laid out on the bench, in units of one plug's mark. `front` is where the engine's front lies: at the left of rows seen from above, away from
 * the viewer in a radial, which is seen from its rear. `rear`: what stands at the other end, where that is known.
 */
export type EnginePlan = {
  readonly width: number;
  readonly height: number;
  readonly front: 'left' | 'away';
  readonly rear: 'flywheel' | 'not known';
  readonly places: readonly PlanPlace[];
  readonly outline: readonly PlanShape[];
};

/** No two plugs of a plan lie nearer than this, centre to centre. */
export const LEAST_SPACING = 1.1;
/** Kept free around the outermost plugs. */
export const MARGIN = 0.95;

/** Places are given to the thousandth of a unit, so that they are equal on every machine. */
export const round3 = (n: number): number => Math.round(n * 1000) / 1000;
