/** 8-bit sRGB, upright, row by row, three bytes a pixel. Pixel i covers [i, i + 1). */
export type PixelImage = { readonly width: number; readonly height: number; readonly rgb: Uint8Array };

export type Point = { readonly x: number; readonly y: number };
export type Circle = Point & { readonly r: number };
export type Box = Point & { readonly w: number; readonly h: number };

/** Longest side of the picture that is measured; larger ones are made smaller first. */
export const WORKING_SIDE = 1024;

export const clamped = (value: number, low = 0, high = 1): number => Math.min(high, Math.max(low, value));
