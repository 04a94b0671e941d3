import { solveLinear } from '../numbers/solve-linear.ts';
import { enthalpy, entropy, GAS_CONSTANT, heatCapacity, SPECIES, type Atoms, type Species } from './gas-species.ts';

export type Moles = readonly (readonly [species: Species, moles: number])[];

export type BurntGas = {
  /** Any mix with the right atoms; the solver redistributes them. */
  readonly products: Moles;
  /** Enthalpy that must be kept, J. */
  readonly joules: number;
  /** Pa. */
  readonly pressure: number;
  /** First guess of the temperature, K. */
  readonly guess: number;
};

const ATMOSPHERE = 101_325;
const ALL: readonly Species[] = Object.values(SPECIES);
/** A species absent from the guess starts with this share. */
const TRACE = 1e-3;
const LARGEST_STEP = 2;
const CLOSE_ENOUGH = 1e-7;
const MOST_STEPS = 100;

type Part = { readonly species: Species; readonly lnMoles: number };
type State = { readonly parts: readonly Part[]; readonly lnTotal: number; readonly lnKelvin: number };

const atomsIn = (moles: Moles): readonly number[] => [0, 1, 2, 3].map((k) => moles.reduce((sum, [{ atoms }, n]) => sum + n * (atoms[k] ?? 0), 0));

function firstState({ products, guess }: BurntGas): State {
  const total = products.reduce((sum, [, n]) => sum + n, 0);
  const parts = ALL.map((species) => {
    const given = products.find(([other]) => other === species)?.[1] ?? 0;
    return { species, lnMoles: Math.log(Math.max(given, TRACE * total)) };
  });
  return { parts, lnTotal: Math.log(total), lnKelvin: Math.log(Math.min(3200, guess)) };
}

type Weighed = { readonly atoms: Atoms; readonly n: number; readonly h: number; readonly potential: number; readonly cp: number };

function weigh({ parts, lnTotal, lnKelvin }: State, lnPressure: number): readonly Weighed[] {
  const kelvin = Math.exp(lnKelvin);
  return parts.map(({ species, lnMoles }) => {
    const h = enthalpy(species, kelvin);
    return {
      atoms: species.atoms, n: Math.exp(lnMoles), h, cp: heatCapacity(species, kelvin),
      potential: h - entropy(species, kelvin) + lnMoles - lnTotal + lnPressure,
    };
  });
}

/**
 * One Newton step of the element-potential method. Unknown: four element potentials, change of ln(total moles), change of ln(T).
 * Rows: four atom balances, the sum of moles, the enthalpy. Gordon and McBride, NASA Reference Publication 1311 (1994), section 2.3.
 */
function equations(weighed: readonly Weighed[], { lnTotal, lnKelvin }: State, atoms: readonly number[], joules: number): number[][] {
  const rows = Array.from({ length: 6 }, () => new Array<number>(7).fill(0));
  for (const { atoms: [c, h0, o, nitrogen], n, h, potential, cp } of weighed) {
    const column = [c, h0, o, nitrogen, 1, h];
    rows.forEach((row, k) => {
      const weight = n * (column[k] ?? 0);
      if (weight === 0) return;
      column.forEach((factor, j) => { row[j] = (row[j] ?? 0) + weight * factor; });
      row[6] = (row[6] ?? 0) + weight * (potential - 1);
      if (k === 5) row[5] = (row[5] ?? 0) + n * cp;
    });
  }
  const total = Math.exp(lnTotal);
  const aims = [...atoms, total, joules / (GAS_CONSTANT * Math.exp(lnKelvin))];
  return rows.map((row, k) => row.map((value, j) => (j === 6 ? value + (aims[k] ?? 0) : k === 4 && j === 4 ? value - total : value)));
}

/**
 * Temperature in K of burnt gas that has reached chemical equilibrium at fixed enthalpy and pressure.
 * @throws when the steps do not settle, which the callers' ranges exclude
 */
export function equilibrium(gas: BurntGas): number {
  const atoms = atomsIn(gas.products);
  const lnPressure = Math.log(gas.pressure / ATMOSPHERE);
  let state = firstState(gas);
  for (let i = 0; i < MOST_STEPS; i += 1) {
    const weighed = weigh(state, lnPressure);
    const [c = 0, h0 = 0, o = 0, nitrogen = 0, dTotal = 0, dKelvin = 0] = solveLinear(equations(weighed, state, atoms, gas.joules));
    const steps = weighed.map(({ atoms: a, h, potential }) => a[0] * c + a[1] * h0 + a[2] * o + a[3] * nitrogen + dTotal + h * dKelvin - potential);
    const longest = Math.max(5 * Math.abs(dTotal), 5 * Math.abs(dKelvin), ...steps.map(Math.abs));
    const share = Math.min(1, LARGEST_STEP / longest);
    state = {
      parts: state.parts.map(({ species, lnMoles }, k) => ({ species, lnMoles: lnMoles + share * (steps[k] ?? 0) })),
      lnTotal: state.lnTotal + share * dTotal, lnKelvin: state.lnKelvin + share * dKelvin,
    };
    const total = Math.exp(state.lnTotal);
    const still = weighed.every(({ n }, k) => (n / total) * Math.abs(steps[k] ?? 0) < CLOSE_ENOUGH);
    if (share === 1 && still && Math.abs(dKelvin) < CLOSE_ENOUGH) return Math.exp(state.lnKelvin);
  }
  throw new Error('the flame did not come to equilibrium');
}
