import type { Engine } from '../../shared/formats/engine.ts';
import type { Position } from '../../shared/vocabulary/engine.ts';
import { LEAST_SPACING, MARGIN, round3, type EnginePlan, type PlanPlace, type PlanShape } from './plan-shapes.ts';
import { cylinderRows, supposedLayout } from './rows.ts';

const ROOMY_SPACING = 1.3;
const WIDEST_SPACING = 2.4;
/** Width to height of a screen's tray; short engines are drawn wider to fill it. */
const TRAY_SHAPE = 1.4;
const MANY_IN_A_ROW = 8;
const BANK_PADDING = 0.7;
const CRANKCASE = { flat: 2.5, other: 2.1 };

/** Rows to draw. Where the layout is not known, more than six cylinders are broken into two lines in number order. */
function drawnRows(engine: Engine): readonly (readonly number[])[] {
  const rows = cylinderRows(engine).map((row) => row.cylinders);
  const [only] = rows;
  if (supposedLayout(engine) !== undefined || rows.length > 1 || only === undefined || only.length <= 6) return rows;
  const half = Math.ceil(only.length / 2);
  return [only.slice(0, half), only.slice(half)];
}

type Grid = {
  readonly acrossRow: boolean;
  readonly spacing: number;
  readonly depth: number;
  readonly longest: number;
  readonly crankcase: number;
  readonly height: number;
};

const heightOf = (rows: number, depth: number, crankcase: number): number => 2 * MARGIN + rows * depth + (rows - 1) * crankcase;

function spacingOf(longest: number, height: number): number {
  if (longest > MANY_IN_A_ROW) return LEAST_SPACING;
  const filling = (TRAY_SHAPE * height - 2 * MARGIN) / Math.max(1, longest - 1);
  return Math.min(WIDEST_SPACING, Math.max(ROOMY_SPACING, filling));
}

function gridOf(engine: Engine, rows: readonly (readonly number[])[], positions: readonly Position[]): Grid {
  const most = Math.max(...rows.map((row) => row.length));
  const acrossRow = !(positions.includes('front') && positions.includes('rear')) || most > MANY_IN_A_ROW + 1;
  const longest = acrossRow ? most : most * positions.length;
  const depth = acrossRow ? (positions.length - 1) * LEAST_SPACING : 0;
  const crankcase = supposedLayout(engine) === 'flat' ? CRANKCASE.flat : CRANKCASE.other;
  const height = heightOf(rows.length, depth, crankcase);
  return { acrossRow, depth, longest, crankcase, height, spacing: spacingOf(longest, height) };
}

/**
 * Places of one row. Two plugs of a cylinder lie across the row, the first nearer to the crankcase (on top in a single row), or along it when they are
 * called front and rear.
 */
function placesOfRow(row: readonly number[], bank: number, rows: number, positions: readonly Position[], grid: Grid): readonly PlanPlace[] {
  const columns = grid.acrossRow ? 1 : positions.length;
  const start = MARGIN + ((grid.longest - row.length * columns) * grid.spacing) / 2;
  const top = MARGIN + bank * (grid.depth + grid.crankcase);
  const innerBelow = rows > 1 && bank < rows / 2;
  return row.flatMap((cylinder, i) => positions.map((position, p) => {
    const x = start + (i * columns + (grid.acrossRow ? 0 : p)) * grid.spacing;
    const step = grid.acrossRow ? p * LEAST_SPACING : 0;
    return { cylinder, position, x: round3(x), y: round3(innerBelow ? top + grid.depth - step : top + step), bank };
  }));
}

/** A line from the first to the second plug of every twin-plug cylinder. */
function barrels(places: readonly PlanPlace[]): readonly PlanShape[] {
  return places.flatMap((place, i) => {
    const next = places[i + 1];
    return next?.cylinder === place.cylinder ? [{ part: 'barrel' as const, shape: 'line' as const, x1: place.x, y1: place.y, x2: next.x, y2: next.y }] : [];
  });
}

function bankBox(places: readonly PlanPlace[]): PlanShape {
  const xs = places.map((place) => place.x);
  const ys = places.map((place) => place.y);
  const [x, y] = [Math.min(...xs) - BANK_PADDING, Math.min(...ys) - BANK_PADDING];
  return { part: 'bank', shape: 'box', x: round3(x), y: round3(y), width: round3(Math.max(...xs) - x + BANK_PADDING), height: round3(Math.max(...ys) - y + BANK_PADDING) };
}

/**
 * The front of a row is the end away from the flywheel (common practice, no source); aircraft and two-strokes carry theirs elsewhere, and one cylinder
 * has no ends.
 */
const rearOf = ({ use, cycle, cylinders }: Engine): EnginePlan['rear'] =>
  use === 'aircraft' || cycle === 'two-stroke' || cylinders === 1 ? 'not known' : 'flywheel';

/** Rows of cylinders seen from above: the front at the left, the first row of two the upper one. */
export function rowsPlan(engine: Engine, positions: readonly Position[]): EnginePlan {
  const rows = drawnRows(engine);
  const grid = gridOf(engine, rows, positions);
  const byRow = rows.map((row, bank) => placesOfRow(row, bank, rows.length, positions, grid));
  const width = round3(2 * MARGIN + (grid.longest - 1) * grid.spacing);
  const height = round3(grid.height);
  const crank: PlanShape = { part: 'crankcase', shape: 'line', x1: 0, y1: round3(height / 2), x2: width, y2: round3(height / 2) };
  return { width, height, front: 'left', rear: rearOf(engine), places: byRow.flat(), outline: [crank, ...byRow.map(bankBox), ...barrels(byRow.flat())] };
}
