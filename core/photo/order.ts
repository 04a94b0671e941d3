/** The value below which a share (0 to 1) of the numbers lies; NaN of none. Changes the order of what it is given. */
export function quantileOf(numbers: Float32Array, share: number): number {
  if (numbers.length === 0) return NaN;
  const at = share * (numbers.length - 1);
  const low = Math.floor(at);
  const below = selected(numbers, low);
  if (at === low) return below;
  let next = Infinity;
  for (let i = low + 1; i < numbers.length; i += 1) next = Math.min(next, numbers[i] ?? Infinity);
  return below + (at - low) * (next - below);
}

/** Puts the k-th smallest number in its place, smaller ones before it and larger ones behind (Hoare, Communications of the ACM 4(7), 1961). */
function selected(numbers: Float32Array, k: number): number {
  let [left, right] = [0, numbers.length - 1];
  while (left < right) {
    const pivot = numbers[k] ?? 0;
    let [i, j] = [left, right];
    while (i <= j) {
      while ((numbers[i] ?? 0) < pivot) i += 1;
      while ((numbers[j] ?? 0) > pivot) j -= 1;
      if (i > j) break;
      const held = numbers[i] ?? 0;
      numbers[i] = numbers[j] ?? 0;
      numbers[j] = held;
      i += 1;
      j -= 1;
    }
    if (j < k) left = i;
    if (k < i) right = j;
  }
  return numbers[k] ?? NaN;
}

/** Changes the order of what it is given. */
export const medianOf = (numbers: Float32Array): number => quantileOf(numbers, 0.5);

/** Standard deviation of a normal law with the same median distance from the median. */
export function spreadAround(numbers: Float32Array, middle: number): number {
  const distances = new Float32Array(numbers.length);
  for (let i = 0; i < numbers.length; i += 1) distances[i] = Math.abs((numbers[i] ?? 0) - middle);
  return 1.4826 * medianOf(distances);
}
