import { quantileOf } from './order.ts';
import { clamped } from './pixels.ts';
import type { Ring } from './ring-fit.ts';
import { sampled, type Plane } from './planes.ts';

/** The ground electrode as a bar over the bore; lengths in bore radii, `angle` in radians toward its foot, `end` along the bar from the centre. */
export type Strap = { readonly angle: number; readonly offset: number; readonly half: number; readonly end: number; readonly score: number };

type Bar = Pick<Strap, 'angle' | 'offset' | 'half'>;

/** Factor of brightness per unit of the plane's logarithm. */
const PER_UNIT = 1 / 60;
const FLANK = 0.07;
/** A glint must not count for more than an edge does. */
const STRONG = 0.8;
const FIRST_STEPS = { angle: Math.PI / 36, offset: 0.08, half: [0.21, 0.27, 0.33] };
const FINE = [{ angle: 0.044, offset: 0.04, half: 0.03 }, { angle: 0.018, offset: 0.02, half: 0.015 }, { angle: 0.008, offset: 0.01, half: 0.008 }];
const USUAL_END = -0.22;

/** Brightness at a place given in the bar's own directions, bore radii from the centre of the bore. */
function placeIn(plane: Plane, bore: Ring, { angle }: Pick<Bar, 'angle'>): (along: number, across: number) => number {
  const [cos, sin] = [Math.cos(angle) * bore.r, Math.sin(angle) * bore.r];
  return (along, across) => sampled(plane, bore.x + along * cos - across * sin, bore.y + along * sin + across * cos);
}

type Place = (along: number, across: number) => number;
const straight = (at: Place) => (distance: number) => (offset: number): number => at(distance, offset);
/** On one circle around the centre: rings, of which such a picture is full, must not look like flanks. Nothing where the bar is as wide as the circle. */
const onCircle = (at: Place) => (distance: number) => (offset: number): number => at(Math.sqrt(Math.max(0, distance * distance - offset * offset)), offset);

type Flank = { readonly left: number; readonly right: number };

