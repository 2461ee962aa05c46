/**
 * How far Stirling's formula falls short: log gamma(z + 1) is (z + 1/2) log z - z + log sqrt(2 pi) plus this much.
 * Densities and tails are written with it, for its small values keep the digits that differences of large
 * logarithms of gamma lose (Loader 2000, Fast and Accurate Computation of Binomial Probabilities).
 *
 * From 10 on by Stirling's series (Abramowitz and Stegun 1964, 6.1.41), below by stepping up to there with
 * gamma(z + 1) = z gamma(z). For z > 0. `stirlingError(1)` is 1 - log(sqrt(2 pi)) = 0.08106146679532726.
 */
export function stirlingError(z: number): number {
  let error = 0;
  let at = z;
  // Stryker disable next-line EqualityOperator: at 10 the series and one step more say the same
  for (; at < 10; at++) error += (at + 0.5) * Math.log1p(1 / at) - 1;
  const square = 1 / (at * at);
  let series = 0;
  for (const coefficient of SERIES) series = series * square + coefficient;
  return error + series / at;
}

const SERIES = [-3617 / 122400, 1 / 156, -691 / 360360, 1 / 1188, -1 / 1680, 1 / 1260, -1 / 360, 1 / 12];
