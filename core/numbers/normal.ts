/** Density of the standard normal distribution. */
export const normalDensity = (z: number): number => Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI);

/** Probability below z. Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17; error below 7.5e-8. */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail = normalDensity(z) * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}
