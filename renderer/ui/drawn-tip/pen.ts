import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';
import { chance, type Chance } from './chance.ts';
import { CHALK, INK, NOSE_TONE, type Tone } from './palette.ts';
import type { Attrs } from './shape.ts';

/** What a drawing is made with. */
export type Pen = {
  /** Drawing units in one pixel of the finished picture. */
  readonly unit: number;
  /** Large enough for hairlines and for signs that say 'looked for, none'. */
  readonly fine: boolean;
  /** How much larger, and fewer, grains are than in a large picture, so that a small one still shows them. */
  readonly coarse: number;
  /** Prefix of the names that gradients and clips get, so that two drawings on one page do not mix. */
  readonly id: string;
  readonly seed: string;
  /** Colour of the nose as a photo measured it; it is drawn instead of the one that was named. */
  readonly measuredNose?: Tone;
};

/** The colour of the nose; undefined when nobody has looked. */
export const noseTone = (tip: Tip, pen: Pen): Tone | undefined => pen.measuredNose ?? (tip.noseColour && NOSE_TONE[tip.noseColour]);

/** Luck of one part: adding another part to the drawing leaves it as it was. */
export const luckOf = (pen: Pen, part: string): Chance => chance(`${pen.seed}/${part}`);
export const nameOf = (pen: Pen, part: string): string => `${pen.id}-${part}`;
export const use = (pen: Pen, part: string): string => `url(#${nameOf(pen, part)})`;

const round: Attrs = { fill: 'none', strokeLinecap: 'round', strokeLinejoin: 'round' };

/** A line some pixels wide, whatever the size of the picture. */
export const line = (pen: Pen, pixels: number, stroke: string = INK): Attrs =>
  ({ ...round, stroke, strokeWidth: Math.round(pixels * pen.unit * 100) / 100 });

export const ink = (pen: Pen): Attrs => line(pen, pen.fine ? 1.3 : 1);
export const hair = (pen: Pen): Attrs => ({ ...line(pen, 0.8), strokeOpacity: 0.75 });
export const chalk = (pen: Pen): Attrs => ({ ...line(pen, pen.fine ? 1.1 : 0.9, CHALK), strokeOpacity: 0.8 });
export const outline = (pen: Pen, observed: boolean): Attrs => (observed ? ink(pen) : chalk(pen));
export const dashes = (pen: Pen, on: number, off: number): string => `${Math.round(on * pen.unit * 100) / 100} ${Math.round(off * pen.unit * 100) / 100}`;
