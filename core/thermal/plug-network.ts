import { plugGas, type CycleMeans } from './cycle.ts';
import type { Numbers } from './uncertain.ts';

/** How the plug sits and what plug it is. */
export type PlugSeat = {
  /** Steps towards hotter from the plug the model was fitted on. */
  readonly heatStep: number;
  /** Share of a sound seat's conductance: 1 tight and clean, 0.1 to 0.3 loose or dirty. */
  readonly seat: number;
};

/** K */
export type PlugTemperatures = { readonly nose: number; readonly centre: number; readonly ground: number; readonly shell: number };

/** W/K of the nose of the plug the model was fitted on. Size check: 15 mm of alumina annulus with a copper core gives about 0.05. Grade: fitted. */
const NOSE = 0.052;
/** W/(m² K): coefficient at which the gains below hold. */
const REFERENCE = 432;
const NOSE_GAIN = 0.7; // of NOSE; below 1 because the nose sits in a pocket; fitted to 792 °C at full load of the reference engine
const CENTRE_GAIN = 0.16; // of the nose's gain; fitted
const CENTRE_TO_NOSE = 0.06; // W/K, fitted
const GROUND = 0.0095; // W/K: a strap of nickel alloy 2.7 x 1.4 x 9 mm
const GROUND_GAIN = 1.22; // of GROUND; fitted
const SHELL_FACE = 1.5e-4; // m²
const SEAT = 5; // W/K, fitted
const HEAD_RESISTANCE = 2.7e-4; // K m²/W: about +110 K at full load; fitted
const WALL_ABOVE_COOLANT = 60; // K
/** J/K, mass estimates. */
const CAPACITY = { nose: 1.1, centre: 0.15, ground: 0.18 };

/** Metal of the head at the plug, K. */
export const headTemperature = ({ coefficient, wallGas }: CycleMeans, coolantKelvin: number, scale: number): number =>
  coolantKelvin + scale * HEAD_RESISTANCE * coefficient * (wallGas - coolantKelvin - WALL_ABOVE_COOLANT);

type Conductances = {
  readonly nose: number; readonly noseGas: number; readonly centreGas: number; readonly groundGas: number; readonly shellGas: number; readonly seat: number;
};

function conductances({ coefficient }: CycleMeans, { heatStep, seat }: PlugSeat, numbers: Numbers): Conductances {
  const gas = (coefficient / REFERENCE) ** numbers.noseExponent;
  const noseGas = NOSE_GAIN * NOSE * gas * numbers.noseGain;
  return {
    nose: NOSE * numbers.heatStep ** -heatStep, noseGas, centreGas: CENTRE_GAIN * noseGas, groundGas: GROUND_GAIN * GROUND * gas,
    shellGas: SHELL_FACE * coefficient, seat: SEAT * seat,
  };
}

/** A node on its own: pulled towards each neighbour with the weight of the conductance to it. */
type Pull = readonly (readonly [conductance: number, kelvin: number])[];
const total = (pulls: Pull): number => pulls.reduce((sum, [g]) => sum + g, 0);
const flow = (pulls: Pull): number => pulls.reduce((sum, [g, kelvin]) => sum + g * kelvin, 0);

/** The temperatures before, and how long ago in s; without it the answer is the steady state. */
export type Before = { readonly temperatures: PlugTemperatures; readonly seconds: number };

/**
 * Four heat balances: nose, centre electrode and ground electrode between gas and shell, the shell between them and the head.
 * With `before` one step of implicit Euler, which tends to the steady state however long the step.
 */
export function plugTemperatures(means: CycleMeans, head: number, seat: PlugSeat, numbers: Numbers, before?: Before): PlugTemperatures {
  const c = conductances(means, seat, numbers);
  const gas = plugGas(means, numbers.mixing);
  const kept = (node: 'nose' | 'centre' | 'ground'): Pull =>
    (before === undefined ? [] : [[CAPACITY[node] / before.seconds, before.temperatures[node]]]);
  const atCentre: Pull = [[c.centreGas, gas], ...kept('centre')];
  const atGround: Pull = [[c.groundGas, gas], ...kept('ground')];
  const centreShare = CENTRE_TO_NOSE / (CENTRE_TO_NOSE + total(atCentre)); // how far the centre electrode follows the nose
  const groundShare = GROUND / (GROUND + total(atGround)); // how far the strap follows the shell
  const atNose: Pull = [[c.noseGas, gas], ...kept('nose')];
  const noseSelf = c.nose + total(atNose) + centreShare * total(atCentre);
  const noseFlow = flow(atNose) + centreShare * flow(atCentre);
  const shellSelf = c.seat + c.shellGas + c.nose + groundShare * total(atGround);
  const shellFlow = c.seat * head + c.shellGas * gas + groundShare * flow(atGround);
  const shell = (shellFlow + (c.nose * noseFlow) / noseSelf) / (shellSelf - c.nose ** 2 / noseSelf);
  const nose = (noseFlow + c.nose * shell) / noseSelf;
  return {
    nose, shell,
    centre: centreShare * nose + flow(atCentre) / (CENTRE_TO_NOSE + total(atCentre)),
    ground: groundShare * shell + flow(atGround) / (GROUND + total(atGround)),
  };
}
