import type { LabPixels } from './lab-pixels.ts';
import type { Lab } from './lab.ts';
import type { Geometry } from './geometry.ts';
import { medianOf, quantileOf, spreadAround } from './order.ts';
import type { PixelImage } from './pixels.ts';
import { withinRing, type Ring } from './ring-fit.ts';
import { underStrap } from './strap.ts';
import { atLightness, type Tint } from './tint.ts';

/** Colour of a part: `lab` its lightness and the median of what survives shading, `spread` a robust standard deviation of each, from `pixels` pixels. */
export type RegionColour = { readonly lab: Lab; readonly spread: Lab; readonly pixels: number; readonly tint: Tint };

/** Fewer pixels than this do not make a colour. */
const FEWEST = 25;
/** Share of the bore that the centre electrode takes at most: common practice, no source. */
const ELECTRODE = 0.285;

/** A metal part shows its colour in a picture of this bore radius, in pixels; larger ones are looked at more coarsely. */
const PATCH = 80;

type Inside = (x: number, y: number) => boolean;

/** Index of every pixel, or of every `step`-th across and down, within `reach` pixels of a place for which `inside` holds. */
function placesWhere({ width, height }: PixelImage, centre: { x: number; y: number }, reach: number, inside: Inside, step = 1): Int32Array {
  const [x0, x1] = [Math.max(0, Math.floor(centre.x - reach)), Math.min(width, Math.ceil(centre.x + reach))];
  const [y0, y1] = [Math.max(0, Math.floor(centre.y - reach)), Math.min(height, Math.ceil(centre.y + reach))];
  const places = new Int32Array(Math.max(0, x1 - x0) * Math.max(0, y1 - y0));
  let count = 0;
  for (let y = y0; y < y1; y += step) {
    for (let x = x0; x < x1; x += step) {
      if (!inside(x + 0.5, y + 0.5)) continue;
      places[count] = y * width + x;
      count += 1;
    }
  }
  return places.subarray(0, count);
}

/** A test for the visible face of the nose: up to `rim` of its radius, off the electrode and `margin` bore radii off the strap. */
function onNose({ nose, bore, strap, electrode: drawn }: Geometry, rim: number, margin: number): Inside {
  const covered = underStrap(strap, bore, margin);
  const electrode = Math.max(drawn.r + 0.03 * bore.r, Math.min(ELECTRODE * bore.r, 0.62 * nose.r));
  const within = withinRing(nose, rim);
  return (x, y) => (x - nose.x) ** 2 + (y - nose.y) ** 2 > electrode ** 2 && within(x, y) && !covered(x, y);
}

export const nosePlaces = (image: PixelImage, geometry: Geometry, rim: number, margin: number): Int32Array =>
  placesWhere(image, geometry.nose, rim * (geometry.nose.r + Math.hypot(geometry.nose.c2, geometry.nose.s2)) + 1, onNose(geometry, rim, margin));

/** Places of `all` by the quarter of the turn around the bore in which they lie: to the right, below, to the left, above. */
export function byQuarter({ width }: PixelImage, { bore }: Geometry, all: Int32Array): readonly Int32Array[] {
  const quarters: readonly number[][] = [[], [], [], []];
  for (const place of all) {
    const [dx, dy] = [(place % width) - bore.x, Math.floor(place / width) - bore.y];
    const quarter = Math.abs(dx) >= Math.abs(dy) ? (dx >= 0 ? 0 : 2) : dy >= 0 ? 1 : 3;
    quarters[quarter]?.push(place);
  }
  return quarters.map((places) => Int32Array.from(places));
}

/** The middle of the ground electrode over the cavity and the nose. */
export function strapPlaces(image: PixelImage, { bore, strap }: Geometry): Int32Array {
  const onBar = underStrap({ ...strap, half: 0.7 * strap.half, end: strap.end + 0.06 }, bore, 0);
  const within = withinRing(bore, 0.92);
  return placesWhere(image, bore, bore.r, (x, y) => onBar(x, y) && within(x, y), Math.max(1, Math.round(bore.r / PATCH)));
}

