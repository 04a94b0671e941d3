import type { Point } from '../shape.ts';
import type { Site } from '../site.ts';

/**
 * The plug lying with its firing end to the left. Above the axis as one sees it; below the axis the shell is cut away along the thread,
 * so that the nose shows down to where it meets the shell.
 */
export const VIEW_BOX = '0 0 440 200';

export const AXIS = 100;
export const X = {
  gap: 33, electrode: 44, nose: 60, rim: 84, thread: 95, groove: 186, gasket: 195, flange: 205, hexagon: 213, crimp: 260, ceramic: 274, terminal: 384,
} as const;
export const HALF = { electrode: 10, bore: 48, thread: 70, root: 63, gasket: 81, flange: 86, hexagon: 82, crimp: 64, ceramic: 44, terminal: 15 } as const;

/** Half the height of the nose at a place along the plug. */
export const noseHalf = (x: number): number => 24 + ((x - X.nose) / (X.groove - X.nose)) * 23;

const inNose = ([x, y]: Point): boolean => x > X.nose + 1 && x < X.groove - 1 && Math.abs(y - AXIS) < noseHalf(x) - 1 && (x < X.rim - 1 || y > AXIS + 1);

export const NOSE_SITE: Site = {
  name: 'nose-side',
  outline: [
    `M${X.nose + 5} ${AXIS - 24.6}L${X.rim} ${AXIS - noseHalf(X.rim)}V${AXIS}H${X.groove}V${AXIS + 47}L${X.nose + 5} ${AXIS + 24.6}`,
    `Q${X.nose} ${AXIS + 24} ${X.nose} ${AXIS + 18}V${AXIS - 18}Q${X.nose} ${AXIS - 24} ${X.nose + 5} ${AXIS - 24.6}Z`,
  ].join(''),
  inside: inNose,
  middle: [112, 106],
  reach: 76,
  breadth: 38,
  grain: 2.6,
  shines: [`M${X.nose + 6} ${AXIS - 16}L${X.rim - 4} ${AXIS - 20}`, `M92 ${AXIS + 10}L150 ${AXIS + 12}`],
  side: [0, 1],
  signs: [[120, AXIS + 16], [146, AXIS + 16]],
};

/** The rim seen from the side: a narrow band above the axis, and the edge of the cut below it. */
export const RIM_SITE: Site = {
  name: 'rim-side',
  outline: [
    `M${X.rim} ${AXIS}V${AXIS - 62}L${X.rim + 5} ${AXIS - 68}H${X.thread}V${AXIS}Z`,
    `M${X.rim} ${AXIS + HALF.bore}H${X.thread}V${AXIS + 68}H${X.rim + 5}L${X.rim} ${AXIS + 62}Z`,
  ].join(''),
  inside: ([x, y]) => x > X.rim + 0.5 && x < X.thread - 0.5 && ((y > AXIS - 66 && y < AXIS) || (y > AXIS + HALF.bore && y < AXIS + 66)),
  middle: [X.rim + 5.5, AXIS],
  reach: 68,
  breadth: 12,
  grain: 1.9,
  shines: [`M${X.rim + 4} ${AXIS - 56}V${AXIS - 14}`],
  side: [0, 1],
  signs: [[X.rim + 5, AXIS - 30], [X.rim + 5, AXIS - 44]],
};
