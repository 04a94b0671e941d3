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
  /** Why the band is wider than usual, a sentence each; empty inside the tried range. */
  readonly notes: readonly string[];
};

/** Half the width of a 90 % band of a normal distribution, in standard deviations. Source: standard normal table. */
export const NINETY_PERCENT = 1.6449;

/** What an input may be, and where the model was tried. */
export type Range = { readonly name: string; readonly unit: string; readonly least: number; readonly most: number };

const inside = (value: number, { least, most }: Range): boolean => value >= least && value <= most;

/** A sentence for each value outside its range. */
export const outside = (values: readonly (readonly [number, Range])[]): readonly string[] =>
  values.filter(([value, range]) => !inside(value, range)).map(([value, { name, unit, least, most }]) =>
    `${name} ${Number(value.toPrecision(4))}${unit === '' ? '' : ` ${unit}`} lies outside ${least} to ${most}.`);

/** How much wider a band is where the model was not tried. Grade: judgement. */
const WIDER_OUTSIDE = 1.5;
export const widening = (notes: readonly string[]): number => (notes.length === 0 ? 1 : WIDER_OUTSIDE);
