import type { Circle } from '../../../../core/photo/pixels.ts';
import type { PhotoParts } from '../../../../shared/formats/photo-measure.v1.ts';
import type { Placement } from '../viewer/placement.ts';

/** What the two pictures share, the best known first. */
const RINGS = ['bore', 'shell', 'nose'] as const;

/** Of the ground electrode toward its foot, radians. */
const angleOf = ({ groundElectrode: bar }: PhotoParts): number | undefined => bar && Math.atan2(bar.foot.y - bar.end.y, bar.foot.x - bar.end.x);

/** The shorter way round, -π to π. */
const wrapped = (turn: number): number => Math.atan2(Math.sin(turn), Math.cos(turn));

/**
 * Carries the second picture onto the first, so that their plugs lie on each other: by size and middle of the ring both have, turned by the ground
 * electrode where both show it, and by `nudge` (radians) more. Undefined where no ring is known in both.
 */
export function registration(onto: PhotoParts, from: PhotoParts, nudge = 0): Placement | undefined {
  const ring = RINGS.find((name) => onto[name] !== undefined && from[name] !== undefined);
  const [there, here] = ring === undefined ? [] : [onto[ring], from[ring]];
  if (there === undefined || here === undefined) return undefined;
  const [angleThere, angleHere] = [angleOf(onto), angleOf(from)];
  const turn = (angleThere === undefined || angleHere === undefined ? 0 : wrapped(angleThere - angleHere)) + nudge;
  const scale = there.r / here.r;
  const [cos, sin] = [scale * Math.cos(turn), scale * Math.sin(turn)];
  return { scale, turn, x: there.x - (cos * here.x - sin * here.y), y: there.y - (sin * here.x + cos * here.y) };
}

/** The ring to look at first. */
export const ringOf = (parts: PhotoParts): Circle | undefined => parts.shell ?? parts.bore ?? parts.nose;
