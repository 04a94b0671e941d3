/** How many atoms of carbon, hydrogen, oxygen and nitrogen. */
export type Atoms = readonly [carbon: number, hydrogen: number, oxygen: number, nitrogen: number];

/** Seven coefficients of the NASA form: five of the heat capacity, one of enthalpy, one of entropy. */
type Seven = readonly [number, number, number, number, number, number, number];

export type Species = {
  readonly name: string;
  readonly atoms: Atoms;
  /** From 200 K to 1000 K. */
  readonly below1000: Seven;
  /** From 1000 K to 3500 K and, for these species, smoothly beyond. */
  readonly above1000: Seven;
};

/**
 * The ten species that matter in the burnt gas of an engine, with their heat data.
 * Source: thermodynamic data set of GRI-Mech 3.0, public. Grade: published.
 */
export const SPECIES = {
  CO2: {
    name: 'CO2', atoms: [1, 0, 2, 0],
    below1000: [2.35677352, 0.00898459677, -7.12356269e-06, 2.45919022e-09, -1.43699548e-13, -48371.9697, 9.90105222],
    above1000: [3.85746029, 0.00441437026, -2.21481404e-06, 5.23490188e-10, -4.72084164e-14, -48759.166, 2.27163806],
  },
  H2O: {
    name: 'H2O', atoms: [0, 2, 1, 0],
    below1000: [4.19864056, -0.0020364341, 6.52040211e-06, -5.48797062e-09, 1.77197817e-12, -30293.7267, -0.849032208],
    above1000: [3.03399249, 0.00217691804, -1.64072518e-07, -9.7041987e-11, 1.68200992e-14, -30004.2971, 4.9667701],
  },
  N2: {
    name: 'N2', atoms: [0, 0, 0, 2],
    below1000: [3.298677, 0.0014082404, -3.963222e-06, 5.641515e-09, -2.444854e-12, -1020.8999, 3.950372],
    above1000: [2.92664, 0.0014879768, -5.68476e-07, 1.0097038e-10, -6.753351e-15, -922.7977, 5.980528],
  },
  O2: {
    name: 'O2', atoms: [0, 0, 2, 0],
    below1000: [3.78245636, -0.00299673416, 9.84730201e-06, -9.68129509e-09, 3.24372837e-12, -1063.94356, 3.65767573],
    above1000: [3.28253784, 0.00148308754, -7.57966669e-07, 2.09470555e-10, -2.16717794e-14, -1088.45772, 5.45323129],
  },
  CO: {
    name: 'CO', atoms: [1, 0, 1, 0],
    below1000: [3.57953347, -0.00061035368, 1.01681433e-06, 9.07005884e-10, -9.04424499e-13, -14344.086, 3.50840928],
    above1000: [2.71518561, 0.00206252743, -9.98825771e-07, 2.30053008e-10, -2.03647716e-14, -14151.8724, 7.81868772],
  },
  H2: {
    name: 'H2', atoms: [0, 2, 0, 0],
    below1000: [2.34433112, 0.00798052075, -1.9478151e-05, 2.01572094e-08, -7.37611761e-12, -917.935173, 0.683010238],
    above1000: [3.3372792, -4.94024731e-05, 4.99456778e-07, -1.79566394e-10, 2.00255376e-14, -950.158922, -3.20502331],
  },
  OH: {
    name: 'OH', atoms: [0, 1, 1, 0],
    below1000: [3.99201543, -0.00240131752, 4.61793841e-06, -3.88113333e-09, 1.3641147e-12, 3615.08056, -0.103925458],
    above1000: [3.09288767, 0.000548429716, 1.26505228e-07, -8.79461556e-11, 1.17412376e-14, 3858.657, 4.4766961],
  },
  O: {
    name: 'O', atoms: [0, 0, 1, 0],
    below1000: [3.1682671, -0.00327931884, 6.64306396e-06, -6.12806624e-09, 2.11265971e-12, 29122.2592, 2.05193346],
    above1000: [2.56942078, -8.59741137e-05, 4.19484589e-08, -1.00177799e-11, 1.22833691e-15, 29217.5791, 4.78433864],
  },
  H: {
    name: 'H', atoms: [0, 1, 0, 0],
    below1000: [2.5, 0, 0, 0, 0, 25473.6599, -0.446682853],
    above1000: [2.50000001, -2.30842973e-11, 1.61561948e-14, -4.73515235e-18, 4.98197357e-22, 25473.6599, -0.446682914],
  },
  NO: {
    name: 'NO', atoms: [0, 0, 1, 1],
    below1000: [4.2184763, -0.004638976, 1.1041022e-05, -9.3361354e-09, 2.803577e-12, 9844.623, 2.2808464],
    above1000: [3.2606056, 0.0011911043, -4.2917048e-07, 6.9457669e-11, -4.0336099e-15, 9920.9746, 6.3693027],
  },
} as const satisfies Record<string, Species>;

/** Universal gas constant, J/(mol K); exact since 2019. */
export const GAS_CONSTANT = 8.31446261815324;

const set = ({ below1000, above1000 }: Species, kelvin: number): Seven => (kelvin < 1000 ? below1000 : above1000);

/** Molar heat capacity over R at a temperature in K. */
export function heatCapacity(species: Species, kelvin: number): number {
  const [a, b, c, d, e] = set(species, kelvin);
  return a + kelvin * (b + kelvin * (c + kelvin * (d + kelvin * e)));
}

/** Molar enthalpy, heat of formation included, over R·T. */
export function enthalpy(species: Species, kelvin: number): number {
  const [a, b, c, d, e, f] = set(species, kelvin);
  return a + kelvin * (b / 2 + kelvin * (c / 3 + kelvin * (d / 4 + (kelvin * e) / 5))) + f / kelvin;
}

/** Molar entropy at 1 atm over R. */
export function entropy(species: Species, kelvin: number): number {
  const [a, b, c, d, e, , g] = set(species, kelvin);
  return a * Math.log(kelvin) + kelvin * (b + kelvin * (c / 2 + kelvin * (d / 3 + (kelvin * e) / 4))) + g;
}
