import type { PlanPlace } from '../../../core/domain/engine-plan.ts';

export type Direction = 'left' | 'right' | 'up' | 'down';

const WAY: Readonly<Record<Direction, readonly [x: number, y: number]>> = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] };
/** Going aside counts more than going on, so that a row is walked to its end before it is left. */
const ASIDE = 2.5;

/** The plug that lies next in a direction of the plan; undefined when none does. */
export function nearest(from: PlanPlace, places: readonly PlanPlace[], direction: Direction): PlanPlace | undefined {
  const [wx, wy] = WAY[direction];
  const reachable = places.flatMap((place) => {
    const [dx, dy] = [place.x - from.x, place.y - from.y];
    const ahead = dx * wx + dy * wy;
    const aside = Math.abs(dx * wy - dy * wx);
    return ahead > 0.2 && aside <= 2 * ahead + 0.6 ? [{ place, far: ahead + ASIDE * aside }] : [];
  });
  return reachable.reduce<(typeof reachable)[number] | undefined>((best, one) => (best === undefined || one.far < best.far ? one : best), undefined)?.place;
}
