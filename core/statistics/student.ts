/**
 * Probability below t of Student's distribution with whole degrees of freedom, by the finite series of Abramowitz and Stegun, 26.7.3 and 26.7.4.
 */
function studentBelow(t: number, freedom: number): number {
  const angle = Math.atan(t / Math.sqrt(freedom));
  const cos2 = Math.cos(angle) ** 2;
  const odd = freedom % 2 === 1;
  let term = odd ? Math.cos(angle) : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k <= freedom - 2; k += 2) {
    term *= (cos2 * (k - 1)) / k;
    sum += term;
  }
  const middle = odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
  return (1 + middle) / 2;
}

/** The t that Student's distribution stays below with a probability between 0.5 and 1, degrees of freedom from 1; by halving. */
export function studentQuantile(probability: number, freedom: number): number {
  let [low, high] = [0, 1];
  while (studentBelow(high, freedom) < probability) high *= 2;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (studentBelow(middle, freedom) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
