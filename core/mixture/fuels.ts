import { err, ok, type Result } from '../../shared/result.ts';
import type { ModelFuel } from '../../shared/vocabulary/heat.ts';
import type { Atoms } from './gas-species.ts';

export type Fuel = {
  readonly name: string;
  /** Atoms of one mean molecule; no nitrogen. */
  readonly atoms: Atoms;
  /** Lower heating value, J/kg. */
  readonly heatingValue: number;
};

/** Standard atomic masses, g/mol (IUPAC, abridged). */
const ATOMIC_MASS: Atoms = [12.011, 1.008, 15.999, 14.007];
/** Dry air: molar mass g/mol, and moles of air for one of oxygen (20.95 % by volume). Source: US Standard Atmosphere 1976. */
const AIR_MOLAR_MASS = 28.965;
export const AIR_PER_OXYGEN = 4.773;

/** Molar mass, g/mol. */
export const molarMass = (atoms: Atoms): number => atoms.reduce((sum, count, i) => sum + count * (ATOMIC_MASS[i] ?? 0), 0);

/** Moles of oxygen that one mole of fuel needs: x + y/4 - z/2 for CxHyOz. */
export const oxygenNeeded = ([c, h, o]: Atoms): number => c + h / 4 - o / 2;

const OXYGEN_MOLAR_MASS = 2 * ATOMIC_MASS[2];
const OXYGEN_BY_MASS = OXYGEN_MOLAR_MASS / (AIR_PER_OXYGEN * AIR_MOLAR_MASS);

/**
 * Stoichiometric ratio of air to fuel, kg/kg. Source: conservation of atoms. Grade: published constants.
 * @param oxygenByMass mass share of oxygen in the air; older books take 0.23
 */
export const stoichiometricRatio = ({ atoms }: Pick<Fuel, 'atoms'>, oxygenByMass = OXYGEN_BY_MASS): number =>
  (oxygenNeeded(atoms) * OXYGEN_MOLAR_MASS) / (molarMass(atoms) * oxygenByMass);

/** Mean formula of a fuel of known mass shares of carbon, hydrogen and oxygen. */
export const atomsOfMassShares = (carbon: number, hydrogen: number, oxygen = 0): Atoms =>
  [carbon / ATOMIC_MASS[0], hydrogen / ATOMIC_MASS[1], oxygen / ATOMIC_MASS[2], 0];

const pure = (name: string, atoms: Atoms, megajoulePerKg: number): Fuel => ({ name, atoms, heatingValue: megajoulePerKg * 1e6 });

/** Heating values: Heywood, Internal Combustion Engine Fundamentals, appendix D. Grade: memory. */
const PETROL = pure('petrol', [1, 1.87, 0, 0], 43.5);
const ETHANOL = pure('ethanol', [2, 6, 1, 0], 26.8);
/** kg/m³ at 15 °C. Grade: common handbook values. */
const DENSITY = { petrol: 745, ethanol: 789 };

/**
 * Petrol with a share of ethanol by volume, 0 to 1. Blends mix by mass: atoms per kilogram add up, and so does heat.
 */
export function ethanolBlend(volumeShare: number): Result<Fuel, string> {
  if (!(volumeShare >= 0 && volumeShare <= 1)) return err(`A share of ethanol lies between 0 and 1; ${volumeShare} does not.`);
  return ok(blended(`E${Math.round(100 * volumeShare)}`, volumeShare));
}

function blended(name: string, volumeShare: number): Fuel {
  const ethanolMass = volumeShare * DENSITY.ethanol;
  const share = ethanolMass / (ethanolMass + (1 - volumeShare) * DENSITY.petrol);
  const perGram = (fuel: Fuel): readonly number[] => fuel.atoms.map((count) => count / molarMass(fuel.atoms));
  const ethanol = perGram(ETHANOL);
  const [c = 0, h = 0, o = 0] = perGram(PETROL).map((count, i) => (1 - share) * count + share * (ethanol[i] ?? 0));
  return { name, atoms: [1, h / c, o / c, 0], heatingValue: (1 - share) * PETROL.heatingValue + share * ETHANOL.heatingValue };
}

export const FUELS = {
  petrol: PETROL,
  E10: blended('E10', 0.1),
  E85: blended('E85', 0.85),
  ethanol: ETHANOL,
  methanol: pure('methanol', [1, 4, 1, 0], 19.9),
  LPG: pure('LPG', [3, 8, 0, 0], 46.35),
  methane: pure('methane', [1, 4, 0, 0], 50.0),
  avgas: pure('avgas', [1, 2.0, 0, 0], 43.7),
} as const satisfies Record<ModelFuel, Fuel>;
