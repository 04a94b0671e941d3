import type { Engine } from '../../shared/formats/engine.ts';
import type { Position } from '../../shared/vocabulary/engine.ts';
import { LEAST_SPACING, MARGIN, round3, type EnginePlan, type PlanPlace, type PlanShape } from './plan-shapes.ts';
import { cylinderRows } from './rows.ts';

const LEAST_RADIUS = 1.7;
/** The rear row of a double-row radial is the nearer one to the viewer and is drawn further out. */
const ROW_STEP = 0.55;
const MOST_ROW_STEPS = 2 * ROW_STEP;

type Star = { readonly centre: number; readonly inner: number; readonly rows: number; readonly step: number };

/** From the centre outward along the spoke of one cylinder; angles in turns, clockwise from the top. */
function spoke(star: Star, turn: number, row: number): (outward: number) => { readonly x: number; readonly y: number } {
  const radius = star.inner + (star.rows - 1 - row) * star.step;
  const angle = 2 * Math.PI * turn;
  return (outward) => ({ x: round3(star.centre + (radius + outward) * Math.sin(angle)), y: round3(star.centre - (radius + outward) * Math.cos(angle)) });
}

/**
 * A radial engine seen from the rear: cylinder 1 on top, numbers clockwise, the first of two plugs nearer to the crankcase. In a double row the odd cylinders
 * are the rear row, the even ones the front row between them (FAA-H-8083-32, chapter 1, from memory), unless the record gives the rows as banks.
 */
export function radialPlan(engine: Engine, positions: readonly Position[]): EnginePlan {
  const rows = cylinderRows(engine).map((row) => row.cylinders);
  const chordFits = LEAST_SPACING / (2 * Math.sin(Math.PI / Math.max(2, engine.cylinders)));
  const inner = Math.max(LEAST_RADIUS, chordFits);
  const step = Math.min(ROW_STEP, MOST_ROW_STEPS / rows.length);
  const outer = inner + (rows.length - 1) * step + (positions.length - 1) * LEAST_SPACING;
  const star: Star = { centre: round3(outer + MARGIN), inner, rows: rows.length, step };
  const rowOf = (cylinder: number): number => rows.findIndex((row) => row.includes(cylinder));
  const cylinders = Array.from({ length: engine.cylinders }, (_, i) => i + 1);
  const at = (cylinder: number): ReturnType<typeof spoke> => spoke(star, (cylinder - 1) / engine.cylinders, rowOf(cylinder));
  const places = cylinders.flatMap((cylinder) => positions.map((position, p): PlanPlace =>
    ({ cylinder, position, bank: rowOf(cylinder), ...at(cylinder)(p * LEAST_SPACING) })));
  const barrels = cylinders.map((cylinder): PlanShape => {
    const [from, to] = [at(cylinder)(-(inner - LEAST_RADIUS / 2)), at(cylinder)((positions.length - 1) * LEAST_SPACING)];
    return { part: 'barrel', shape: 'line', x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  });
  const crankcase: PlanShape = { part: 'crankcase', shape: 'circle', x: star.centre, y: star.centre, radius: LEAST_RADIUS / 2 };
  return { width: 2 * star.centre, height: 2 * star.centre, front: 'away', rear: 'not known', places, outline: [...barrels, crankcase] };
}
