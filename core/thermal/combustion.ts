import type { Strokes } from '../charge/trapped-charge.ts';

/** What sets the length of the burn. */
export type Burn = { readonly lambda: number; readonly rpm: number; readonly residual: number; readonly trappedKelvin: number; readonly strokes: Strokes };

/**
 * Degrees of crank from the spark to the end of the burn: shortest slightly rich, longer with residual gas and speed.
 * Form: shape of published burn durations; every number fitted.
 */
export function burnDegrees({ lambda, rpm, residual, trappedKelvin, strokes }: Burn): number {
  const mixture = 1 + 2.2 * (1 / lambda - 1.1) ** 2;
  const strokeFactor = strokes === 2 ? 0.85 : 1;
  return 58 * mixture * (rpm / 3000) ** 0.15 * Math.max(0.3, 1 + 2 * (residual - 0.045)) * (trappedKelvin / 360) ** -0.7 * strokeFactor;
}

/** Share burnt by Wiebe's function at a share of the burn angle, a = 5, m = 2. Source: Heywood, section 9.2. Grade: memory. */
export const burntShare = (angleShare: number): number => (angleShare <= 0 ? 0 : 1 - Math.exp(-5 * angleShare ** 3));

/** Share of the fuel's heat that is set free; a rich charge lacks oxygen. Fitted to the shape of Heywood fig. 3-9. Grade: memory. */
export function combustionEfficiency(lambda: number): number {
  const short = Math.max(0, 1 - lambda);
  return 0.96 - 0.95 * short - 0.5 * short ** 2;
}

/** Ratio of heat capacities of the gas of a petrol engine. Source: Brunt's correlation, not below 1.22. Range 300 to 3000 K. Grade: published. */
export const heatCapacityRatio = (kelvin: number): number => Math.max(1.22, 1.338 - 6e-5 * kelvin + 1e-8 * kelvin ** 2);
