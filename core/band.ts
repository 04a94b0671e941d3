/**
 * Where a number comes from: `predicted` by a model alone, `calibrated` when readings of this very engine corrected the model, `measured` by an instrument.
 */
export type Basis = 'predicted' | 'calibrated' | 'measured';

/** A number that is honest about itself: nine times in ten the truth should lie between low and high. */
export type Band<Quantity extends number> = {
  readonly low: Quantity;
  readonly middle: Quantity;
  readonly high: Quantity;
  readonly basis: Basis;
  /** Why the band is wider than usual; empty inside the tried range. */
  readonly notes: readonly Note[];
};

/** Half the width of a 90 % band of a normal distribution, in standard deviations. Source: standard normal table. */
export const NINETY_PERCENT = 1.6449;

/** What the models are asked with. Units: r/min, kPa, °C, degrees of crank, mm; the others have none. */
export type Input =
  | 'compression ratio' | 'speed' | 'manifold pressure' | 'exhaust pressure' | 'intake temperature' | 'lambda' | 'advance' | 'coolant temperature'
  | 'gap' | 'gas density' | 'wear of the edges';

/** An input outside what is allowed, or outside what was tried. */
export type Outside = { readonly kind: 'outside'; readonly of: Input; readonly value: number; readonly least: number; readonly most: number };
/** An input that nobody recorded. */
export type Assumed = { readonly kind: 'assumed'; readonly of: Input; readonly value: number };
export type Note = Outside | Assumed;

/** What an input may be, and where the model was tried. */
export type Range = { readonly of: Input; readonly least: number; readonly most: number };

const inside = (value: number, { least, most }: Range): boolean => value >= least && value <= most;

/** Each value outside its range. */
export const outside = (values: readonly (readonly [number, Range])[]): readonly Outside[] =>
  values.filter(([value, range]) => !inside(value, range)).map(([value, range]) => ({ kind: 'outside', value, ...range }));

/** How much wider a band is where the model was not tried, or where an input was assumed. Grade: judgement. */
const WIDER = 1.5;
export const widening = (notes: readonly Note[]): number => (notes.length === 0 ? 1 : WIDER);
