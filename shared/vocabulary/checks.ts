/** What can be found on a cylinder with the plugs out, or by trying parts. */
export const SPARKS = ['strong', 'present', 'weak', 'none'] as const;
export const INJECTORS = ['works', 'dead', 'leaks', 'restricted'] as const;
export const SPEED_DROPS = ['clear', 'small', 'none'] as const;
export const BORESCOPE = ['clean', 'washed clean', 'wet with oil', 'wet with water', 'piston damage', 'valve damage', 'deposits'] as const;
export const SWAP_PARTS = ['plug', 'lead', 'coil', 'injector'] as const;

export type SwapPart = (typeof SWAP_PARTS)[number];
