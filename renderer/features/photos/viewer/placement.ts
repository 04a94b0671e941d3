import type { Point } from '../../../../core/photo/pixels.ts';
import type { View } from './view.ts';

/** A picture made larger, turned (radians, clockwise) and moved: what carries one picture onto another, or onto the screen. */
export type Placement = { readonly scale: number; readonly turn: number; readonly x: number; readonly y: number };

export const AS_IT_IS: Placement = { scale: 1, turn: 0, x: 0, y: 0 };

export function placed({ scale, turn, x, y }: Placement, at: Point): Point {
  const [cos, sin] = [scale * Math.cos(turn), scale * Math.sin(turn)];
  return { x: cos * at.x - sin * at.y + x, y: sin * at.x + cos * at.y + y };
}

/** First `inner`, then the view. */
export function seenThrough({ scale, x, y }: View, inner: Placement): Placement {
  return { scale: scale * inner.scale, turn: inner.turn, x: scale * inner.x + x, y: scale * inner.y + y };
}

/** As CSS takes it, about the upper left corner. */
export function cssMatrix({ scale, turn, x, y }: Placement): string {
  const [cos, sin] = [scale * Math.cos(turn), scale * Math.sin(turn)];
  return `matrix(${cos}, ${sin}, ${-sin}, ${cos}, ${x}, ${y})`;
}
