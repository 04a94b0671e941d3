import type { Geometry } from './geometry.ts';
import type { Circle, Point } from './pixels.ts';
import type { Ring } from './ring-fit.ts';
import type { Strap } from './strap.ts';

/** The ground electrode as a bar from its foot on the shell to its free end. */
export type StrapBar = { readonly foot: Point; readonly end: Point; readonly width: number };

/** Parts of a firing end as a person draws them, in pixels of the picture. */
export type Parts = {
  readonly shell?: Circle | undefined;
  readonly bore?: Circle | undefined;
  readonly nose?: Circle | undefined;
  readonly centreElectrode?: Circle | undefined;
  readonly groundElectrode?: StrapBar | undefined;
};

const circleOf = ({ x, y, r }: Circle): Circle => ({ x, y, r });
const scaledCircle = ({ x, y, r }: Circle, by: number): Circle => ({ x: x * by, y: y * by, r: r * by });
const scaledPoint = ({ x, y }: Point, by: number): Point => ({ x: x * by, y: y * by });

/** The same parts in a picture `by` times as large. */
export function partsScaled({ shell, bore, nose, centreElectrode, groundElectrode: bar }: Parts, by: number): Parts {
  return {
    ...(shell && { shell: scaledCircle(shell, by) }), ...(bore && { bore: scaledCircle(bore, by) }), ...(nose && { nose: scaledCircle(nose, by) }),
    ...(centreElectrode && { centreElectrode: scaledCircle(centreElectrode, by) }),
    ...(bar && { groundElectrode: { foot: scaledPoint(bar.foot, by), end: scaledPoint(bar.end, by), width: bar.width * by } }),
  };
}

/** The parts of a geometry that was found. Without a ground electrode where none was recognised. */
export function partsOf({ bore, face, shell, nose, electrode, strap }: Geometry): Parts {
  return {
    shell: circleOf(shell), bore: circleOf(bore), nose: circleOf(nose), centreElectrode: circleOf(electrode),
    ...(strap.score >= LEAST_STRAP && { groundElectrode: barOf(strap, bore, (0.5 * (1 + face.r / bore.r))) }),
  };
}

/** A strap found less clearly than this is none. */
export const LEAST_STRAP = 0.45;

function barOf({ angle, offset, half, end }: Strap, bore: Ring, foot: number): StrapBar {
  const [cos, sin] = [Math.cos(angle) * bore.r, Math.sin(angle) * bore.r];
  const at = (along: number): Point => ({ x: bore.x + along * cos - offset * sin, y: bore.y + along * sin + offset * cos });
  return { foot: at(foot), end: at(end), width: 2 * half * bore.r };
}

/** A bar that a person drew, in the terms of the bore it lies over. */
export function strapOf({ foot, end, width }: StrapBar, bore: Ring): Strap {
  const angle = Math.atan2(foot.y - end.y, foot.x - end.x);
  const [dx, dy] = [(end.x - bore.x) / bore.r, (end.y - bore.y) / bore.r];
  return {
    angle, offset: dy * Math.cos(angle) - dx * Math.sin(angle), half: width / 2 / bore.r, end: dx * Math.cos(angle) + dy * Math.sin(angle), score: 1,
  };
}
