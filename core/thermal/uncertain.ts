/**
 * The six numbers of the model that were fitted or judged, each in units of its own standard deviation: 0 is the model as it stands.
 * The widths are judgement; no measured tip temperature was found to fix them.
 */
export type Uncertain = {
  /** Heat the nose takes up: +-25 %. */
  readonly noseGain: number;
  /** How that rises with the gas: exponent 0.6 +- 0.12. */
  readonly noseExponent: number;
  /** Ratio of conductances of neighbouring heat values: 1.34 +- 0.08. */
  readonly heatStep: number;
  /** Rise of the head above the coolant: +-35 %. */
  readonly head: number;
  /** How far the gas at the plug mixes with the rest: 0.85 +- 0.12. */
  readonly mixing: number;
  /** Length of the burn: +-12 %. */
  readonly burn: number;
};

export const UNCERTAIN_NAMES = ['noseGain', 'noseExponent', 'heatStep', 'head', 'mixing', 'burn'] as const satisfies readonly (keyof Uncertain)[];
export const AS_IT_STANDS: Uncertain = { noseGain: 0, noseExponent: 0, heatStep: 0, head: 0, mixing: 0, burn: 0 };

/** What a draw stands for. */
export type Numbers = Uncertain;

/** The numbers that a draw stands for, held where they mean something. */
export const numbersOf = (draw: Uncertain): Numbers => ({
  noseGain: Math.max(0.2, 1 + 0.25 * draw.noseGain),
  noseExponent: 0.6 + 0.12 * draw.noseExponent,
  heatStep: Math.max(1.02, 1.34 + 0.08 * draw.heatStep),
  head: Math.max(0.1, 1 + 0.35 * draw.head),
  mixing: Math.min(1, Math.max(0, 0.85 + 0.12 * draw.mixing)),
  burn: Math.max(0.4, 1 + 0.12 * draw.burn),
});
