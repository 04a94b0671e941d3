import { directions } from './directions.ts';
import type { Focus } from './focus.ts';
import { quantileOf } from './order.ts';
import type { Point } from './pixels.ts';
import { sampled, type Plane } from './planes.ts';
import { solved } from './solve.ts';

/** A circle, pressed by the view: r + c2 cos 2t + s2 sin 2t about its own centre. `share` (0 to 1) of the directions agree with it. */
export type Ring = Point & { readonly r: number; readonly c2: number; readonly s2: number; readonly share: number };

/** Where to look: around a focus, at a radius and so much of it to both sides, for a step that grows brighter outward, darker, or either. */
export type Search = {
  readonly focus: Focus;
  readonly r: number;
  readonly within: number;
  readonly step: 'rise' | 'fall' | 'either';
  /** Places that hide the ring; directions that meet one at its radius are left out. */
  readonly unless?: (x: number, y: number) => boolean;
};

type Edges = { readonly radius: Float64Array; readonly weight: Float64Array };

const AROUND = directions(120);
const ROUNDS = 7;
const TIGHTEST = 0.012;
const AGREES = 0.03;
/** Smaller steps of logarithmic luma are noise. */
const LEAST_STEP = 2;

/** Distance from the centre of a ring as a share of its radius in that direction: under 1 is inside. */
function depthIn(ring: Ring, px: number, py: number): number {
  const { x, y, r, c2, s2 } = ring;
  const dx = px - x;
  const dy = py - y;
  const square = dx * dx + dy * dy;
  if (square === 0) return 0;
  return Math.sqrt(square) / (r + (c2 * (dx * dx - dy * dy) + 2 * s2 * dx * dy) / square);
}

/** A test for places within a share of a ring; only those near its edge need the exact depth. */
export function withinRing(ring: Ring, share: number): (px: number, py: number) => boolean {
  const press = Math.hypot(ring.c2, ring.s2);
  const surely = (share * Math.max(0, ring.r - press)) ** 2;
  const never = (share * (ring.r + press)) ** 2;
  return (px, py) => {
    const square = (px - ring.x) ** 2 + (py - ring.y) ** 2;
    return square < surely || (square <= never && depthIn(ring, px, py) < share);
  };
}

export const ringOfCircle = ({ x, y, r }: Point & { readonly r: number }): Ring => ({ x, y, r, c2: 0, s2: 0, share: 1 });

/** The ring in units `factor` times as fine. */
export const ringScaled = ({ x, y, r, c2, s2, share }: Ring, factor: number): Ring =>
  ({ x: x * factor, y: y * factor, r: r * factor, c2: c2 * factor, s2: s2 * factor, share });

/** Fits a ring to the strongest step along each direction by reweighted least squares, so that what hides part of it does not pull it away. */
export function fitRing(plane: Plane, search: Search): Ring {
  const edges = edgesAround(plane, search);
  const reach = search.within * search.r;
  let [shape, scale] = [[search.r, 0, 0, search.focus.ex * search.r, search.focus.ey * search.r], reach];
  for (let round = 0; round < ROUNDS; round += 1) {
    shape = fittedOnce(edges, shape, scale, search.r) ?? shape;
    scale = Math.max(TIGHTEST * search.r, scale * 0.62);
  }
  const [r = search.r, c1 = 0, s1 = 0, c2 = 0, s2 = 0] = shape;
  if (Math.abs(r - search.r) > 1.5 * reach || Math.hypot(c1, s1) > 1.5 * reach) return { ...search.focus, r: search.r, c2: 0, s2: 0, share: 0 };
  let agreeing = 0;
  for (let d = 0; d < AROUND.count; d += 1) {
    if ((edges.weight[d] ?? 0) > 0 && Math.abs((edges.radius[d] ?? 0) - radiusOf(shape, d)) < AGREES * search.r) agreeing += 1;
  }
  return { x: search.focus.x + c1, y: search.focus.y + s1, r, c2, s2, share: agreeing / AROUND.count };
}

/** Share of the directions in which it is brighter just outside a ring than just inside it. */
export function brighterOutside(plane: Plane, { x, y, r, c2, s2 }: Ring): number {
  let brighter = 0;
  for (let d = 0; d < AROUND.count; d += 1) {
    const radius = r + c2 * (AROUND.cosTwice[d] ?? 0) + s2 * (AROUND.sinTwice[d] ?? 0);
    const at = (factor: number): number => sampled(plane, x + factor * radius * (AROUND.cos[d] ?? 0), y + factor * radius * (AROUND.sin[d] ?? 0));
    if (at(1.04) + at(1.07) > at(0.96) + at(0.93) + 2 * LEAST_STEP) brighter += 1;
  }
  return brighter / AROUND.count;
}

/** Reach of the look at an edge, as a share of the radius to both sides. */
const EDGE_REACH = 0.16;

