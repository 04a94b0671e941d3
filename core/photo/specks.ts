import { spreadAround } from './order.ts';
import { noiseOf, reliefOf, type SurfaceGrid } from './surface-grid.ts';

/** `grain` is the robust standard deviation of L* on the surface without noise: under 1.5 smooth, from 2.3 crust (measured on drawn pictures). */
export type Texture = { readonly specks: number; readonly grain: number };

type Blob = { readonly cells: readonly number[]; readonly touchingEdge: number };

/** Specks smaller than this in the picture cannot be told from noise: bore radius in pixels. */
export const SMALLEST_BORE_FOR_SPECKS = 80;
/** The same where the edge of the bore is spread over more than this share of its radius: the largest specks are half as wide. */
export const SOFT_FROM = 0.09;

/** Counts dark isolated spots and measures the grain of a surface; `inDeposit` names cells of a dark deposit, where neither is looked for. */
export function textureOf(grid: SurfaceGrid, boreRadius: number, inDeposit: (cell: number) => boolean): Texture {
  const relief = reliefOf(grid, Math.max(2, Math.round(0.045 * boreRadius)));
  const noise = noiseOf(grid);
  const outside = reliefOutside(grid, relief, inDeposit);
  const spread = outside.length === 0 ? 0 : spreadAround(outside, 0);
  const depth = Math.max(7, 5 * noise, 3.6 * (spread / 1.4826));
  const isDark = new Uint8Array(relief.length);
  for (const cell of grid.place) if ((relief[cell] ?? 0) < -depth && !inDeposit(cell)) isDark[cell] = 1;
  const specks = blobsOf(grid, isDark).filter((blob) => isSpeck(blob, grid.width, boreRadius)).length;
  return { specks, grain: Math.sqrt(Math.max(0, (spread / 1.4826) ** 2 - noise ** 2 / 2)) };
}

function reliefOutside({ place }: SurfaceGrid, relief: Float32Array, inDeposit: (cell: number) => boolean): Float32Array {
  const values = new Float32Array(place.length);
  let count = 0;
  for (const cell of place) {
    if (inDeposit(cell)) continue;
    values[count] = relief[cell] ?? 0;
    count += 1;
  }
  return values.subarray(0, count);
}

function blobsOf({ width, known, place }: SurfaceGrid, isDark: Uint8Array): readonly Blob[] {
  const around = [-width - 1, -width, -width + 1, -1, 1, width - 1, width, width + 1];
  const blobs: Blob[] = [];
  const left = isDark.slice();
  for (const start of place) {
    if (left[start] !== 1) continue;
    left[start] = 0;
    const cells = [start];
    let touchingEdge = 0;
    for (let next = 0; next < cells.length; next += 1) {
      const cell = cells[next] ?? start;
      if (around.some((step) => known[cell + step] !== 1)) touchingEdge += 1;
      for (const step of around) {
        if (left[cell + step] !== 1) continue;
        left[cell + step] = 0;
        cells.push(cell + step);
      }
    }
    blobs.push({ cells, touchingEdge });
  }
  return blobs;
}

/** A compact spot of the size of a speck that does not hug the edge of what can be seen. */
function isSpeck({ cells, touchingEdge }: Blob, width: number, boreRadius: number): boolean {
  const area = cells.length;
  const radius = Math.sqrt(area / Math.PI);
  if (area < 3 || radius < 0.009 * boreRadius || radius > 0.045 * boreRadius || touchingEdge > area / 4) return false;
  const [xs, ys] = [cells.map((cell) => cell % width), cells.map((cell) => Math.floor(cell / width))];
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / area;
  const [mx, my] = [mean(xs), mean(ys)];
  const [xx, yy] = [mean(xs.map((x) => (x - mx) ** 2)) + 1 / 12, mean(ys.map((y) => (y - my) ** 2)) + 1 / 12];
  const xy = mean(xs.map((x, i) => (x - mx) * ((ys[i] ?? 0) - my)));
  const [middle, away] = [(xx + yy) / 2, Math.hypot((xx - yy) / 2, xy)];
  const [long, short] = [middle + away, Math.max(1e-6, middle - away)];
  return Math.sqrt(long / short) < 4.5 && area / (4 * Math.PI * Math.sqrt(long * short)) > 0.6;
}