/** The end of the centre electrode where the strap leaves it free. */
export function electrodePlaces(image: PixelImage, { bore, electrode, strap }: Geometry): Int32Array {
  const covered = underStrap(strap, bore, 0.05);
  const r = 0.68 * electrode.r;
  return placesWhere(image, electrode, r, (x, y) => Math.hypot(x - electrode.x, y - electrode.y) < r && !covered(x, y));
}

/** Places on the face of the shell between the bore and its outer edge, without the foot of the strap: 10 rings of 256. */
export function rimPlaces(image: PixelImage, { bore, face, strap }: Geometry): Int32Array {
  const covered = underStrap({ ...strap, half: strap.half + 0.1, end: 0 }, bore, 0);
  return ringPlaces(image, bore, 1.05, Math.max(1.12, (0.97 * face.r) / bore.r), covered);
}

/** Places just outside the thread, where the hexagon or the flank of the shell shows. */
export const flankPlaces = (image: PixelImage, { bore, shell }: Geometry): Int32Array =>
  ringPlaces(image, bore, (1.03 * shell.r) / bore.r, (1.2 * shell.r) / bore.r, () => false);

function ringPlaces({ width, height }: PixelImage, ring: Ring, from: number, to: number, covered: Inside): Int32Array {
  const places: number[] = [];
  for (let i = 0; i < 10; i += 1) {
    for (let k = 0; k < 256; k += 1) {
      const angle = (2 * Math.PI * k) / 256;
      const press = 1 + (ring.c2 * Math.cos(2 * angle) + ring.s2 * Math.sin(2 * angle)) / ring.r;
      const r = ring.r * press * (from + ((to - from) * (i + 0.5)) / 10);
      const x = ring.x + r * Math.cos(angle);
      const y = ring.y + r * Math.sin(angle);
      if (x >= 0 && y >= 0 && x < width && y < height && !covered(x, y)) places.push(Math.floor(y) * width + Math.floor(x));
    }
  }
  return Int32Array.from(places);
}

/** The colour of the pixels no darker than `from` (L*); nothing of too few. `lightness` is the share of them that are darker than the L* given. */
export function colourOf(pixels: LabPixels, lightness: number, from = -Infinity): RegionColour | undefined {
  const { l, a, b, count, pixels: all } = sampleOf(pixels, from);
  if (all < FEWEST) return undefined;
  const [us, vs] = [new Float32Array(count), new Float32Array(count)];
  for (let i = 0; i < count; i += 1) {
    const scale = Math.max(4, (l[i] ?? 0) + 16);
    us[i] = (a[i] ?? 0) / scale;
    vs[i] = (b[i] ?? 0) / scale;
  }
  const tint = { u: medianOf(us), v: medianOf(vs) };
  const spreadOf = (values: Float32Array): number => spreadAround(values, medianOf(values));
  const lab = atLightness(tint, Math.min(100, quantileOf(l, lightness)));
  return { lab, tint, spread: [spreadOf(l), spreadOf(a), spreadOf(b)], pixels: all };
}

/** Of more pixels than this, evenly spread ones stand for all: a median of so many is sure to a fortieth of the spread. */
const ENOUGH = 3000;

type Sample = Omit<LabPixels, 'clipped'> & { readonly count: number; readonly pixels: number };

/** The pixels no darker than `from`; `pixels` is the number of all of them. */
function sampleOf({ l, a, b }: LabPixels, from: number): Sample {
  const every = Math.max(1, Math.floor(l.length / ENOUGH));
  const room = Math.ceil(l.length / every);
  const sample = { l: new Float32Array(room), a: new Float32Array(room), b: new Float32Array(room) };
  let [count, pixels] = [0, 0];
  for (let i = 0; i < l.length; i += 1) {
    const lightness = l[i] ?? 0;
    if (lightness < from) continue;
    pixels += 1;
    if (i % every !== 0) continue;
    sample.l[count] = lightness;
    sample.a[count] = a[i] ?? 0;
    sample.b[count] = b[i] ?? 0;
    count += 1;
  }
  return { l: sample.l.subarray(0, count), a: sample.a.subarray(0, count), b: sample.b.subarray(0, count), count, pixels };
}
