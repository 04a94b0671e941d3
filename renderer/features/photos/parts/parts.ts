import type { Circle, Point } from '../../../../core/photo/pixels.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import type { PhotoParts } from '../../../../shared/formats/photo-measure.v1.ts';

export const CIRCLES = ['shell', 'bore', 'nose', 'centreElectrode'] as const satisfies readonly (keyof PhotoParts)[];
export type CircleName = (typeof CIRCLES)[number];
export type PartName = CircleName | 'groundElectrode';

/** What can be taken hold of: a circle, or one end of the ground electrode. */
export type HandleName = CircleName | 'foot' | 'end';

/** The parts as they count: what a person put right, else what was found. */
export const partsOf = ({ geometry, measure }: Pick<PhotoRecord, 'geometry' | 'measure'>): PhotoParts => {
  const { shell, bore, nose, centreElectrode, groundElectrode } = { ...measure?.geometry, ...geometry };
  return {
    ...(shell && { shell }), ...(bore && { bore }), ...(nose && { nose }), ...(centreElectrode && { centreElectrode }),
    ...(groundElectrode && { groundElectrode }),
  };
};

const LEAST_RADIUS = 4;

export function moved(parts: PhotoParts, name: HandleName, dx: number, dy: number): PhotoParts {
  const shifted = <P extends Point>(at: P): P => ({ ...at, x: at.x + dx, y: at.y + dy });
  const { groundElectrode: bar } = parts;
  if (name === 'foot' || name === 'end') return bar === undefined ? parts : { ...parts, groundElectrode: { ...bar, [name]: shifted(bar[name]) } };
  const circle = parts[name];
  return circle === undefined ? parts : { ...parts, [name]: shifted(circle) };
}

/** A circle by its radius, the ground electrode by its width. Picture pixels. */
export function widened(parts: PhotoParts, name: HandleName, by: number): PhotoParts {
  const { groundElectrode: bar } = parts;
  if (name === 'foot' || name === 'end') {
    return bar === undefined ? parts : { ...parts, groundElectrode: { ...bar, width: Math.max(LEAST_RADIUS, bar.width + 2 * by) } };
  }
  const circle = parts[name];
  return circle === undefined ? parts : { ...parts, [name]: { ...circle, r: Math.max(LEAST_RADIUS, circle.r + by) } };
}

type Extent = { readonly width: number; readonly height: number };

/** Shares of the thread's radius, for a plug that a person has to point out from nothing: common practice, no source. */
const USUAL = { bore: 0.65, nose: 0.37, foot: 0.77, end: -0.15, width: 0.34 };

/** Parts of usual proportions in the middle of a picture, strap upward, to be drawn into place. */
export function usualParts({ width, height }: Extent): PhotoParts {
  const shell: Circle = { x: width / 2, y: height / 2, r: 0.35 * Math.min(width, height) };
  const circle = (share: number): Circle => ({ ...shell, r: share * shell.r });
  const up = (share: number): Point => ({ x: shell.x, y: shell.y - share * shell.r });
  const bar = { foot: up(USUAL.foot), end: up(USUAL.end), width: USUAL.width * shell.r };
  return { shell, bore: circle(USUAL.bore), nose: circle(USUAL.nose), groundElectrode: bar };
}

/** Parts carried over from a picture to another by the share of its size. */
export function carriedOver(parts: PhotoParts, from: Extent, to: Extent): PhotoParts {
  const scale = Math.min(to.width / from.width, to.height / from.height);
  const point = ({ x, y }: Point): Point => ({ x: to.width / 2 + (x - from.width / 2) * scale, y: to.height / 2 + (y - from.height / 2) * scale });
  const circle = (of: Circle): Circle => ({ ...point(of), r: of.r * scale });
  const { groundElectrode: bar } = parts;
  return {
    ...Object.fromEntries(CIRCLES.flatMap((name) => { const of = parts[name]; return of === undefined ? [] : [[name, circle(of)]]; })),
    ...(bar && { groundElectrode: { foot: point(bar.foot), end: point(bar.end), width: bar.width * scale } }),
  };
}

/** Below it a person should look at the circles before trusting them; below the lower one no plug was found. Bands of the measuring itself. */
export const SURE = { trust: 0.7, look: 0.45 };

/** The photo of the reading that was put right last before this one, whose parts may serve here; not where this one's are certain or put right already. */
export function modelFor(photo: PhotoRecord, others: readonly PhotoRecord[]): PhotoRecord | undefined {
  if (photo.geometry !== null || (photo.measure?.geometry.confidence ?? 0) >= SURE.trust) return undefined;
  const at = others.findIndex(({ id }) => id === photo.id);
  const before = others.slice(0, Math.max(0, at)).toReversed();
  return [...before, ...others.slice(at + 1)].find(({ id, view, geometry }) => id !== photo.id && view === photo.view && geometry !== null);
}
