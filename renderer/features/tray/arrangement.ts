import type { Size } from './layout.ts';

/** How the two views of a plug and its words share their room: widths of the views in CSS pixels. */
export type Arrangement = { readonly lie: 'stacked' | 'stacked, words aside' | 'beside'; readonly end: number; readonly side: number };

const SIDE_RATIO = 5 / 11;
const WORDS = { height: 84, width: 158 };
const GAP = 12;
const MOST = 480;
const LEAST = 120;

const between = (value: number): number => Math.floor(Math.max(LEAST, Math.min(MOST, value)));

function alike(lie: Arrangement['lie'], width: number, height: number): Arrangement {
  const size = between(Math.min(width, height / (1 + SIDE_RATIO)));
  return { lie, end: size, side: size };
}

/** The arrangement that draws the end view largest and leaves room for the words. */
export function arrange({ width, height }: Size): Arrangement {
  const end = between(Math.min(height, width * 0.46));
  const all: readonly Arrangement[] = [
    alike('stacked', width, height - WORDS.height),
    alike('stacked, words aside', width - WORDS.width - GAP, height),
    { lie: 'beside', end, side: between(width - end - GAP) },
  ];
  return all.reduce((best, one) => (one.end > best.end ? one : best));
}
