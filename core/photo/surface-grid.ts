import type { LabPixels } from './lab-pixels.ts';
import { medianOf } from './order.ts';

/** L* of a surface laid out as a picture again: `place` is where the i-th pixel lies in it, `known` where there is one. */
export type SurfaceGrid = {
  readonly width: number;
  readonly height: number;
  readonly place: Int32Array;
  readonly l: Float32Array;
  readonly known: Uint8Array;
};

/** Lays pixels (index in a picture of this width) out in the smallest box that holds them, with a border of one. */
export function surfaceGrid({ l }: LabPixels, places: Int32Array, imageWidth: number): SurfaceGrid {
  let [x0, x1, y0, y1] = [Infinity, 0, Infinity, 0];
  for (const at of places) {
    const [x, y] = [at % imageWidth, Math.floor(at / imageWidth)];
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
  }
  if (places.length === 0) [x0, y0] = [0, 0];
  const [width, height] = [x1 - x0 + 3, y1 - y0 + 3];
  const grid = { width, height, place: new Int32Array(places.length), l: new Float32Array(width * height), known: new Uint8Array(width * height) };
  places.forEach((at, i) => {
    const cell = (Math.floor(at / imageWidth) - y0 + 1) * width + (at % imageWidth) - x0 + 1;
    grid.place[i] = cell;
    grid.l[cell] = l[i] ?? 0;
    grid.known[cell] = 1;
  });
  return grid;
}

const boxOf = (sums: Float64Array, top: number, bottom: number, left: number, right: number): number =>
  (sums[bottom + right] ?? 0) - (sums[top + right] ?? 0) - (sums[bottom + left] ?? 0) + (sums[top + left] ?? 0);

/** L* of each known cell minus the mean of the known cells in a square of `half` to each side. */
export function reliefOf({ width, height, l, known }: SurfaceGrid, half: number): Float32Array {
  const stride = width + 1;
  const [sums, counts] = [new Float64Array(stride * (height + 1)), new Float64Array(stride * (height + 1))];
  for (let y = 0; y < height; y += 1) {
    let [row, number] = [0, 0];
    for (let x = 0; x < width; x += 1) {
      row += l[y * width + x] ?? 0;
      number += known[y * width + x] ?? 0;
      sums[(y + 1) * stride + x + 1] = (sums[y * stride + x + 1] ?? 0) + row;
      counts[(y + 1) * stride + x + 1] = (counts[y * stride + x + 1] ?? 0) + number;
    }
  }
  const relief = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const [top, bottom] = [Math.max(0, y - half) * stride, Math.min(height, y + half + 1) * stride];
    for (let x = 0; x < width; x += 1) {
      if (known[y * width + x] !== 1) continue;
      const [left, right] = [Math.max(0, x - half), Math.min(width, x + half + 1)];
      const mean = boxOf(sums, top, bottom, left, right) / boxOf(counts, top, bottom, left, right);
      relief[y * width + x] = (l[y * width + x] ?? 0) - mean;
    }
  }
  return relief;
}

/** Standard deviation of the picture's noise in L*: how far pixels lie from the mean of their neighbours to both sides. */
export function noiseOf({ l, known, place }: SurfaceGrid): number {
  const steps = new Float32Array(place.length);
  let count = 0;
  for (const at of place) {
    if (known[at - 1] !== 1 || known[at + 1] !== 1) continue;
    steps[count] = Math.abs((l[at] ?? 0) - ((l[at - 1] ?? 0) + (l[at + 1] ?? 0)) / 2);
    count += 1;
  }
  return count === 0 ? 0 : medianOf(steps.subarray(0, count)) / 0.6745 / 1.22;
}
