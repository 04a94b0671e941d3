import { AIR_PER_OXYGEN, molarMass, oxygenNeeded, type Fuel } from './fuels.ts';
import { enthalpy, GAS_CONSTANT, heatCapacity, SPECIES, type Atoms } from './gas-species.ts';
import { equilibrium, type Moles } from './equilibrium.ts';

/** What is about to burn. */
export type Charge = {
  readonly fuel: Fuel;
  /** Relative air-fuel ratio. */
  readonly lambda: number;
  /** K, of air, fuel vapour and residual gas alike. */
  readonly temperature: number;
  /** Pa. */
  readonly pressure: number;
  /** Mass share of burnt gas left from the cycle before, 0 to below 1. */
  readonly residual?: number;
};

const STANDARD_KELVIN = 298.15;
/** Fuel vapour warms with the air: J/(kg K). Grade: memory, typical of petrol vapour around 500 K. */
const FUEL_VAPOUR_HEAT_CAPACITY = 2200;
/** Of the oxygen that is missing in a rich flame, two thirds are missing as carbon monoxide, one third as hydrogen. Grade: memory, Heywood fig. 4-20. */
const MISSING_AS_MONOXIDE = 2 / 3;

/** Moles of burnt gas of one mole of fuel, no dissociation. */
function completeProducts(atoms: Atoms, lambda: number): Moles {
  const [c, h] = atoms;
  const oxygen = lambda * oxygenNeeded(atoms);
  const missing = 2 * Math.max(0, oxygenNeeded(atoms) - oxygen);
  const monoxide = Math.min(c, missing * MISSING_AS_MONOXIDE);
  const hydrogen = missing - monoxide;
  return [
    [SPECIES.CO2, c - monoxide], [SPECIES.H2O, h / 2 - hydrogen], [SPECIES.N2, oxygen * (AIR_PER_OXYGEN - 1)],
    [SPECIES.O2, Math.max(0, oxygen - oxygenNeeded(atoms))], [SPECIES.CO, monoxide], [SPECIES.H2, hydrogen],
  ];
}

/** J. */
const enthalpyOf = (moles: Moles, kelvin: number): number =>
  moles.reduce((sum, [species, n]) => sum + n * enthalpy(species, kelvin), 0) * GAS_CONSTANT * kelvin;

/** K at which a gas of fixed composition holds an enthalpy in J: Newton on a curve that only rises. */
function temperatureHolding(moles: Moles, joules: number): number {
  let kelvin = 2000;
  for (let i = 0; i < 30; i += 1) {
    const capacity = moles.reduce((sum, [species, n]) => sum + n * heatCapacity(species, kelvin), 0) * GAS_CONSTANT;
    const step = (joules - enthalpyOf(moles, kelvin)) / capacity;
    kelvin = Math.max(200, kelvin + step);
    if (Math.abs(step) < 1e-6) break;
  }
  return kelvin;
}

/** J of one mole of fuel with its air and residual gas. The fuel's heat of formation follows from its heating value. */
function enthalpyBefore({ fuel, lambda, temperature, residual = 0 }: Charge): number {
  const [c, h] = fuel.atoms;
  const mass = molarMass(fuel.atoms) / 1000;
  const burnt: Moles = [[SPECIES.CO2, c], [SPECIES.H2O, h / 2]];
  const oxygen = lambda * oxygenNeeded(fuel.atoms);
  const oxygenBurnt: Moles = [[SPECIES.O2, oxygenNeeded(fuel.atoms)]];
  const formation = enthalpyOf(burnt, STANDARD_KELVIN) - enthalpyOf(oxygenBurnt, STANDARD_KELVIN) + fuel.heatingValue * mass;
  const air: Moles = [[SPECIES.O2, oxygen], [SPECIES.N2, oxygen * (AIR_PER_OXYGEN - 1)]];
  const fresh = formation + FUEL_VAPOUR_HEAT_CAPACITY * mass * (temperature - STANDARD_KELVIN) + enthalpyOf(air, temperature);
  return fresh + (residual / (1 - residual)) * enthalpyOf(completeProducts(fuel.atoms, lambda), temperature);
}

/** Burnt gas of the fresh charge and of the residual, which is made of the same atoms in the same proportion. */
function productsOf({ fuel, lambda, residual = 0 }: Charge): Moles {
  return completeProducts(fuel.atoms, lambda).map(([species, n]) => [species, n / (1 - residual)] as const);
}

/**
 * Adiabatic flame temperature at constant pressure, K, without dissociation; too high in a hot flame, kept for comparison with textbooks.
 */
export const undissociatedFlameTemperature = (charge: Charge): number => temperatureHolding(productsOf(charge), enthalpyBefore(charge));

/**
 * Adiabatic flame temperature at constant pressure, K, with dissociation into ten species at chemical equilibrium.
 * Range: lambda 0.5 to 4, pressure 0.1 to 20 MPa, charge 250 to 1100 K. Method: enthalpy balance and least Gibbs energy. Grade: published data.
 */
export function flameTemperature(charge: Charge): number {
  const products = productsOf(charge);
  const joules = enthalpyBefore(charge);
  return equilibrium({ products, joules, pressure: charge.pressure, guess: temperatureHolding(products, joules) - 150 });
}
