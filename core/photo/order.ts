/** The value below which a share (0 to 1) of the numbers lies; NaN of none. Sorts what it is given. */
export function quantileOf(numbers: Float32Array, share: number): number {
  if (numbers.length === 0) return NaN;
  numbers.sort();
  const at = share * (numbers.length - 1);
  const low = Math.floor(at);
  const below = numbers[low] ?? NaN;
  return below + (at - low) * ((numbers[Math.min(numbers.length - 1, low + 1)] ?? NaN) - below);
}

/** Sorts what it is given. */
export const medianOf = (numbers: Float32Array): number => quantileOf(numbers, 0.5);

/** Standard deviation of a normal law with the same median distance from the median. */
export const spreadAround = (numbers: Float32Array, middle: number): number => 1.4826 * medianOf(numbers.map((value) => Math.abs(value - middle)));
