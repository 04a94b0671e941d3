import { directions } from './directions.ts';
import { ringEdges, unrolled, type Focus } from './focus.ts';
import { medianOf } from './order.ts';
import type { Plane } from './planes.ts';

/** Which ring is the bore of the shell, in pixels of the plane, and how well the others fit to it. */
export type RingModel = { readonly focus: Focus; readonly bore: number; readonly score: number };

type Profile = { readonly edges: Float32Array; readonly levels: Float32Array; readonly reach: number };

const AROUND = directions(96);

function profileOf(plane: Plane, focus: Focus, reach: number): Profile {
  const rays = unrolled(plane, focus, reach, AROUND);
  const column = new Float32Array(AROUND.count);
  const levels = Float32Array.from({ length: reach }, (_, r) => {
    for (let d = 0; d < AROUND.count; d += 1) column[d] = rays[d * reach + r] ?? 0;
    return medianOf(column);
  });
  return { edges: ringEdges(rays, reach), levels, reach };
}

function meanBetween(levels: Float32Array, from: number, to: number): number {
  const [low, high] = [Math.max(0, Math.round(from)), Math.min(levels.length - 1, Math.max(Math.round(from), Math.round(to)))];
  let sum = 0;
  for (let r = low; r <= high; r += 1) sum += levels[r] ?? 0;
  return high < low ? 0 : sum / (high - low + 1);
}

/** The strongest edge between two radii after `measure`, and where it is. */
function strongest(edges: Float32Array, from: number, to: number, measure: (edge: number) => number): { value: number; at: number } {
  let found = { value: 0, at: from };
  for (let r = Math.max(1, Math.round(from)); r <= Math.min(edges.length - 2, Math.round(to)); r += 1) {
    const value = measure(edges[r] ?? 0);
    if (value > found.value) found = { value, at: r };
  }
  return found;
}

/**
 * How much a rise at radius r looks like the edge of the bore: dark cavity within, bright face without, an insulator that ends inside it and a
 * thread or chamfer around it. Proportions of a 14 mm plug: common practice, no source.
 */
function boreScore({ edges, levels }: Profile, r: number): number {
  const cavity = meanBetween(levels, 0.84 * r, 0.95 * r);
  const face = meanBetween(levels, 1.05 * r, 1.18 * r);
  const nose = strongest(edges, 0.4 * r, 0.82 * r, (edge) => -edge);
  const noseLevel = meanBetween(levels, 0.72 * nose.at, 0.94 * nose.at);
  const thread = strongest(edges, r / 0.75, r / 0.56, Math.abs);
  const chamfer = strongest(edges, 1.18 * r, 1.5 * r, Math.abs);
  return (edges[r] ?? 0) + 0.9 * Math.min(1.2, (face - cavity) / 40) + 0.7 * nose.value + 0.35 * thread.value + 0.25 * chamfer.value
    + 0.5 * Math.min(1, (noseLevel - cavity) / 50) + 0.15 * Math.log(r / 8);
}

/** The most likely bore around a focus, its radius between `low` and `high` pixels; nothing if no ring is brighter outside than inside. */
export function ringModel(plane: Plane, focus: Focus, reach: number, [low, high]: readonly [number, number]): RingModel | undefined {
  const profile = profileOf(plane, focus, reach);
  let best: RingModel | undefined;
  for (let r = Math.max(2, Math.ceil(low)); r < Math.min(reach - 2, high); r += 1) {
    const edge = profile.edges[r] ?? 0;
    if (edge < 0.25 || edge < (profile.edges[r - 1] ?? 0) || edge < (profile.edges[r + 1] ?? 0)) continue;
    const score = boreScore(profile, r);
    if (best === undefined || score > best.score) best = { focus, bore: r, score };
  }
  return best;
}
