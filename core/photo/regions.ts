import type { LabPixels } from './lab-pixels.ts';
import type { Lab } from './lab.ts';
import type { Geometry } from './geometry.ts';
import { medianOf, quantileOf, spreadAround } from './order.ts';
import type { PixelImage } from './pixels.ts';
import { depthIn, type Ring } from './ring-fit.ts';
import { underStrap } from './strap.ts';
import { atLightness, type Tint } from './tint.ts';

/** Colour of a part: `lab` its lightness and the median of what survives shading, `spread` a robust standard deviation of each, from `pixels` pixels. */
export type RegionColour = { readonly lab: Lab; readonly spread: Lab; readonly pixels: number; readonly tint: Tint };

/** Fewer pixels than this do not make a colour. */
const FEWEST = 25;
/** Share of the bore that the centre electrode takes at most: common practice, no source. */
const ELECTRODE = 0.285;

type Inside = (x: number, y: number) => boolean;

/** Index of every pixel within `reach` pixels of a place for which `inside` holds. */
function placesWhere({ width, height }: PixelImage, centre: { x: number; y: number }, reach: number, inside: Inside): Int32Array {
  const [x0, x1] = [Math.max(0, Math.floor(centre.x - reach)), Math.min(width, Math.ceil(centre.x + reach))];
  const [y0, y1] = [Math.max(0, Math.floor(centre.y - reach)), Math.min(height, Math.ceil(centre.y + reach))];
  const places = new Int32Array(Math.max(0, x1 - x0) * Math.max(0, y1 - y0));
  let count = 0;
  for (let y = y0; y < y1; y += 1) {
    for (let x = x0; x < x1; x += 1) {
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
  return (x, y) => depthIn(nose, x, y) < rim && (x - nose.x) ** 2 + (y - nose.y) ** 2 > electrode ** 2 && !covered(x, y);
}

export const nosePlaces = (image: PixelImage, geometry: Geometry, rim: number, margin: number): Int32Array =>
  placesWhere(image, geometry.nose, rim * (geometry.nose.r + Math.hypot(geometry.nose.c2, geometry.nose.s2)) + 1, onNose(geometry, rim, margin));

/** Places of `all` by the quarter of the turn around the bore in which they lie, beginning to the right. */
export function byQuarter({ width }: PixelImage, { bore }: Geometry, all: Int32Array): readonly Int32Array[] {
  const quarterOf = (place: number): number => {
    const [dx, dy] = [(place % width) - bore.x, Math.floor(place / width) - bore.y];
    return Math.floor((Math.atan2(dy, dx) / (Math.PI / 2) + 4.5) % 4);
  };
  return [0, 1, 2, 3].map((quarter) => all.filter((place) => quarterOf(place) === quarter));
}

/** The middle of the ground electrode over the cavity and the nose. */
export function strapPlaces(image: PixelImage, { bore, strap }: Geometry): Int32Array {
  const onBar = underStrap({ ...strap, half: 0.7 * strap.half, end: strap.end + 0.06 }, bore, 0);
  return placesWhere(image, bore, bore.r, (x, y) => onBar(x, y) && depthIn(bore, x, y) < 0.92);
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
export function colourOf({ l, a, b }: LabPixels, lightness: number, from = -Infinity): RegionColour | undefined {
  const [ls, as, bs] = [new Float32Array(l.length), new Float32Array(l.length), new Float32Array(l.length)];
  const [us, vs] = [new Float32Array(l.length), new Float32Array(l.length)];
  let count = 0;
  for (let i = 0; i < l.length; i += 1) {
    const [li, ai, bi] = [l[i] ?? 0, a[i] ?? 0, b[i] ?? 0];
    if (li < from) continue;
    const scale = Math.max(4, li + 16);
    ls[count] = li;
    as[count] = ai;
    bs[count] = bi;
    us[count] = ai / scale;
    vs[count] = bi / scale;
    count += 1;
  }
  if (count < FEWEST) return undefined;
  const tint = { u: medianOf(us.subarray(0, count)), v: medianOf(vs.subarray(0, count)) };
  const spreadOf = (values: Float32Array): number => spreadAround(values.subarray(0, count), medianOf(values.subarray(0, count)));
  const lab = atLightness(tint, Math.min(100, quantileOf(ls.subarray(0, count), lightness)));
  return { lab, tint, spread: [spreadOf(ls), spreadOf(as), spreadOf(bs)], pixels: count };
}