/** Contrast (natural logarithm) from outside to inside at both edges of a bar at a distance along it. */
function flanksAt(level: (offset: number) => number, { offset, half }: Bar): Flank {
  const [l, r] = [offset - half, offset + half];
  return { left: (level(l + FLANK) - level(l - FLANK)) * PER_UNIT, right: (level(r - FLANK) - level(r + FLANK)) * PER_UNIT };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const held = (step: number): number => clamped(step, -STRONG, STRONG);
const unsigned = (flanks: readonly Flank[]): number => mean(flanks.map(({ left, right }) => (Math.abs(held(left)) + Math.abs(held(right))) / 2));

const OVER_CAVITY = [0.66, 0.735, 0.81, 0.885, 0.96];
const OVER_NOSE = [0.18, 0.3, 0.42, 0.54];
const ALONG = Array.from({ length: 18 }, (_, i) => 0.1 + 0.06 * i);

/** How much a bar looks like the ground electrode, for the search. */
function likeness(plane: Plane, bore: Ring, bar: Bar): number {
  const level = straight(placeIn(plane, bore, bar));
  let [left, right] = [0, 0];
  for (const distance of OVER_CAVITY) {
    const flank = flanksAt(level(distance), bar);
    left += flank.left / OVER_CAVITY.length;
    right += flank.right / OVER_CAVITY.length;
  }
  const lesser = Math.min(left, right);
  return lesser < -0.2 ? lesser : lesser + 0.15 * (left + right) + 0.5 * unsigned(OVER_NOSE.map((distance) => flanksAt(level(distance), bar)));
}

/** How clear both edges of the bar are along its straight length; for a bar that is known to be one. */
function clearness(plane: Plane, bore: Ring, bar: Bar): number {
  const level = straight(placeIn(plane, bore, bar));
  return unsigned(ALONG.map((distance) => flanksAt(level(distance), bar)));
}

/** How surely a bar that was found is an electrode: brighter than the cavity on both sides all the way, by no glint alone. Up to 1.2; nothing below 0. */
function certainty(plane: Plane, bore: Ring, bar: Bar): number {
  const level = onCircle(placeIn(plane, bore, bar));
  const flanks = OVER_CAVITY.map((distance) => flanksAt(level(distance), bar));
  const [left, right] = [mean(flanks.map((flank) => held(flank.left))), mean(flanks.map((flank) => held(flank.right)))];
  const throughout = flanks.filter((flank) => flank.left > 0.05 && flank.right > 0.05).length / flanks.length;
  const score = Math.min(left, right) + 0.15 * (left + right) + 0.5 * unsigned([0.42, 0.54].map((distance) => flanksAt(level(distance), bar)));
  return Math.max(0, throughout * score);
}

const AROUND = 72;

/**
 * Share of the cavity beside the bar that looks like the bar rather than like the cavity: nearly nothing where one electrode crosses it; much where the lamp
 * lights the wall, or where there are spokes, balls, or several electrodes.
 */
function alikeBeside(plane: Plane, bore: Ring, { angle, offset, half }: Bar): number {
  const beside: number[] = [];
  const within: number[] = [];
  for (let i = 0; i < AROUND; i += 1) {
    const turn = (2 * Math.PI * i) / AROUND;
    const [dx, dy] = [Math.cos(turn), Math.sin(turn)];
    const level = [0.72, 0.8, 0.88].reduce((sum, share) => sum + sampled(plane, bore.x + share * bore.r * dx, bore.y + share * bore.r * dy), 0) / 3;
    const toward = dx * Math.cos(angle) + dy * Math.sin(angle);
    const across = Math.abs(0.8 * (dy * Math.cos(angle) - dx * Math.sin(angle)) - offset);
    if (toward > 0 && across < 0.7 * half) within.push(level);
    else if (toward < 0 || across > half + 0.12) beside.push(level);
  }
  const middle = (levels: number[]): number => quantileOf(Float32Array.from(levels), 0.5);
  const [dark, bar] = [quantileOf(Float32Array.from(beside), 0.25), middle(within)];
  return beside.filter((level) => level > (dark + bar) / 2).length / Math.max(1, beside.length);
}

/** Up to this share a lit wall is usual. */
const ALIKE_IS_USUAL = 0.3;

function bestTrial(plane: Plane, bore: Ring): Bar {
  let best = { bar: { angle: 0, offset: 0, half: 0.27 } as Bar, score: -Infinity };
  for (let angle = 0; angle < 2 * Math.PI - 1e-9; angle += FIRST_STEPS.angle) {
    for (let offset = -0.24; offset < 0.241; offset += FIRST_STEPS.offset) {
      for (const half of FIRST_STEPS.half) {
        const bar = { angle, offset, half };
        const score = likeness(plane, bore, bar);
        if (score > best.score) best = { bar, score };
      }
    }
  }
  return best.bar;
}

const MOVES = (['angle', 'offset', 'half'] as const).flatMap((key) => [[key, 1], [key, -1]] as const);
const isPlausible = ({ half, offset }: Bar): boolean => half >= 0.16 && half <= 0.42 && Math.abs(offset) <= 0.36;

function refined(plane: Plane, bore: Ring, start: Bar): Bar {
  let [best, value] = [start, clearness(plane, bore, start)];
  for (const step of FINE) {
    for (let round = 0, improved = true; improved && round < 5; round += 1) {
      improved = false;
      for (const [key, sign] of MOVES) {
        const trial = { ...best, [key]: best[key] + sign * step[key] };
        if (!isPlausible(trial) || Math.abs(trial.angle - start.angle) > 0.25) continue;
        const now = clearness(plane, bore, trial);
        if (now > value) [best, value, improved] = [trial, now, true];
      }
    }
  }
  return best;
}

/** Where the bar stops: the strongest change along its middle just before or beyond the centre. */
function freeEnd(plane: Plane, bore: Ring, bar: Bar): number {
  const at = placeIn(plane, bore, bar);
  const level = (along: number): number => [-0.5, 0, 0.5].reduce((sum, part) => sum + at(along, bar.offset + part * bar.half), 0) / 3;
  let [end, strongest] = [USUAL_END, 12];
  for (let along = 0.12; along >= -0.48; along -= 0.02) {
    const change = Math.abs(level(along + 0.03) - level(along - 0.03));
    if (change > strongest) [end, strongest] = [along, change];
  }
  return end;
}

/** The most likely ground electrode over a bore. Its score is low where there is none, or several. */
export function findStrap(plane: Plane, bore: Ring): Strap {
  const bar = refined(plane, bore, bestTrial(plane, bore));
  const alone = 1 - clamped((alikeBeside(plane, bore, bar) - ALIKE_IS_USUAL) / 0.3);
  return { ...bar, end: freeEnd(plane, bore, bar), score: alone * certainty(plane, bore, bar) };
}

/** A test for places under the strap, widened to both sides by `margin` bore radii. */
export function underStrap({ angle, offset, half, end }: Strap, bore: Ring, margin: number): (x: number, y: number) => boolean {
  const [cos, sin] = [Math.cos(angle) / bore.r, Math.sin(angle) / bore.r];
  return (x, y) => {
    const dx = x - bore.x;
    const dy = y - bore.y;
    return dx * cos + dy * sin > end - margin && Math.abs(dy * cos - dx * sin - offset) < half + margin;
  };
}
