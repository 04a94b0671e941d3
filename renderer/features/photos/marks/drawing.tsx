import type { Point } from '../../../../core/photo/pixels.ts';
import type { Annotation } from '../../../../shared/channels-photo.ts';
import type { Tool } from '../viewer/surface.tsx';
import { MarkShape } from './mark-shapes.tsx';

export const MARK_KINDS = ['arrow', 'circle', 'text'] as const satisfies readonly Annotation['kind'][];
export type MarkKind = (typeof MARK_KINDS)[number];

/** A mark drawn by a click is as large as this share of the longer side of the picture. */
const CLICKED = 0.04;

/** The mark that a stroke from one place to another makes. An arrow points where the stroke ends; a circle grows from where it began. */
export function markOf(kind: MarkKind, from: Point, to: Point, longest: number): Annotation {
  const clicked = from.x === to.x && from.y === to.y;
  const size = CLICKED * longest;
  switch (kind) {
    case 'arrow': return { kind, from: clicked ? { x: from.x + size, y: from.y - size } : from, to, words: '' };
    case 'circle': return { kind, x: from.x, y: from.y, r: clicked ? size : Math.hypot(to.x - from.x, to.y - from.y), words: '' };
    case 'text': return { kind, x: from.x, y: from.y, words: '' };
  }
}

export const markTool = (kind: MarkKind, longest: number, onMark: (mark: Annotation) => void): Tool => ({
  onDrawn: (from, to) => onMark(markOf(kind, from, to, longest)),
  preview: (from, to, view) => <MarkShape mark={markOf(kind, from, to, longest)} view={view} />,
});
