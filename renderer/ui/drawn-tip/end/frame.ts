import { polar, ring } from '../curve.ts';
import type { Point } from '../shape.ts';
import type { Site } from '../site.ts';

/**
 * The firing end seen along its axis, a little from below, so that the ground electrode does not hide the centre electrode.
 * Proportions of a 14 mm plug with its nose drawn somewhat large; the radius of the thread is 84.
 */
export const VIEW_BOX = '-100 -100 200 200';

export const R = { electrode: 13, face: 37, nose: 52, bore: 60, rim: 76, thread: 85, gasketIn: 87.5, gasket: 96 } as const;

/** The ground electrode comes from the rim at the top and ends short of the centre electrode. */
export const STRAP = { foot: -80, bend: -63, tip: -16, half: 11.5 } as const;

const between = (inner: number, outer: number) => ([x, y]: Point): boolean => {
  const r = Math.hypot(x, y);
  return r > inner && r < outer;
};
const TO_SIDE: Point = [Math.SQRT1_2, Math.SQRT1_2];

export const NOSE_SITE: Site = {
  name: 'nose',
  outline: ring(R.electrode, R.nose),
  inside: between(R.electrode + 2, R.nose - 1),
  middle: [0, 0],
  reach: R.nose,
  breadth: R.nose,
  grain: 2.6,
  shines: [shineAt(45, 0.55, 0.71), shineAt(26, 0.58, 0.68), shineAt(46, 0.1, 0.15)],
  side: TO_SIDE,
  signs: [[0, 27], [-25, 12]],
};

export const RIM_SITE: Site = {
  name: 'rim',
  outline: ring(R.bore, R.rim),
  inside: between(R.bore + 1, R.rim - 1),
  middle: [0, 0],
  reach: R.rim,
  breadth: R.rim,
  grain: 2.4,
  shines: [shineAt(69, 0.54, 0.7), shineAt(66, 0.06, 0.16)],
  side: TO_SIDE,
  signs: [[0, 68], [-68, 0]],
};

function shineAt(radius: number, from: number, to: number): string {
  const points = Array.from({ length: 9 }, (_, i) => polar(radius, from + ((to - from) * i) / 8));
  return `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`;
}
