/** The words in which an engine, its ignition, its mixture and its plugs are described. */
export const USES = ['road', 'competition', 'marine', 'aircraft', 'farm', 'industrial', 'small', 'stationary'] as const;
export const CYCLES = ['four-stroke', 'two-stroke'] as const;
export const LAYOUTS = ['single', 'inline', 'vee', 'flat', 'radial'] as const;
export const HEAD_MATERIALS = ['aluminium', 'cast iron'] as const;
export const ASPIRATIONS = ['natural', 'boosted'] as const;
export const COOLINGS = ['liquid', 'air'] as const;
export const MIXTURE_KINDS = ['carburettor', 'throttle-body injection', 'port injection', 'direct injection', 'gas mixer'] as const;
export const IGNITION_KINDS = [
  'breaker points', 'electronic distributor', 'wasted spark', 'coil per cylinder', 'magneto', 'capacitor discharge',
] as const;
export const POSITIONS = ['only', 'upper', 'lower', 'intake', 'exhaust', 'front', 'rear', 'unknown'] as const;
export const SEATS = ['gasket', 'conical'] as const;
export const RESISTOR_RULES = ['required', 'allowed', 'forbidden'] as const;
export const PROJECTIONS = ['standard', 'projected'] as const;
export const ELECTRODES = ['nickel', 'silver', 'platinum', 'iridium'] as const;

export type Use = (typeof USES)[number];
export type Layout = (typeof LAYOUTS)[number];
export type MixtureKind = (typeof MIXTURE_KINDS)[number];
export type IgnitionKind = (typeof IGNITION_KINDS)[number];
export type Position = (typeof POSITIONS)[number];