/** Over how much of its radius the edge of a ring rises: its whole step over its steepest slope, median over the directions that show one. */
export function softnessOf(plane: Plane, ring: Ring): number {
  const { x, y, r, c2, s2 } = ring;
  const steps = Math.max(8, Math.ceil(2 * EDGE_REACH * r));
  const widths: number[] = [];
  const levels = new Float32Array(steps + 1);
  for (let d = 0; d < AROUND.count; d += 2) {
    const radius = r + c2 * (AROUND.cosTwice[d] ?? 0) + s2 * (AROUND.sinTwice[d] ?? 0);
    for (let i = 0; i <= steps; i += 1) {
      const at = radius * (1 - EDGE_REACH + (2 * EDGE_REACH * i) / steps);
      levels[i] = sampled(plane, x + at * (AROUND.cos[d] ?? 0), y + at * (AROUND.sin[d] ?? 0));
    }
    let steepest = 0;
    for (let i = 1; i < steps; i += 1) steepest = Math.max(steepest, ((levels[i + 1] ?? 0) - (levels[i - 1] ?? 0)) / 2);
    const step = quantileOf(levels.slice(steps / 2), 0.8) - quantileOf(levels.slice(0, steps / 2), 0.2);
    if (step > 10 * LEAST_STEP && steepest > 0) widths.push(((step / steepest) * 2 * EDGE_REACH) / steps);
  }
  return widths.length === 0 ? 0 : quantileOf(Float32Array.from(widths), 0.5);
}

const termsOf = (d: number): readonly number[] => [1, AROUND.cos[d] ?? 0, AROUND.sin[d] ?? 0, AROUND.cosTwice[d] ?? 0, AROUND.sinTwice[d] ?? 0];
const TERMS = Array.from({ length: AROUND.count }, (_, d) => termsOf(d));

const radiusOf = (shape: readonly number[], d: number): number => (TERMS[d] ?? []).reduce((sum, term, i) => sum + term * (shape[i] ?? 0), 0);

function fittedOnce({ radius, weight }: Edges, shape: readonly number[], scale: number, r: number): number[] | undefined {
  const rows = Array.from({ length: 5 }, () => new Array<number>(6).fill(0));
  for (let d = 0; d < AROUND.count; d += 1) {
    const error = ((radius[d] ?? 0) - radiusOf(shape, d)) / scale;
    const w = (weight[d] ?? 0) * (1 + error * error) ** -1.5;
    const terms = TERMS[d] ?? [];
    rows.forEach((row, i) => {
      for (let j = 0; j < 5; j += 1) row[j] = (row[j] ?? 0) + w * (terms[i] ?? 0) * (terms[j] ?? 0);
      row[5] = (row[5] ?? 0) + w * (terms[i] ?? 0) * (radius[d] ?? 0);
    });
  }
  const total = rows[0]?.[0] ?? 0;
  if (total < 1e-6 * r) return undefined;
  rows.forEach((row, i) => { row[i] = (row[i] ?? 0) + (i >= 3 ? 0.02 * total : 1e-9 * total); });
  return solved(rows);
}

function edgesAround(plane: Plane, search: Search): Edges {
  const [radius, strength] = [new Float64Array(AROUND.count), new Float32Array(AROUND.count)];
  const { focus, r, unless } = search;
  for (let d = 0; d < AROUND.count; d += 1) {
    if (unless?.(focus.x + r * (AROUND.cos[d] ?? 0), focus.y + r * (AROUND.sin[d] ?? 0)) === true) continue;
    const found = strongestStep(plane, search, d);
    radius[d] = found.r;
    strength[d] = found.strength;
  }
  const usual = quantileOf(strength.slice(), 0.6);
  return { radius, weight: Float64Array.from(strength, (g) => (g <= 0 ? 0 : g / (g + 0.5 * usual))) };
}

function strongestStep(plane: Plane, { focus, r, within, step }: Search, d: number): { r: number; strength: number } {
  const stretch = 1 + focus.ex * (AROUND.cosTwice[d] ?? 0) + focus.ey * (AROUND.sinTwice[d] ?? 0);
  const [ux, uy] = [AROUND.cos[d] ?? 0, AROUND.sin[d] ?? 0];
  const from = Math.max(2, r * stretch * (1 - within));
  const count = Math.ceil(r * stretch * (1 + within) - from) + 5;
  const ray = new Float64Array(count);
  for (let i = 0; i < count; i += 1) ray[i] = sampled(plane, focus.x + (from - 2 + i) * ux, focus.y + (from - 2 + i) * uy);
  const stepAt = (i: number): number => {
    const rise = ((ray[i + 2] ?? 0) + (ray[i + 1] ?? 0) - (ray[i - 1] ?? 0) - (ray[i - 2] ?? 0)) / 6;
    return step === 'rise' ? rise : step === 'fall' ? -rise : Math.abs(rise);
  };
  let [best, at] = [0, 2];
  for (let i = 2; i < count - 2; i += 1) {
    const value = stepAt(i);
    if (value > best) [best, at] = [value, i];
  }
  const [before, next] = [at > 2 ? stepAt(at - 1) : best, at < count - 3 ? stepAt(at + 1) : best];
  const bend = before - 2 * best + next;
  return { r: from - 2 + at + (bend < 0 ? (0.5 * (before - next)) / bend : 0), strength: best };
}
