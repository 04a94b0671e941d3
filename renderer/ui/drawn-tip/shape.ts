/** One SVG element as plain data, its attributes named as React names them. Drawing needs neither page nor framework. */
export type Shape = { readonly tag: string; readonly attrs: Attrs; readonly children?: readonly Shape[] };
export type Attrs = Readonly<Record<string, string | number>>;
export type Point = readonly [x: number, y: number];

export const short = (value: number): number => Math.round(value * 100) / 100;

export const path = (d: string, attrs: Attrs): Shape => ({ tag: 'path', attrs: { d, ...attrs } });
export const disc = (x: number, y: number, radius: number, attrs: Attrs): Shape =>
  ({ tag: 'circle', attrs: { cx: short(x), cy: short(y), r: short(radius), ...attrs } });
export const group = (attrs: Attrs, children: readonly Shape[]): Shape => ({ tag: 'g', attrs, children });

/** Colour stops from the start to the end of a gradient: place, colour, and opacity where the colour is not solid. */
export type Stop = readonly [place: number, colour: string, opacity?: number];
const stops = (list: readonly Stop[]): Shape[] =>
  list.map(([offset, stopColor, stopOpacity = 1]) => ({ tag: 'stop', attrs: { offset, stopColor, stopOpacity } }));

export const radialGradient = (id: string, list: readonly Stop[], attrs: Attrs): Shape =>
  ({ tag: 'radialGradient', attrs: { id, gradientUnits: 'userSpaceOnUse', ...attrs }, children: stops(list) });
export const linearGradient = (id: string, list: readonly Stop[], from: Point, to: Point): Shape =>
  ({ tag: 'linearGradient', attrs: { id, gradientUnits: 'userSpaceOnUse', x1: from[0], y1: from[1], x2: to[0], y2: to[1] }, children: stops(list) });
export const clip = (id: string, d: string): Shape => ({ tag: 'clipPath', attrs: { id }, children: [{ tag: 'path', attrs: { d, clipRule: 'evenodd' } }] });
