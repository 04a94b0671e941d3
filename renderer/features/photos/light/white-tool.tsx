import type { Box, Point } from '../../../../core/photo/pixels.ts';
import type { WhiteGiven } from '../../../../shared/channels-photo.ts';
import type { Tool } from '../viewer/surface.tsx';
import { toScreen, type View } from '../viewer/view.ts';
import styles from './light.module.css';

/** Things whose colour is known well enough to be the white of a picture. */
export const NEUTRALS = ['grey card', 'white paper', 'bare shell'] as const;
export type Neutral = (typeof NEUTRALS)[number];

/** A click takes an area as long as this share of the picture's longer side. */
const CLICKED = 0.03;

export function boxBetween(from: Point, to: Point, { width, height }: { readonly width: number; readonly height: number }): Box {
  const clicked = from.x === to.x && from.y === to.y;
  const half = clicked ? (CLICKED * Math.max(width, height)) / 2 : 0;
  const [left, right] = [Math.max(0, Math.min(from.x, to.x) - half), Math.min(width, Math.max(from.x, to.x) + half)];
  const [top, bottom] = [Math.max(0, Math.min(from.y, to.y) - half), Math.min(height, Math.max(from.y, to.y) + half)];
  return { x: left, y: top, w: Math.max(0, right - left), h: Math.max(0, bottom - top) };
}

export const whiteOf = (neutral: Neutral, box: Box): WhiteGiven => (neutral === 'bare shell' ? { kind: 'metal', ...box } : { kind: 'patch', taken: neutral, ...box });

/** The area that the white was taken from. */
export function WhiteArea({ box: { x, y, w, h }, view }: { box: Box; view: View }) {
  const at = toScreen(view, { x, y });
  const area = { x: at.x, y: at.y, width: w * view.scale, height: h * view.scale };
  return <><rect {...area} className={styles.under} /><rect {...area} className={styles.over} /></>;
}

export const whiteTool = (picture: { readonly width: number; readonly height: number }, onBox: (box: Box) => void): Tool => ({
  onDrawn: (from, to) => onBox(boxBetween(from, to, picture)),
  preview: (from, to, view) => <WhiteArea box={boxBetween(from, to, picture)} view={view} />,
});
