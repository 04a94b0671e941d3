import type { Ring } from './ring-fit.ts';
import { sampled, type Plane } from './planes.ts';

/** The ground electrode as a bar over the bore; lengths in bore radii, `angle` in radians toward its foot, `end` along the bar from the centre. */
export type Strap = { readonly angle: number; readonly offset: number; readonly half: number; readonly end: number; readonly score: number };

type Bar = Pick<Strap, 'angle' | 'offset' | 'half'>;

/** Factor of brightness per unit of the plane's logarithm. */
const PER_UNIT = 1 / 60;
const FLANK = 0.07;
const FIRST_STEPS = { angle: Math.PI / 36, offset: 0.08, half: [0.21, 0.27, 0.33] };
const FINE = [{ angle: 0.044, offset: 0.04, half: 0.03 }, { angle: 0.018, offset: 0.02, half: 0.015 }, { angle: 0.008, offset: 0.01, half: 0.008 }];
const USUAL_END = -0.22;

/** Brightness at a place given in the bar's own directions, bore radii from the centre of the bore. */
function placeIn(plane: Plane, bore: Ring, { angle }: Pick<Bar, 'angle'>): (along: number, across: number) => number {
  const [cos, sin] = [Math.cos(angle) * bore.r, Math.sin(angle) * bore.r];
  return (along, across) => sampled(plane, bore.x + along * cos - across * sin, bore.y + along * sin + across * cos);
}

type Flanks = { readonly left: number; readonly right: number; readonly unsigned: number };

/** Contrast (natural logarithm) from outside to inside at both flanks, mean over `count` places along the bar. */
function flanksBetween(plane: Plane, bore: Ring, bar: Bar, from: number, to: number, count: number): Flanks {
  const at = placeIn(plane, bore, bar);
  const [l, r] = [bar.offset - bar.half, bar.offset + bar.half];
  let [left, right, unsigned] = [0, 0, 0];
  for (let i = 0; i < count; i += 1) {
    const along = from + ((to - from) * i) / (count - 1);
    const stepL = (at(along, l + FLANK) - at(along, l - FLANK)) * PER_UNIT;
    const stepR = (at(along, r - FLANK) - at(along, r + FLANK)) * PER_UNIT;
    left += stepL / count;
    right += stepR / count;
    unsigned += (Math.min(0.8, Math.abs(stepL)) + Math.min(0.8, Math.abs(stepR))) / (2 * count);
  }
  return { left, right, unsigned };
}

function firstScore(plane: Plane, bore: Ring, bar: Bar): number {
  const overCavity = flanksBetween(plane, bore, bar, 0.66, 0.96, 5);
  const lesser = Math.min(overCavity.left, overCavity.right);
  if (lesser < -0.2) return lesser;
  const overNose = flanksBetween(plane, bore, bar, 0.18, 0.54, 4);
  return lesser + 0.15 * (overCavity.left + overCavity.right) + 0.5 * overNose.unsigned;
}

const fineScore = (plane: Plane, bore: Ring, bar: Bar): number => flanksBetween(plane, bore, bar, 0.1, 1.12, 18).unsigned;

function bestTrial(plane: Plane, bore: Ring): { bar: Bar; score: number } {
  let best = { bar: { angle: 0, offset: 0, half: 0.27 } as Bar, score: -Infinity };
  for (let angle = 0; angle < 2 * Math.PI - 1e-9; angle += FIRST_STEPS.angle) {
    for (let offset = -0.24; offset < 0.241; offset += FIRST_STEPS.offset) {
      for (const half of FIRST_STEPS.half) {
        const bar = { angle, offset, half };
        const score = firstScore(plane, bore, bar);
        if (score > best.score) best = { bar, score };
      }
    }
  }
  return best;
}

const MOVES = (['angle', 'offset', 'half'] as const).flatMap((key) => [[key, 1], [key, -1]] as const);
const isPlausible = ({ half, offset }: Bar): boolean => half >= 0.16 && half <= 0.42 && Math.abs(offset) <= 0.36;

function refined(plane: Plane, bore: Ring, start: Bar): Bar {
  let [best, value] = [start, fineScore(plane, bore, start)];
  for (const step of FINE) {
    for (let round = 0, improved = true; improved && round < 5; round += 1) {
      improved = false;
      for (const [key, sign] of MOVES) {
        const trial = { ...best, [key]: best[key] + sign * step[key] };
        if (!isPlausible(trial) || Math.abs(trial.angle - start.angle) > 0.25) continue;
        const now = fineScore(plane, bore, trial);
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
  const { bar, score } = bestTrial(plane, bore);
  const fine = refined(plane, bore, bar);
  return { ...fine, end: freeEnd(plane, bore, fine), score };
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
