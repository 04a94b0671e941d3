import type { LabPixels } from './lab-pixels.ts';

/** How much of a surface is covered by dark deposit (0 to 1), and the L* below which a pixel belongs to it where the surface shows both. */
export type Darkness = { readonly coverage: number; readonly below?: number };

type Class = { count: number; l: number; strength: number };

const LEVELS = 101;

const luminanceOf = (lightness: number): number => (lightness > 8 ? ((lightness + 16) / 116) ** 3 : (lightness * 27) / 24389);

/**
 * Splits the lightness of a surface in two (Otsu, IEEE Transactions on Systems, Man and Cybernetics 9, 1979) and asks whether the darker part is
 * deposit or shadow: soot sends back a few hundredths of the light, shadow keeps a quarter and its hue.
 */
export function darkness(pixels: LabPixels): Darkness {
  const { l, a, b } = pixels;
  if (l.length === 0) return { coverage: 0 };
  const below = otsuLimit(l);
  const [dark, light]: [Class, Class] = [{ count: 0, l: 0, strength: 0 }, { count: 0, l: 0, strength: 0 }];
  for (let i = 0; i < l.length; i += 1) {
    const lightness = l[i] ?? 0;
    const part = lightness < below ? dark : light;
    part.count += 1;
    part.l += lightness;
    part.strength += Math.sqrt((a[i] ?? 0) ** 2 + (b[i] ?? 0) ** 2) / Math.max(4, lightness + 16);
  }
  if (dark.count > 0 && light.count > 0 && isDeposit(meanOf(dark), meanOf(light))) return { coverage: dark.count / l.length, below };
  const all = meanOf({ count: l.length, l: dark.l + light.l, strength: dark.strength + light.strength });
  return { coverage: all.l < 27 || (all.l < 38 && all.strength < 0.055) ? 1 : 0 };
}

const meanOf = ({ count, l, strength }: Class): Class => ({ count, l: l / count, strength: strength / count });

function isDeposit(dark: Class, light: Class): boolean {
  if (light.l - dark.l <= 12) return false;
  const ratio = luminanceOf(Math.max(0, dark.l)) / luminanceOf(light.l);
  return ratio < 0.13 || (ratio < 0.25 && dark.l < 30 && light.l > 44) || (ratio < 0.34 && light.strength > 0.06 && dark.strength < 0.62 * light.strength);
}

function otsuLimit(l: Float32Array): number {
  const histogram = new Float64Array(LEVELS);
  for (const lightness of l) {
    const bin = Math.min(LEVELS - 1, Math.max(0, Math.floor(lightness)));
    histogram[bin] = (histogram[bin] ?? 0) + 1;
  }
  const whole = histogram.reduce((sum, count, level) => sum + count * level, 0);
  let [count, sum, best, limit] = [0, 0, -1, 0];
  for (let level = 0; level < LEVELS - 1; level += 1) {
    count += histogram[level] ?? 0;
    sum += level * (histogram[level] ?? 0);
    const rest = l.length - count;
    if (count === 0 || rest === 0) continue;
    const between = count * rest * (sum / count - (whole - sum) / rest) ** 2;
    if (between > best) [best, limit] = [between, level + 1];
  }
  return limit;
}
