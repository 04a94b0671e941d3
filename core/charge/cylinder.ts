import type { Millimetre } from '../../shared/quantities.ts';

export type Cylinder = {
  readonly bore: Millimetre;
  readonly stroke: Millimetre;
  /** Length of the connecting rod between centres. */
  readonly rod: Millimetre;
  readonly compressionRatio: number;
};

const METRES_PER_MM = 1e-3;
const RADIANS_PER_DEGREE = Math.PI / 180;

/** Swept volume of one cylinder, m³. */
export const sweptVolume = ({ bore, stroke }: Cylinder): number => (Math.PI / 4) * (bore * METRES_PER_MM) ** 2 * stroke * METRES_PER_MM;

/** (swept + clearance) / clearance, volumes in one unit. */
export const compressionRatio = (swept: number, clearance: number): number => (swept + clearance) / clearance;

/** How far the piston is below top dead centre, in crank radii; crank angle in degrees from firing top dead centre. */
export function pistonTravel(crankDegrees: number, rodToCrank: number): number {
  const angle = crankDegrees * RADIANS_PER_DEGREE;
  return rodToCrank + 1 - Math.cos(angle) - Math.sqrt(rodToCrank ** 2 - Math.sin(angle) ** 2);
}

/**
 * Volume above the piston, m³. Slider-crank, no pin offset. Source: Heywood, Internal Combustion Engine Fundamentals, eq. 2.6. Grade: published.
 */
export function volumeAt(cylinder: Cylinder, crankDegrees: number): number {
  const { rod, stroke, compressionRatio: rc } = cylinder;
  const clearance = sweptVolume(cylinder) / (rc - 1);
  return clearance * (1 + ((rc - 1) / 2) * pistonTravel(crankDegrees, (2 * rod) / stroke));
}

/** Bare walls, piston and head, m². */
export function wallArea(cylinder: Cylinder, crankDegrees: number): number {
  const bore = cylinder.bore * METRES_PER_MM;
  const travel = (pistonTravel(crankDegrees, (2 * cylinder.rod) / cylinder.stroke) * cylinder.stroke * METRES_PER_MM) / 2;
  return (Math.PI / 2) * bore ** 2 + Math.PI * bore * travel;
}

/** Mean piston speed, m/s. */
export const pistonSpeed = ({ stroke }: Cylinder, rpm: number): number => (2 * stroke * METRES_PER_MM * rpm) / 60;
