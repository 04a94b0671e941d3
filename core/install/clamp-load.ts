import type { Kilonewton, Millimetre, NewtonMetre } from '../../shared/quantities.ts';
import type { Band } from '../band.ts';

/** A screw joint, mm. The bearing face is the gasket, or the cone of a conical seat. */
export type Joint = {
  readonly diameter: number;
  readonly pitch: number;
  readonly bearingOuter: number;
  readonly bearingInner: number;
  /** Degrees between the bearing face and the axis: 90 flat. */
  readonly faceAngle: number;
};

const gasket = (diameter: number, pitch: number, bearingOuter: number, bearingInner: number): Joint =>
  ({ diameter, pitch, bearingOuter, bearingInner, faceAngle: 90 });
/** Cone of 63° included angle, bearing 1.6 mm outside the thread. */
const cone = (diameter: number, pitch: number): Joint => ({ diameter, pitch, bearingOuter: diameter + 1.6, bearingInner: diameter + 1.6, faceAngle: 31.5 });

/** Gasket sizes are typical. Grade: guess to 1 mm. Cone angle: memory. */
export const PLUG_JOINTS = {
  'M10 gasket': gasket(10, 1, 13, 10.6),
  'M12 gasket': gasket(12, 1.25, 16, 12.6),
  'M14 gasket': gasket(14, 1.25, 19.5, 14.6),
  'M18 gasket': gasket(18, 1.5, 24.5, 18.6),
  'M14 cone': cone(14, 1.25),
  'M18 cone': cone(18, 1.5),
} as const satisfies Record<string, Joint>;
export type JointName = keyof typeof PLUG_JOINTS;

/** The joint of a plug by its thread, as `M14x1.25`, and its seat; undefined where it is not among those known. A seat that nobody noted is a gasket. */
export function jointOf(thread: string | undefined, seat: 'gasket' | 'conical' | undefined): JointName | undefined {
  const diameter = /^\s*M\s*(\d+)/i.exec(thread ?? '')?.[1];
  const name = `M${diameter ?? ''} ${seat === 'conical' ? 'cone' : 'gasket'}`;
  return name in PLUG_JOINTS ? (name as JointName) : undefined;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * Torque over load, m: lift of the thread, friction of the thread, friction of the face. Source: three-term formula as in VDI 2230. Grade: published.
 */
export function torquePerLoad(joint: Joint, threadFriction: number, faceFriction = threadFriction): number {
  const { diameter, pitch, bearingOuter, bearingInner, faceAngle } = joint;
  const flank = diameter - 0.6495 * pitch; // pitch diameter of an ISO metric thread
  const bearing = (bearingOuter + bearingInner) / 2;
  const lift = pitch / (2 * Math.PI);
  const thread = ((flank / 2) * threadFriction) / Math.cos(radians(30));
  const face = ((bearing / 2) * faceFriction) / Math.sin(radians(faceAngle));
  return (lift + thread + face) / 1000;
}

/** K of T = K·d·F. */
export const nutFactor = (joint: Joint, friction: number): number => torquePerLoad(joint, friction) / (joint.diameter / 1000);

/** Torque of a nut factor, in the units of diameter times load. */
export const torqueOfNutFactor = (factor: number, diameter: number, load: number): number => factor * diameter * load;

/** Friction in a user's hands is not known: dry and clean 0.15, oiled 0.10, rough 0.20. Grade: common practice. */
const FRICTION = { least: 0.1, usual: 0.15, most: 0.2 };

/** Clamp load of a torque: a range, because friction is unknown. The engine maker's torque comes first. */
export function clampLoad(joint: Joint, torque: NewtonMetre): Band<Kilonewton> {
  const load = (friction: number): Kilonewton => (torque / torquePerLoad(joint, friction) / 1000) as Kilonewton;
  return { low: load(FRICTION.most), middle: load(FRICTION.usual), high: load(FRICTION.least), basis: 'predicted', notes: [] };
}

/** Factor on a dry torque that gives the same load on a lubricated thread. */
export const lubricatedTorqueFactor = (joint: Joint): number => torquePerLoad(joint, FRICTION.least) / torquePerLoad(joint, FRICTION.usual);

/** How far a plug moves in for a part of a turn. What of it crushes the gasket is not known, so no load follows from an angle. */
export const axialTravel = (turns: number, pitch: Millimetre): Millimetre => (turns * pitch) as Millimetre;
