/**
 * By how much `u` exceeds log(1 + u), for u > -1: never negative, and about u^2 / 2 near nought, where the
 * difference itself would lose its digits. There it is summed from log(1 + u) = 2 artanh(u / (2 + u)) (Abramowitz
 * and Stegun 1964, 4.1.27). `onePlus` is 1 + u as exactly as the caller knows it, for u near -1.
 *
 * `logExcess(1)` is 1 - log 2.
 */
export function logExcess(u: number, onePlus = 1 + u): number {
  // Stryker disable next-line EqualityOperator: there both ways say the same
  if (Math.abs(u) > 0.5) return u - Math.log(onePlus);
  const v = u / (2 + u);
  const square = v * v;
  let sum = 0;
  let power = 1;
  // Stryker disable next-line EqualityOperator: a term this small changes no digit of the sum
  for (let odd = 3; power > 1e-17; odd += 2) {
    sum += power / odd;
    power *= square;
  }
  return v * (u - 2 * square * sum);
}
