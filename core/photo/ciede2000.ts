import type { Lab } from './lab.ts';

const DEGREE = Math.PI / 180;
const SEVENTH = 25 ** 7;

const hueOf = (a: number, b: number): number => (a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / DEGREE + 360) % 360);
const towardGrey = (chroma: number): number => Math.sqrt(chroma ** 7 / (chroma ** 7 + SEVENTH));

function meanHue(one: number, other: number, grey: boolean): number {
  const sum = one + other;
  if (grey) return sum;
  if (Math.abs(one - other) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

function hueStep(one: number, other: number, grey: boolean): number {
  if (grey) return 0;
  const step = other - one;
  return step > 180 ? step - 360 : step < -180 ? step + 360 : step;
}

/**
 * Colour difference CIEDE2000 with kL = kC = kH = 1; about 1 is just seen (ISO/CIE 11664-6; written after Sharma, Wu and Dalal, Color Research
 * and Application 30, 2005).
 */
export function ciede2000([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const stretch = 1.5 - 0.5 * towardGrey((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2);
  const [c1, c2] = [Math.hypot(stretch * a1, b1), Math.hypot(stretch * a2, b2)];
  const [h1, h2] = [hueOf(stretch * a1, b1), hueOf(stretch * a2, b2)];
  const grey = c1 * c2 === 0;
  const [lightness, chroma, hue] = [(l1 + l2) / 2, (c1 + c2) / 2, meanHue(h1, h2, grey)];
  const deltaHue = 2 * Math.sqrt(c1 * c2) * Math.sin((hueStep(h1, h2, grey) / 2) * DEGREE);
  const cosine = (times: number, shift: number): number => Math.cos((times * hue + shift) * DEGREE);
  const t = 1 - 0.17 * cosine(1, -30) + 0.24 * cosine(2, 0) + 0.32 * cosine(3, 6) - 0.2 * cosine(4, -63);
  const scaleL = 1 + (0.015 * (lightness - 50) ** 2) / Math.sqrt(20 + (lightness - 50) ** 2);
  const [inL, inC, inH] = [(l2 - l1) / scaleL, (c2 - c1) / (1 + 0.045 * chroma), deltaHue / (1 + 0.015 * chroma * t)];
  const turn = -Math.sin(60 * Math.exp(-(((hue - 275) / 25) ** 2)) * DEGREE) * 2 * towardGrey(chroma);
  return Math.sqrt(Math.max(0, inL ** 2 + inC ** 2 + inH ** 2 + turn * inC * inH));
}
