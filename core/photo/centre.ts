import type { Point } from './pixels.ts';
import type { Plane } from './planes.ts';

const STRONGEST = 0.15;
const MOST = 3;

/**
 * Places around which edges lie in rings, best first: every strong edge votes for all centres it could belong to, so concentric rings add up and
 * lines do not. (Gradient voting for radial symmetry: Loy and Zelinsky, IEEE Transactions on Pattern Analysis 25(8), 2003.)
 */
export function centreCandidates(plane: Plane): readonly Point[] {
  const sizes = gradientSizes(plane);
  const limit = limitOf(sizes);
  if (limit <= 0) return [];
  const votes = castVotes(plane, sizes, limit);
  return peaksOf(favourMiddle(blurred(blurred(votes))));
}

/** Gradient of the plane at a pixel inside its border (Sobel). */
const acrossAt = (v: Float32Array, at: number, w: number): number =>
  (v[at - w + 1] ?? 0) - (v[at - w - 1] ?? 0) + 2 * ((v[at + 1] ?? 0) - (v[at - 1] ?? 0)) + (v[at + w + 1] ?? 0) - (v[at + w - 1] ?? 0);
const downAt = (v: Float32Array, at: number, w: number): number =>
  (v[at + w - 1] ?? 0) - (v[at - w - 1] ?? 0) + 2 * ((v[at + w] ?? 0) - (v[at - w] ?? 0)) + (v[at + w + 1] ?? 0) - (v[at - w + 1] ?? 0);

function gradientSizes({ width, height, values }: Plane): Float32Array {
  const size = new Float32Array(width * height);
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1; x < width - 1; x += 1) {
      const at = y * width + x;
      const dx = acrossAt(values, at, width);
      const dy = downAt(values, at, width);
      size[at] = Math.sqrt(dx * dx + dy * dy);
    }
  }
  return size;
}

/** The gradient that the strongest share reach. */
function limitOf(size: Float32Array): number {
  let largest = 0;
  for (const value of size) if (value > largest) largest = value;
  if (largest === 0) return 0;
  const histogram = new Uint32Array(1024);
  for (const value of size) { const bin = Math.min(1023, (value / largest * 1024) | 0); histogram[bin] = (histogram[bin] ?? 0) + 1; }
  let [left, bin] = [size.length * STRONGEST, 1023];
  while (bin > 0 && left > 0) { left -= histogram[bin] ?? 0; bin -= 1; }
  return Math.max(1, ((bin + 1) / 1024) * largest);
}

/** Votes lie on a grid of two pixels; every second pixel votes, as on a chessboard. */
function castVotes({ width, height, values }: Plane, size: Float32Array, limit: number): Plane {
  const [w, h, side] = [(width >> 1) + 1, (height >> 1) + 1, Math.min(width, height) / 2];
  const votes: Votes = { plane: { width: w, height: h, values: new Float32Array(w * h) }, nearest: 0.05 * side, furthest: 0.46 * side };
  for (let y = 1; y < height - 1; y += 1) {
    for (let x = 1 + (y & 1); x < width - 1; x += 2) {
      const at = y * width + x;
      const strength = size[at] ?? 0;
      if (strength < limit) continue;
      const weight = strength / (strength + 4 * limit);
      const ux = acrossAt(values, at, width) / strength;
      const uy = downAt(values, at, width) / strength;
      voteAlong(votes, (x + 0.5) / 2, (y + 0.5) / 2, ux, uy, weight);
      voteAlong(votes, (x + 0.5) / 2, (y + 0.5) / 2, -ux, -uy, weight);
    }
  }
  return votes.plane;
}

type Votes = { readonly plane: Plane; readonly nearest: number; readonly furthest: number };

/** One vote at every second cell along a direction (they are blurred afterwards), from the nearest to the furthest distance a ring's centre may have. */
function voteAlong({ plane: { width, height, values }, nearest, furthest }: Votes, x: number, y: number, ux: number, uy: number, weight: number): void {
  for (let r = nearest; r < furthest; r += 2) {
    const px = x + r * ux;
    const py = y + r * uy;
    if (px < 0 || py < 0 || px >= width || py >= height) return;
    const cell = (py | 0) * width + (px | 0);
    values[cell] = (values[cell] ?? 0) + weight;
  }
}

function blurred({ width, height, values }: Plane): Plane {
  const [across, both] = [new Float32Array(values.length), new Float32Array(values.length)];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      let sum = 0;
      for (let d = -2; d <= 2; d += 1) sum += x + d >= 0 && x + d < width ? values[y * width + x + d] ?? 0 : 0;
      across[y * width + x] = sum / 5;
    }
  }
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      let sum = 0;
      for (let d = -2; d <= 2; d += 1) sum += y + d >= 0 && y + d < height ? across[(y + d) * width + x] ?? 0 : 0;
      both[y * width + x] = sum / 5;
    }
  }
  return { width, height, values: both };
}

/** Whoever takes a picture of a plug puts it near the middle. */
function favourMiddle({ width, height, values }: Plane): Plane {
  const unit = 0.33 * Math.min(width, height);
  return {
    width, height,
    values: values.map((value, at) => {
      const [dx, dy] = [((at % width) - width / 2) / unit, (Math.floor(at / width) - height / 2) / unit];
      return value / (1 + 0.5 * (dx * dx + dy * dy));
    }),
  };
}

function peaksOf({ width, height, values }: Plane): readonly Point[] {
  const left = values.slice();
  const apart = 0.08 * Math.min(width, height);
  const peaks: Point[] = [];
  let best = 0;
  while (peaks.length < MOST) {
    let top = 0;
    for (let at = 1; at < left.length; at += 1) if ((left[at] ?? 0) > (left[top] ?? 0)) top = at;
    const height0 = left[top] ?? 0;
    best = Math.max(best, height0);
    if (height0 <= 0 || height0 < 0.55 * best) break;
    const [px, py] = [top % width, Math.floor(top / width)];
    peaks.push({ x: 2 * px + 1, y: 2 * py + 1 });
    for (let y = Math.max(0, Math.floor(py - apart)); y <= Math.min(height - 1, py + apart); y += 1) {
      for (let x = Math.max(0, Math.floor(px - apart)); x <= Math.min(width - 1, px + apart); x += 1) left[y * width + x] = 0;
    }
  }
  return peaks;
}
